import { daysInMonth, firstDayOfMonth } from "../calendar.ts";
import { autoregressive, type Random } from "./random.ts";
import type { SkyOfYear } from "./spencer-sun.ts";

export interface DailyClearness {
  /** Clearness index of each day, 0 in polar night. */
  readonly daily: Float64Array;
  readonly monthly: readonly number[];
  /** Horizontal sun outside the atmosphere by day [Wh/m2]. */
  readonly outside_Whm2: Float64Array;
}

/** Correlation of the clearness from day to day, median over 57 typical-year files (COMPUTED). */
const dayToDay = 0.28;
const mostOfADay = 0.82;

/**
 * Daily clearness within each month: distribution of Bendt, Collares-Pereira and Rabl 1981 with the fit of Hollands and Huget 1983
 * (Duffie and Beckman ch. 2), ordered by an autoregressive series, scaled to the month's sum.
 */
export function dailyClearness(global_kWhm2day: readonly number[], sky: SkyOfYear, random: Random): DailyClearness {
  const outside_Whm2 = new Float64Array(365);
  for (let k = 0; k < 8760; k++) outside_Whm2[Math.floor(k / 24)]! += sky.outside_Wm2[k]!;
  const order = autoregressive(random, 365, dayToDay);
  const daily = new Float64Array(365);
  const monthly = daysInMonth.map((days, month) => {
    const first = firstDayOfMonth[month]!;
    let outside = 0;
    for (let d = first; d < first + days; d++) outside += outside_Whm2[d]!;
    if (outside / days < 50) return 0;
    const wanted = global_kWhm2day[month]! * 1000 * days;
    const mean = Math.min(0.78, Math.max(0.1, wanted / outside));
    const ranks = ranksOf(order.subarray(first, first + days));
    for (let d = 0; d < days; d++) daily[first + d] = Math.min(mostOfADay, clearnessAt((ranks[d]! + 0.5) / days, mean));
    // The cap takes a little away; a few rounds put it back on the days below the cap.
    for (let round = 0; round < 8; round++) {
      let sum = 0;
      for (let d = first; d < first + days; d++) sum += daily[d]! * outside_Whm2[d]!;
      for (let d = first; d < first + days; d++) daily[d] = Math.min(mostOfADay, (daily[d]! * wanted) / sum);
    }
    return mean;
  });
  return { daily, monthly, outside_Whm2 };
}

/** The clearness that the share u of the month's days stays below. */
export function clearnessAt(u: number, mean: number): number {
  const least = 0.05;
  const most = 0.6313 + 0.267 * mean - 11.9 * (mean - 0.75) ** 8;
  const xi = (most - least) / (most - mean);
  const g = -1.498 + (1.184 * xi - 27.182 * Math.exp(-1.5 * xi)) / (most - least);
  return Math.log((1 - u) * Math.exp(g * least) + u * Math.exp(g * most)) / g;
}

/** Rank (0 the smallest) of each value. */
export function ranksOf(values: ArrayLike<number>): number[] {
  const index = Array.from({ length: values.length }, (_, k) => k).sort((a, b) => values[a]! - values[b]! || a - b);
  const ranks = new Array<number>(values.length).fill(0);
  index.forEach((k, rank) => (ranks[k] = rank));
  return ranks;
}
