import type { Case } from "../model/index.ts";
import { bandOf, type Band } from "./band.ts";
import { flipOf, flipMembers, type Flip } from "./flip-point.ts";
import { amount, joined, phrase, type Phrase } from "./phrase.ts";
import { latinHypercube } from "./space-filling.ts";
import type { Done, Member, Study } from "./study.ts";
import { broken, holdsAll, type MemberSummary } from "./summary.ts";
import { unknownsOf, usualUnknowns, valueAt, type Unknown, type UnknownOfCase } from "./unknowns.ts";

export interface WhatIfQuestion {
  readonly case: Case;
  /** Ranges to try, in order of interest; by default the usual ones. The first `most` that apply are run. */
  readonly unknowns?: readonly Unknown[];
  /** How many of them [-], 8 by default: 16 runs beside the base. */
  readonly most?: number;
  /** Ids of inputs that the user answered with "I don't know": always among those run. */
  readonly notKnown?: readonly string[];
  /** Space-filling sample: how many runs and from which seed; 0 runs leaves it out. */
  readonly sample?: { readonly runs: number; readonly seed: number };
  /** False: do not search for the value at which the answer flips. */
  readonly flips?: boolean;
}

/** What one input moves between its ends. */
export interface Bar {
  readonly unknown: Unknown;
  /** Value as drawn; null where it is of another kind. */
  readonly now: number | null;
  readonly low: MemberSummary | null;
  readonly high: MemberSummary | null;
  /** Change of the peak moisture content of the wood from the base, at the low and high end [points]; null while unknown. */
  readonly moisture_points: readonly [number | null, number | null];
  /** Change of the largest 30-day mean humidity [points of RH]. */
  readonly humidity_points: readonly [number | null, number | null];
}

export interface WhatIfAnswer {
  readonly option: string;
  readonly path: string;
  readonly base: MemberSummary | null;
  /** Largest effect first. */
  readonly bars: readonly Bar[];
  /** Everything plausible at once on the bad side. */
  readonly pessimist: { readonly summary: MemberSummary; readonly holds: boolean | null; readonly made: string } | null;
  readonly band: Band | null;
  /** Inputs that turn the answer over within their range, nearest first. */
  readonly flips: readonly Flip[];
  readonly missing: number;
  readonly lead: Phrase;
}

/** Bad side of the inputs that make the pessimist run. Common practice, no source. */
const pessimistValues: Readonly<Record<string, number>> = {
  airLeak: 0.2,
  winterHumidity: 0.45,
  weatherYear: 1,
  sheathingPermeance: 0.5,
  rainEntry: 0.01,
};

/** What if we are wrong? Low and high of each unknown, a pessimist run, a sample, and the input that flips the answer first. */
export function whatIf(question: WhatIfQuestion): Study<WhatIfAnswer> {
  const base = question.case;
  const applicable = unknownsOf(base, question.unknowns ?? usualUnknowns);
  const named = applicable.filter((unknown) => question.notKnown?.includes(unknown.id));
  const tried = [...named, ...applicable.filter((unknown) => !named.includes(unknown))].slice(
    0,
    Math.max(question.most ?? 8, named.length),
  );
  const pessimist = applicable.filter((unknown) => unknown.id in pessimistValues);
  const ends: Member[] = tried.flatMap((unknown) =>
    [endMember(base, unknown, "low"), endMember(base, unknown, "high")].filter((each) => each !== null),
  );
  const sample = latinRows(question.sample?.runs ?? 0, tried.length, question.sample?.seed ?? 1);
  const members: Member[] = [
    { key: "base", label: "as drawn", case: base },
    ...ends,
    {
      key: "pessimist",
      label: "everything on the bad side",
      case: pessimist.reduce((each, unknown) => unknown.apply(each, pessimistValues[unknown.id]!), base),
    },
    ...sample.map((row, index) => ({
      key: `sample:${index}`,
      label: `sample ${index + 1} of ${sample.length}`,
      case: tried.reduce((each, unknown, column) => unknown.apply(each, valueAt(unknown, row[column]!)), base),
    })),
  ];
  return {
    id: `what-if:${base.option}/${base.path}`,
    members,
    next: (done) => (question.flips === false ? [] : flipMembers(base, tried, done)),
    reduce: (done) => {
      const baseSummary = finished(done, "base");
      const bars = tried.map((unknown) => barOf(unknown, done, baseSummary)).sort((a, b) => sizeOf(b) - sizeOf(a));
      const flips = tried.flatMap((unknown) => flipOf(unknown, done) ?? []).sort((a, b) => a.distance - b.distance);
      const worst = finished(done, "pessimist");
      const answer = {
        option: base.option,
        path: base.path,
        base: baseSummary,
        bars,
        pessimist:
          worst === null
            ? null
            : {
                summary: worst,
                holds: holdsAll(worst),
                made: pessimist
                  .map((unknown) => `${unknown.label}: ${endWords(unknown, pessimistValues[unknown.id]!)}`)
                  .join("; "),
              },
        band: bandOf(tried, sample, done),
        flips,
        missing: members.filter((member) => finished(done, member.key) === null).length,
      };
      return { ...answer, lead: lead(answer) };
    },
  };
}

