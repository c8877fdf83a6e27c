import type { WaterBudget } from "../../solver/index.ts";

export interface LeavingShares {
  /** 0..1 of what leaves. */
  readonly outward: number;
  readonly inward: number;
  readonly total_kgm2: number;
}

/**
 * Share of the water that leaves a layer to each side in the given calendar months (0..11). A month in which water comes in
 * through a face counts nothing there: this says where water goes, not how it balances. Null when nothing leaves.
 */
export function leavingShares(
  budget: Pick<WaterBudget, "months" | "inward" | "outward">,
  calendarMonths: readonly number[],
): LeavingShares | null {
  const leaving = (row: readonly number[]): number =>
    row.reduce(
      (sum, flow, place) => (calendarMonths.includes(budget.months[place]!) ? sum + Math.max(0, flow) : sum),
      0,
    );
  const outward = leaving(budget.outward);
  const inward = leaving(budget.inward);
  const total = outward + inward;
  return total > 0 ? { outward: outward / total, inward: inward / total, total_kgm2: total } : null;
}
