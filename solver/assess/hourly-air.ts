import type { HourlyLoads, LoadSeries } from "../../climate/index.ts";

/** Amount of one interval up to the fraction `tau` of it, in units of the interval's length. */
function amount(series: LoadSeries, interval: number, tau: number): number {
  const start = series.start[interval]!;
  const step = series.end[interval]! - start;
  const bulge = series.bulge[interval]!;
  return start * tau + 0.5 * step * tau * tau + bulge * (3 * tau * tau - 2 * tau * tau * tau);
}

/**
 * Means of a load over each hour of a span of the run.
 *
 * @param firstHour counted from the run's start
 * Loads that repeat start over; loads that do not keep their last value.
 */
export function hourlyMeans(
  loads: Pick<HourlyLoads, "time_s" | "repeats">,
  series: LoadSeries,
  firstHour: number,
  hours: number,
): Float64Array {
  const time_s = loads.time_s;
  const intervals = time_s.length - 1;
  if (intervals < 1) throw new RangeError(`loads must hold at least one interval, got ${intervals}`);
  const total_s = time_s[intervals]!;
  const whole = new Float64Array(intervals + 1);
  for (let interval = 0; interval < intervals; interval += 1) {
    const length_s = time_s[interval + 1]! - time_s[interval]!;
    whole[interval + 1] = whole[interval]! + amount(series, interval, 1) * length_s;
  }
  const until = (time: number): number => {
    const rounds = loads.repeats ? Math.floor(time / total_s) : 0;
    const inside_s = time - rounds * total_s;
    const past = rounds * whole[intervals]!;
    if (inside_s >= total_s) return past + whole[intervals]! + (inside_s - total_s) * series.end[intervals - 1]!;
    let low = 0;
    let high = intervals;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (time_s[middle]! <= inside_s) low = middle;
      else high = middle;
    }
    const length_s = time_s[low + 1]! - time_s[low]!;
    return past + whole[low]! + amount(series, low, (inside_s - time_s[low]!) / length_s) * length_s;
  };
  const means = new Float64Array(hours);
  let before = until(firstHour * 3600);
  for (let hour = 0; hour < hours; hour += 1) {
    const after = until((firstHour + hour + 1) * 3600);
    means[hour] = (after - before) / 3600;
    before = after;
  }
  return means;
}
