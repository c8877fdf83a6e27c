import type { Finding, RunResult } from "../../../solver/index.ts";
import type { Ran } from "../run-contract.ts";

const figure = (value: number): string =>
  Math.abs(value) >= 100 ? value.toFixed(0) : String(Number(value.toPrecision(3)));

/** One finding: the sentence, then what stands under it. */
function findingLines(finding: Finding): string {
  const parts = [`measured ${figure(finding.measured)} ${finding.unit}`];
  if (finding.limit !== null) parts.push(`limit ${figure(finding.limit)}`);
  if (finding.margin !== null) parts.push(`margin ${figure(finding.margin)}`);
  if (finding.when !== "") parts.push(finding.when);
  return `  ${finding.statement}\n      ${parts.join("; ")}\n`;
}

const closure = (value: number): string => (value === 0 ? "exactly" : `within ${value.toExponential(1)}`);

function statusLine(result: RunResult): string {
  if (result.status !== "failed" || result.failure === null) return "";
  const { date, hour, layer, cause, remedy } = result.failure;
  return `  The run could not go on at ${date} (hour ${hour}), in ${layer}: ${cause}\n      ${remedy}\n      What was computed until then is kept.\n`;
}

/** A run for people who read the terminal. */
export function runText({ case: aCase, result, findings }: Ran): string {
  const { log, water, heat } = result;
  return [
    `${result.option} ${result.path}: ${aCase.optionName}, ${aCase.pathName}\n`,
    statusLine(result),
    ...(findings.length > 0 ? findings.map(findingLines) : ["  No finding applies to this run.\n"]),
    `  Books close: water ${closure(water.closure)}, heat ${closure(heat.closure)}. `,
    `${log.cells} cells, ${log.steps} steps, ${log.seconds.toFixed(1)} s.\n`,
  ].join("");
}
