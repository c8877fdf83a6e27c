import type { Case } from "../model/index.ts";
import type { RunResult } from "../run/index.ts";
import { monthOfDay } from "./calendar.ts";

/**
 * Where the water of a stretch of the wall came from and went to, month by month of the judged year [kg/m2].
 * stored = sources + in from both faces; `inward` and `outward` are net amounts that left by each face (negative: came in).
 */
export interface WaterBudget {
  /** From and to layer, outside first. */
  readonly from: string;
  readonly to: string;
  /** Calendar month (0..11) of each entry, in the order of the run. */
  readonly months: readonly number[];
  /** Left through the inner face. */
  readonly inward: readonly number[];
  /** Left through the outer face. */
  readonly outward: readonly number[];
  /** Came with leaking air, leaking rain, cavity air. */
  readonly sources: readonly number[];
  readonly byCause: Readonly<Record<string, readonly number[]>>;
  /** Gain of the store in each month. */
  readonly stored: readonly number[];
  /** |sources - inward - outward - stored| summed over the months, over the water that moved. */
  readonly closure: number;
}

/**
 * Budget of the layers `from`..`to` (indices, outside first) of a run. Null for a run without monthly flows (a laboratory
 * run, or one shorter than a year).
 */
export function waterBudget(aCase: Case, result: RunResult, from: number, to: number): WaterBudget | null {
  const monthly = result.monthly;
  if (monthly === null) return null;
  const first = aCase.layers[from];
  const last = aCase.layers[to];
  if (first === undefined || last === undefined || from > to)
    throw new RangeError(`from..to must name layers of the path, got ${from}..${to} of ${aCase.layers.length}`);
  const outer = crossing(result, first.id, "outside");
  const inner = crossing(result, last.id, "inside");
  if (outer === null || inner === null) return null;
  const ids = new Set(aCase.layers.slice(from, to + 1).map((layer) => layer.id));
  const months = Array.from({ length: 12 }, (_, month) => (monthOfDay(result.startDay) + month) % 12);
  const sources = new Array<number>(12).fill(0);
  const byCause: Record<string, number[]> = {};
  for (const source of monthly.sources) {
    if (!ids.has(source.layer)) continue;
    const cause = (byCause[source.cause] ??= new Array<number>(12).fill(0));
    source.gain.forEach((gain, month) => {
      sources[month]! += gain;
      cause[month]! += gain;
    });
  }
  const stored = new Array<number>(12).fill(0);
  for (const layer of monthly.stored)
    if (ids.has(layer.layer))
      for (let month = 0; month < 12; month += 1) stored[month]! += layer.water[month + 1]! - layer.water[month]!;
  const inward = inner;
  const outward = outer.map((flow) => -flow);
  let missing = 0;
  let moved = 0;
  for (let month = 0; month < 12; month += 1) {
    missing += Math.abs(sources[month]! - inward[month]! - outward[month]! - stored[month]!);
    moved +=
      (Math.abs(sources[month]!) + Math.abs(inward[month]!) + Math.abs(outward[month]!) + Math.abs(stored[month]!)) / 2;
  }
  return {
    from: first.id,
    to: last.id,
    months,
    inward,
    outward,
    sources,
    byCause,
    stored,
    closure: moved > 0 ? missing / moved : 0,
  };
}

/** Vapour and liquid together through a face of a layer, positive inward, twelve months. */
function crossing(result: RunResult, layer: string, side: "outside" | "inside"): number[] | null {
  const probe = result.probes.find(
    (candidate) => candidate.kind === "interface" && candidate.layer === layer && candidate.side === side,
  );
  const row = result.monthly?.interfaces.find((candidate) => candidate.probe === probe?.id);
  return row === undefined ? null : row.vapour.map((vapour, month) => vapour + row.liquid[month]!);
}

/** Sum over chosen calendar months (0..11), or over all of them. */
export function sumOver(budget: WaterBudget, values: readonly number[], months?: readonly number[]): number {
  return values.reduce(
    (sum, value, index) => (months === undefined || months.includes(budget.months[index]!) ? sum + value : sum),
    0,
  );
}
