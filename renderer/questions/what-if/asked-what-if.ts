import {
  usualUnknowns,
  whatIf,
  type Case,
  type Study,
  type Unknown,
  type WhatIfAnswer,
} from "../../../solver/index.ts";
import type { QuestionInputs } from "../asking/question-inputs.ts";

/** The usual ranges with those that were changed by hand. */
export const rangesAsked = (ranges: QuestionInputs["ranges"]): readonly Unknown[] =>
  usualUnknowns.map((unknown) => {
    const own = ranges[unknown.id];
    return own === undefined
      ? unknown
      : { ...unknown, low: Math.min(...own), high: Math.max(...own), source: "your own range" };
  });

/** One sample is the same each time it is asked for. */
const seed = 1;

export const whatIfStudy = (
  aCase: Case,
  { most, sampleRuns, notKnown, ranges }: Pick<QuestionInputs, "most" | "sampleRuns" | "notKnown" | "ranges">,
): Study<WhatIfAnswer> =>
  whatIf({ case: aCase, unknowns: rangesAsked(ranges), most, notKnown, sample: { runs: sampleRuns, seed } });
