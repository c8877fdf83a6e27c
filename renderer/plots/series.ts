import type { ProbeSeries, RunResult } from "../../solver/index.ts";
import type { TimeScale } from "./calendar.ts";
import { monthSpans } from "./calendar.ts";

/** What is read at a probe. */
export type Quantity = "temperature" | "humidity" | "moisture";

/** Hours of the judged year that a result really holds (fewer than asked for when a run stopped short). */
export function judgedSpan(result: RunResult): { from: number; hours: number } {
  const from = Math.min(result.judgedFrom, result.hours);
  return { from, hours: Math.max(0, Math.min(result.judgedHours, result.hours - from)) };
}

/** Days of the judged year from its first; a run that fell short keeps the whole axis. */
export function timeScaleOf(result: RunResult, laboratory: boolean): TimeScale {
  const startDay = (result.startDay + Math.floor(result.judgedFrom / 24)) % 365;
  return { days: Math.max(1, Math.ceil(result.judgedHours / 24)), startDay: laboratory ? null : startDay };
}

/** Hourly values of one quantity over the judged year. degC; %; % by mass of wood or kg/m3 of others. */
export function hourly(result: RunResult, probe: ProbeSeries, quantity: Quantity): Float64Array {
  const { from, hours } = judgedSpan(result);
  const out = new Float64Array(hours);
  for (let k = 0; k < hours; k++) {
    const hour = from + k;
    if (quantity === "temperature") out[k] = probe.T_C[hour]!;
    else if (quantity === "humidity") out[k] = 100 * probe.RH[hour]!;
    else out[k] = probe.woodDensity_kgm3 ? (100 * probe.w_kgm3[hour]!) / probe.woodDensity_kgm3 : probe.w_kgm3[hour]!;
  }
  return out;
}

/** Means of whole days. A last part of a day is left out: half a day is not a daily mean. */
export function dailyMeans(hours: ArrayLike<number>): Float64Array {
  const days = new Float64Array(Math.floor(hours.length / 24));
  for (let day = 0; day < days.length; day++) {
    let sum = 0;
    for (let hour = 0; hour < 24; hour++) sum += hours[24 * day + hour]!;
    days[day] = sum / 24;
  }
  return days;
}

/** Means of daily values by calendar month, in the order of the run; months without a whole day are left out. */
export function monthlyMeans(days: ArrayLike<number>, startDay: number): { month: number; mean: number }[] {
  return monthSpans(startDay, days.length).map(({ month, from, to }) => {
    let sum = 0;
    for (let day = from; day < to; day++) sum += days[day]!;
    return { month, mean: sum / (to - from) };
  });
}

/** B less A, day by day, over the days that both hold. */
export function difference(a: ArrayLike<number>, b: ArrayLike<number>): Float64Array {
  const out = new Float64Array(Math.min(a.length, b.length));
  for (let day = 0; day < out.length; day++) out[day] = b[day]! - a[day]!;
  return out;
}

export interface Peak {
  readonly day: number;
  readonly value: number;
}

/** The largest value and its first day; null of nothing. */
export function highest(values: ArrayLike<number>): Peak | null {
  let best: Peak | null = null;
  for (let day = 0; day < values.length; day++)
    if (!best || values[day]! > best.value) best = { day, value: values[day]! };
  return best;
}

export function lowest(values: ArrayLike<number>): Peak | null {
  let best: Peak | null = null;
  for (let day = 0; day < values.length; day++)
    if (!best || values[day]! < best.value) best = { day, value: values[day]! };
  return best;
}

/** The largest running mean over `width` days and where it lies; null when there are fewer days. */
export function highestRunningMean(
  values: ArrayLike<number>,
  width: number,
): { from: number; to: number; mean: number } | null {
  if (values.length < width || width < 1) return null;
  let sum = 0;
  for (let day = 0; day < width; day++) sum += values[day]!;
  let best = { from: 0, to: width - 1, mean: sum / width };
  for (let day = width; day < values.length; day++) {
    sum += values[day]! - values[day - width]!;
    if (sum / width > best.mean) best = { from: day - width + 1, to: day, mean: sum / width };
  }
  return best;
}
