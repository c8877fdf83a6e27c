import { daysInMonth, firstDayOfMonth, monthOfDay } from "../calendar.ts";
import type { DailyClearness } from "./clearness.ts";
import { dailyFromMonthly, hourlyFromNoons } from "./monthly-to-daily.ts";
import { autoregressive, type Random } from "./random.ts";
import { seasonOfDay } from "./seasons.ts";
import type { SkyOfYear } from "./spencer-sun.ts";

/** Constants by season, winter to autumn, fitted on 52 to 57 typical-year files (COMPUTED). */
const withClearness = [-0.28, 0.1, 0.39, 0];
const rangeWithClearness = [0.6, 0.7, 0.73, 0.72];
const rangeScatter = 0.2;
const noiseCorrelation = 0.93;
const noiseWindow_h = 25;
/** Warmest moment of the day, solar time [h]. */
const warmest_h = 14.6;

export interface MonthlyTemperature {
  readonly mean_C: readonly number[];
  readonly range_K: readonly number[];
  readonly deviation_K: readonly number[];
  readonly correlation: readonly number[];
}

/** Departure of each day's mean from the month's course [K]: part clearness, part persistence; mean 0 and given spread each month. */
export function dailyAnomaly(
  normals: MonthlyTemperature,
  clearness: DailyClearness,
  latitude_deg: number,
  random: Random,
): Float64Array {
  const correlation = dailyFromMonthly(normals.correlation);
  const own = autoregressive(random, 365, (day) => Math.min(0.95, Math.max(0, correlation[day]!)));
  const z = standardised(clearness.daily);
  const anomaly = Float64Array.from({ length: 365 }, (_, day) => {
    const rho = withClearness[seasonOfDay(day, latitude_deg)]!;
    return rho * z[day]! + Math.sqrt(1 - rho * rho) * own[day]!;
  });
  const unit = standardised(anomaly);
  return unit.map((value, day) => value * normals.deviation_K[monthOfDay(day)]!);
}

/** Each month to mean 0 and standard deviation 1; a month that does not vary becomes 0. */
function standardised(daily: Float64Array): Float64Array {
  const out = new Float64Array(365);
  daysInMonth.forEach((days, month) => {
    const first = firstDayOfMonth[month]!;
    let mean = 0;
    for (let d = 0; d < days; d++) mean += daily[first + d]! / days;
    let square = 0;
    for (let d = 0; d < days; d++) square += (daily[first + d]! - mean) ** 2 / days;
    const deviation = Math.sqrt(square);
    for (let d = 0; d < days; d++) out[first + d] = deviation > 1e-9 ? (daily[first + d]! - mean) / deviation : 0;
  });
  return out;
}

/**
 * Hourly temperature [degC]: daily means joined from noon to noon, a day's wave of half cosines (after de Wit and Goudriaan),
 * and sub-daily noise that makes up the rest of the mean daily range; every month shifted to its exact mean.
 */
export function hourlyTemperature(
  normals: MonthlyTemperature,
  anomaly: Float64Array,
  clearness: DailyClearness,
  sky: SkyOfYear,
  latitude_deg: number,
  random: Random,
): Float64Array {
  const mean = dailyFromMonthly(normals.mean_C);
  const base = hourlyFromNoons(mean.map((m, day) => m + anomaly[day]!));
  const wave = new Float64Array(8760);
  for (let day = 0; day < 365; day++) {
    const month = monthOfDay(day);
    const b = rangeWithClearness[seasonOfDay(day, latitude_deg)]!;
    const k = clearness.monthly[month]!;
    const clear = k > 0 ? clearness.daily[day]! / k - 1 : 0;
    const factor = Math.min(2, Math.max(0.25, 1 + b * clear + rangeScatter * random.normal()));
    const size = factor * profileShare(normals, clearness, month) * normals.range_K[month]!;
    const shape = dayShape(sky.sunset[day]!, sky.solarShift_h[day]!);
    for (let h = 0; h < 24; h++) wave[day * 24 + h] = size * shape[h]!;
  }
  const noise = subDailyNoise(random);
  const temperature = base.map((t, k) => t + wave[k]!);
  daysInMonth.forEach((days, month) => {
    const from = firstDayOfMonth[month]! * 24;
    const to = from + days * 24;
    const size = noiseFor(temperature, noise, from, to, normals.range_K[month]!);
    let sum = 0;
    for (let k = from; k < to; k++) {
      temperature[k]! += size * noise[k]!;
      sum += temperature[k]!;
    }
    const shift = normals.mean_C[month]! - sum / (to - from);
    for (let k = from; k < to; k++) temperature[k]! += shift;
  });
  return temperature;
}

/** Span of the mean day's profile over mean maximum minus minimum (fitted on 57 files, correlation 0.86; COMPUTED). */
function profileShare(normals: MonthlyTemperature, clearness: DailyClearness, month: number): number {
  let outside = 0;
  const first = firstDayOfMonth[month]!;
  for (let d = 0; d < daysInMonth[month]!; d++)
    outside += clearness.outside_Whm2[first + d]! / daysInMonth[month]! / 1000;
  const q =
    0.571 +
    0.54 * clearness.monthly[month]! +
    0.0063 * outside -
    (0.346 * normals.deviation_K[month]!) / normals.range_K[month]!;
  return Math.min(0.97, Math.max(0.45, q));
}

/** Wave of a day at the ends of its hours, from trough to crest 1, mean 0. */
function dayShape(sunset: number, solarShift_h: number): number[] {
  const sunrise = Math.min(8, Math.max(3.5, 12 - (sunset * 12) / Math.PI));
  const shape = Array.from({ length: 24 }, (_, h) => {
    const solar = (h + 1 + solarShift_h + 48) % 24;
    if (solar >= sunrise && solar <= warmest_h)
      return -0.5 * Math.cos((Math.PI * (solar - sunrise)) / (warmest_h - sunrise));
    const since = solar > warmest_h ? solar - warmest_h : solar + 24 - warmest_h;
    return 0.5 * Math.cos((Math.PI * since) / (sunrise + 24 - warmest_h));
  });
  const mean = shape.reduce((sum, v) => sum + v, 0) / 24;
  return shape.map((v) => v - mean);
}

function subDailyNoise(random: Random): Float64Array {
  const raw = autoregressive(random, 8760, noiseCorrelation);
  const half = (noiseWindow_h - 1) / 2;
  return raw.map((value, k) => {
    let sum = 0;
    for (let j = k - half; j <= k + half; j++) sum += raw[(j + 8760) % 8760]!;
    return value - sum / noiseWindow_h;
  });
}

/** Size of the noise that brings the mean daily range of hours from..to to the wanted one; 0 if the wave alone exceeds it. */
function noiseFor(temperature: Float64Array, noise: Float64Array, from: number, to: number, wanted_K: number): number {
  const rangeWith = (size: number): number => {
    let sum = 0;
    for (let day = from; day < to; day += 24) {
      let low = Infinity;
      let high = -Infinity;
      for (let k = day; k < day + 24; k++) {
        const t = temperature[k]! + size * noise[k]!;
        if (t < low) low = t;
        if (t > high) high = t;
      }
      sum += high - low;
    }
    return sum / ((to - from) / 24);
  };
  let low = 0;
  let high = 20;
  if (rangeWith(0) >= wanted_K) return 0;
  for (let pass = 0; pass < 24; pass++) {
    const middle = 0.5 * (low + high);
    if (rangeWith(middle) < wanted_K) low = middle;
    else high = middle;
  }
  return 0.5 * (low + high);
}
