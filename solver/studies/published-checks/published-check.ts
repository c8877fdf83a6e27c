import type { Flag } from "../../materials/index.ts";
import type { Project } from "../../model/index.ts";
import type { ProbeSeries, RunResult } from "../../run/index.ts";

/** One figure of a published check beside the run's own. */
export interface CheckRow {
  readonly what: string;
  readonly unit: string;
  readonly expected: number;
  readonly got: number;
  /** Largest |got - expected| that still holds. */
  readonly tolerance: number;
  readonly holds: boolean;
}

/** A case whose answer is known from outside the program, as an ordinary project with laboratory faces. */
export interface PublishedCheck {
  readonly id: string;
  readonly title: string;
  /** The published document, or the formula's name where the answer is a closed form. */
  readonly source: string;
  /** How the definition and the answer are known. */
  readonly flag: Flag;
  readonly compares: string;
  /** The tolerance in words, and why it is that. */
  readonly tolerance: string;
  /** True: more than a few seconds on a usual machine. */
  readonly slow: boolean;
  /** The project: what a user would write to put the same question. Built on request. */
  readonly project: () => Project;
  /** One result for each path of each option, in the order of the project. */
  readonly compare: (results: readonly RunResult[]) => readonly CheckRow[];
}

/** A place in the wall: a depth from the outer face, a layer's own face, or the mean of a layer. */
export type Place =
  | { readonly depth_m: number }
  | { readonly layer: string; readonly side: "outside" | "inside" }
  | { readonly mean: string };

/** A check asked for a place or an hour that the run did not record. */
export class NotRecordedError extends Error {
  override readonly name = "NotRecordedError";
}

/** The comparison of one figure. NaN never holds. */
export function checkRow(what: string, unit: string, expected: number, got: number, tolerance: number): CheckRow {
  return { what, unit, expected, got, tolerance, holds: Math.abs(got - expected) <= tolerance };
}

/** The series recorded at a place. Throws NotRecordedError when there is none. */
export function probeAt(result: RunResult, place: Place): ProbeSeries {
  const found = result.probes.find((probe) =>
    "depth_m" in place
      ? probe.kind === "depth" && Math.abs(probe.depth_m - place.depth_m) < 1e-9
      : "mean" in place
        ? probe.kind === "layerMean" && probe.layer === place.mean
        : probe.kind === "interface" && probe.layer === place.layer && probe.side === place.side,
  );
  if (!found) throw new NotRecordedError(`no probe at ${JSON.stringify(place)} on path ${result.path}`);
  return found;
}

/** Temperature [degC], relative humidity [0..1] and water [kg/m3] at a place, `hour` hours after the start (a whole number >= 1). */
export function stateAt(result: RunResult, place: Place, hour: number): { T_C: number; RH: number; w_kgm3: number } {
  const probe = probeAt(result, place);
  const k = hour - 1;
  const T_C = probe.T_C[k];
  const RH = probe.RH[k];
  const w_kgm3 = probe.w_kgm3[k];
  if (k >= result.hours || T_C === undefined || RH === undefined || w_kgm3 === undefined)
    throw new NotRecordedError(`hour ${hour} of ${result.hours} is not recorded at ${probe.id}`);
  return { T_C, RH, w_kgm3 };
}

/** Closure asked of every run: the error of its water and heat books relative to the turnover [-]. */
export const closureTolerance = 1e-6;

/** Whether water and heat are conserved over the whole run; a balance that the case switches off is left out. */
export function bookRows(result: RunResult, balances: { readonly heat: boolean; readonly water: boolean }): CheckRow[] {
  const rows: CheckRow[] = [];
  const on = result.option === "A" && result.path === "wall" ? "" : `, ${result.option} ${result.path}`;
  if (balances.heat)
    rows.push(checkRow(`Heat books close${on}`, "of turnover", 0, result.heat.closure, closureTolerance));
  if (balances.water)
    rows.push(checkRow(`Water books close${on}`, "of turnover", 0, result.water.closure, closureTolerance));
  return rows;
}
