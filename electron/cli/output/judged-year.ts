import type { ProbeSeries, RunResult } from "../../../solver/index.ts";

export interface Range {
  readonly min: number;
  readonly mean: number;
  readonly max: number;
}

const monthEnds = [31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365];

/** Month (0 is January) of the hour that ends `hour + 1` hours after the start of the run. */
export function monthOf(hour: number, startDay: number): number {
  const day = (startDay + Math.floor(hour / 24)) % 365;
  return monthEnds.findIndex((end) => day < end);
}

/** Least, mean and greatest of a series over the judged hours. */
export function rangeOf(series: ArrayLike<number>, result: RunResult): Range | null {
  const last = Math.min(result.judgedFrom + result.judgedHours, series.length);
  if (last <= result.judgedFrom) return null;
  let min = Infinity;
  let max = -Infinity;
  let sum = 0;
  for (let hour = result.judgedFrom; hour < last; hour++) {
    const value = series[hour]!;
    if (value < min) min = value;
    if (value > max) max = value;
    sum += value;
  }
  return { min, mean: sum / (last - result.judgedFrom), max };
}

/** Twelve monthly means, January first; null where less than a whole year was judged. */
export function monthlyMeans(series: ArrayLike<number>, result: RunResult): number[] | null {
  if (result.judgedHours < 8760 || series.length < result.judgedFrom + 8760) return null;
  const sums = new Array<number>(12).fill(0);
  const counts = new Array<number>(12).fill(0);
  for (let hour = result.judgedFrom; hour < result.judgedFrom + 8760; hour++) {
    const month = monthOf(hour, result.startDay);
    sums[month]! += series[hour]!;
    counts[month]!++;
  }
  return sums.map((sum, month) => sum / counts[month]!);
}

/** Moisture content in % by mass of a wooden probe, hour by hour; null for all else. */
export function moistureContent_percent(probe: ProbeSeries): Float64Array | null {
  const density = probe.woodDensity_kgm3;
  return density === null ? null : Float64Array.from(probe.w_kgm3, (water) => (water / density) * 100);
}
