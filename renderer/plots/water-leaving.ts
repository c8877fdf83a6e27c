import type { MonthlyFlows } from "../../solver/index.ts";

/** Water that crosses the two faces of one layer, month by month [kg/m2]; positive leaves the layer, negative arrives. */
export interface WaterLeaving {
  readonly toOutside: readonly number[];
  readonly toRoom: readonly number[];
  /** Brought to the layer from inside the wall: leaking air, leaking rain, a cavity. */
  readonly sources: readonly { readonly cause: string; readonly gain: readonly number[] }[];
}

/** Null when the run keeps no books at the layer's faces. Flows of a run are positive inward. */
export function waterLeaving(monthly: MonthlyFlows | null, layer: string): WaterLeaving | null {
  const outer = monthly?.interfaces.find((row) => row.probe === `${layer}-outside`);
  const inner = monthly?.interfaces.find((row) => row.probe === `${layer}-inside`);
  if (!monthly || !outer || !inner) return null;
  const sum = (row: typeof outer): number[] => row.vapour.map((vapour, month) => vapour + (row.liquid[month] ?? 0));
  return {
    toOutside: sum(outer).map((flow) => -flow),
    toRoom: sum(inner),
    sources: monthly.sources.filter((row) => row.layer === layer).map(({ cause, gain }) => ({ cause, gain })),
  };
}

/**
 * Share of the water that leaves a layer to each side in the given months (places in the run's own order).
 * Arriving months count nothing: this is where water goes, not the balance. Null when nothing leaves.
 */
export function leavingShares(
  flow: WaterLeaving,
  months: readonly number[],
): { outward: number; inward: number; total_kgm2: number } | null {
  const leaving = (row: readonly number[]): number =>
    months.reduce((sum, month) => sum + Math.max(0, row[month] ?? 0), 0);
  const outward = leaving(flow.toOutside);
  const inward = leaving(flow.toRoom);
  const total = outward + inward;
  return total > 0 ? { outward: outward / total, inward: inward / total, total_kgm2: total } : null;
}
