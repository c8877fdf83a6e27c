import { say, whatIf, type WhatIfAnswer } from "../../../solver/index.ts";
import { wholeNumberOption } from "../args.ts";
import { casesWith, caseOptions, studyCommand } from "../study-command.ts";

const points = (value: number | null): string =>
  (value === null ? "" : `${value >= 0 ? "+" : ""}${value.toFixed(1)}`).padStart(7);

function answerText(answer: WhatIfAnswer): string {
  const bars = answer.bars.map(
    (bar) => `  ${bar.unknown.label.padEnd(52)}${points(bar.moisture_points[0])}${points(bar.moisture_points[1])}`,
  );
  return [
    `${answer.option} ${answer.path}`,
    say(answer.lead, "si"),
    `  ${"change of the wood's peak, points, at each end of".padEnd(52)}${"low".padStart(7)}${"high".padStart(7)}`,
    ...bars,
    "",
  ].join("\n");
}

/** What if we are wrong? Each unknown is run at both ends of its usual range. */
export const whatIfCommand = studyCommand({
  name: "what-if",
  takes: "[--most 8] [--sample 0 --seed 1] [--option A] [--path bay]",
  summary: "run the unknowns at both ends and find what turns the answer over",
  options: {
    most: { type: "string", value: "N", hint: "how many unknowns, 8 by default" },
    sample: { type: "string", value: "N", hint: "and a sample of so many runs over all of them" },
    seed: { type: "string", value: "N", hint: "seed of the sample, 1 by default" },
    ...caseOptions,
  },
  ask(input, given) {
    const most = wholeNumberOption(given, "most", 1, 40) ?? 8;
    const runs = wholeNumberOption(given, "sample", 0, 1000) ?? 0;
    const seed = wholeNumberOption(given, "seed", 0, 2 ** 31) ?? 1;
    return casesWith(input, given, undefined).map((aCase) => ({
      study: whatIf({ case: aCase, most, sample: { runs, seed } }),
      text: answerText,
    }));
  },
});