const latinRows = (runs: number, dimensions: number, seed: number): readonly (readonly number[])[] =>
  runs > 0 && dimensions > 0 ? latinHypercube(runs, dimensions, seed) : [];

/** Null where the end is what is drawn already: the base run answers for it. */
function endMember(base: Case, unknown: UnknownOfCase, end: "low" | "high"): Member | null {
  const value = unknown[end];
  return unknown.now === value
    ? null
    : {
        key: `${unknown.id}:${end}`,
        label: `${unknown.label}, ${endWords(unknown, value)}`,
        case: unknown.apply(base, value),
      };
}

/** "0.2 m³/(h m²)", "cold year", "45 %". */
export function endWords(unknown: Unknown, value: number): string {
  if (unknown.endLabels !== undefined) return unknown.endLabels[value >= (unknown.low + unknown.high) / 2 ? 1 : 0];
  if (unknown.unit === "") return `${Number((value * 100).toPrecision(3))} %`;
  return `${Number(value.toPrecision(3))} ${unknown.unit}`;
}

const finished = (done: Done, key: string): MemberSummary | null => {
  const summary = done.get(key);
  return summary?.status === "finished" ? summary : null;
};

/** Summary at an end; the base where the end is what is drawn. */
export function atEnd(unknown: UnknownOfCase, end: "low" | "high", done: Done): MemberSummary | null {
  return finished(done, unknown.now === unknown[end] ? "base" : `${unknown.id}:${end}`);
}

function barOf(unknown: UnknownOfCase, done: Done, base: MemberSummary | null): Bar {
  const low = atEnd(unknown, "low", done);
  const high = atEnd(unknown, "high", done);
  const change = (summary: MemberSummary | null, of: (each: MemberSummary) => number | null): number | null => {
    const from = base === null ? null : of(base);
    const to = summary === null ? null : of(summary);
    return from === null || to === null ? null : to - from;
  };
  const both = (of: (each: MemberSummary) => number | null): [number | null, number | null] => [
    change(low, of),
    change(high, of),
  ];
  const { now, apply, ...plain } = unknown;
  void apply;
  return {
    unknown: plain,
    now,
    low,
    high,
    moisture_points: both((each) => each.peakMoisture_percent),
    humidity_points: both((each) => each.thirtyDayHumidity * 100),
  };
}

const sizeOf = (bar: Bar): number => {
  const moisture = Math.max(...bar.moisture_points.map((value) => Math.abs(value ?? 0)));
  return moisture > 0 ? moisture : Math.max(...bar.humidity_points.map((value) => Math.abs(value ?? 0))) / 10;
};

function lead(answer: Omit<WhatIfAnswer, "lead">): Phrase {
  if (answer.base === null) return phrase`Not known yet: the wall as drawn has not been run.`;
  const holds = holdsAll(answer.base) === true;
  const verdict = holds
    ? phrase`As drawn, every finding that decides holds.`
    : phrase`As drawn, ${brokenWords(answer.base)}.`;
  const first = answer.flips[0];
  const most = answer.bars.find((bar) => bar.moisture_points.some((value) => value !== null));
  const moves = most === undefined ? [] : [phrase`${most.unknown.label} moves the answer most.`];
  const flip =
    first === undefined
      ? answer.missing === 0
        ? [phrase`No single input within its range turns that over.`]
        : []
      : [
          holds
            ? phrase`First to break it: ${lowerFirst(first.unknown.label)}, at ${endWords(first.unknown, first.value)}.`
            : phrase`First to mend it: ${lowerFirst(first.unknown.label)}, at ${endWords(first.unknown, first.value)}.`,
        ];
  const worst = answer.pessimist;
  const bad =
    worst === null || worst.summary.peakMoisture_percent === null
      ? []
      : [
          phrase`With everything on the bad side the wood peaks at ${amount("moisture", worst.summary.peakMoisture_percent)}.`,
        ];
  return joined(verdict, ...moves, ...flip, ...bad);
}

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

function brokenWords(summary: MemberSummary): string {
  const count = broken(summary).length;
  return count === 1 ? "one finding is broken" : `${count} findings are broken`;
}
