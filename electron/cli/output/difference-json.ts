import type { ProbeSeries, RunResult } from "../../../solver/index.ts";
import { moistureContent_percent, monthlyMeans, rangeOf, type Range } from "./judged-year.ts";

const minus = (b: Range | null, a: Range | null): Range | null =>
  a === null || b === null ? null : { min: b.min - a.min, mean: b.mean - a.mean, max: b.max - a.max };

const minusMonthly = (b: number[] | null, a: number[] | null): number[] | null =>
  a === null || b === null ? null : b.map((value, month) => value - a[month]!);

/** Ranges and monthly means of the second probe less those of the first. */
function probeDifference(a: ProbeSeries, ofA: RunResult, b: ProbeSeries, ofB: RunResult): object {
  const moistureA = moistureContent_percent(a);
  const moistureB = moistureContent_percent(b);
  const wood = moistureA !== null && moistureB !== null;
  return {
    id: a.id,
    label: a.label,
    T_C: minus(rangeOf(b.T_C, ofB), rangeOf(a.T_C, ofA)),
    RH: minus(rangeOf(b.RH, ofB), rangeOf(a.RH, ofA)),
    MC_percent: wood ? minus(rangeOf(moistureB, ofB), rangeOf(moistureA, ofA)) : null,
    monthly: {
      T_C: minusMonthly(monthlyMeans(b.T_C, ofB), monthlyMeans(a.T_C, ofA)),
      RH: minusMonthly(monthlyMeans(b.RH, ofB), monthlyMeans(a.RH, ofA)),
      MC_percent: wood ? minusMonthly(monthlyMeans(moistureB, ofB), monthlyMeans(moistureA, ofA)) : null,
    },
  };
}

export interface PathPair {
  readonly path: string;
  readonly a: RunResult;
  readonly b: RunResult;
}

/** Runs of two options paired by path; a path that only one of them has is left out. */
export function pairsOf(results: readonly RunResult[], a: string, b: string): PathPair[] {
  return results
    .filter((result) => result.option === a)
    .flatMap((first) => {
      const second = results.find((result) => result.option === b && result.path === first.path);
      return second === undefined ? [] : [{ path: first.path, a: first, b: second }];
    });
}

/** For every probe that both runs have: the second less the first. */
export function differenceJson({ path, a, b }: PathPair): object {
  const probes = a.probes.flatMap((probe) => {
    const other = b.probes.find((candidate) => candidate.id === probe.id);
    return other === undefined ? [] : [probeDifference(probe, a, other, b)];
  });
  return { path, from: a.option, to: b.option, probes };
}
