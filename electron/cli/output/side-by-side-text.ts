import type { ProbeSeries, RunResult } from "../../../solver/index.ts";
import type { PathPair } from "./difference-json.ts";
import { moistureContent_percent, rangeOf } from "./judged-year.ts";

const cell = (value: number | undefined, digits: number): string =>
  (value === undefined ? "" : value.toFixed(digits)).padStart(9);

function row(what: string, a: number | undefined, b: number | undefined, digits: number): string {
  const difference = a === undefined || b === undefined ? undefined : b - a;
  return `    ${what.padEnd(34)}${cell(a, digits)}${cell(b, digits)}${cell(difference, digits)}`;
}

function probeRows(a: ProbeSeries, ofA: RunResult, b: ProbeSeries, ofB: RunResult): string[] {
  const moisture = (probe: ProbeSeries, result: RunResult): number | undefined => {
    const series = moistureContent_percent(probe);
    return series === null ? undefined : rangeOf(series, result)?.max;
  };
  const wettest = (probe: ProbeSeries, result: RunResult): number | undefined => {
    const range = rangeOf(probe.RH, result);
    return range === null ? undefined : range.max * 100;
  };
  return [
    `  ${a.label}`,
    row("coldest, degC", rangeOf(a.T_C, ofA)?.min, rangeOf(b.T_C, ofB)?.min, 1),
    row("wettest, % RH", wettest(a, ofA), wettest(b, ofB), 0),
    ...(a.woodDensity_kgm3 === null ? [] : [row("wettest, % of dry mass", moisture(a, ofA), moisture(b, ofB), 1)]),
  ];
}

/** Two options in one table: the places that both have, the figures of the judged year, the difference. */
export function sideBySideText({ path, a, b }: PathPair): string {
  const shared = a.probes
    .filter((probe) => probe.kind !== "depth")
    .flatMap((probe) => {
      const other = b.probes.find((candidate) => candidate.id === probe.id);
      return other === undefined ? [] : [probeRows(probe, a, other, b)];
    });
  const head = `${path.padEnd(38)}${a.option.padStart(9)}${b.option.padStart(9)}${`${b.option} - ${a.option}`.padStart(9)}`;
  return [head, ...shared.flat(), ""].join("\n");
}
