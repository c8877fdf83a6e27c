import { daysInMonth, firstDayOfMonth } from "../calendar.ts";
import { ranksOf } from "./clearness.ts";
import type { Random } from "./random.ts";

/**
 * Rain of a wet day [mm]: 8 in general, 5 in cool marine and northern places. Source: precipitation over days with precipitation in
 * 41 US cities, median 8.7, 5.0 to 11.9 for 10 to 90 % (SEEN table of US air pollution and climate, Sokal and Rohlf 1981).
 */
export function rainOfWetDay_mm(climateZone: string, latitude_deg: number): number {
  return climateZone.endsWith("C") || Math.abs(latitude_deg) >= 55 ? 5 : 8;
}

/** Hours of rain on a day: 1.2 mm^0.55 and up to two more. */
const hoursOfRain = (mm: number, random: Random): number =>
  Math.max(1, Math.min(24, Math.round(1.2 * mm ** 0.55 + 2 * random.uniform())));

/**
 * Hourly rain [mm] from monthly sums: wet days are the cloudiest (lowest clearness and a little chance), amounts exponential,
 * one block of hours a day.
 */
export function hourlyRain(
  monthly_mm: readonly number[],
  wetDay_mm: number,
  dailyClearness: Float64Array,
  random: Random,
): Float64Array {
  const rain = new Float64Array(8760);
  daysInMonth.forEach((days, month) => {
    const total = monthly_mm[month]!;
    if (!(total > 0)) return;
    const first = firstDayOfMonth[month]!;
    const wetDays = Math.min(days - 1, Math.max(1, Math.round(total / wetDay_mm)));
    const dryness = Array.from({ length: days }, (_, d) => dailyClearness[first + d]! + 0.05 * random.normal());
    const ranks = ranksOf(dryness);
    const amounts = Array.from({ length: wetDays }, () => 0.1 - Math.log(1 - random.uniform()));
    const scale = total / amounts.reduce((sum, amount) => sum + amount, 0);
    let used = 0;
    for (let d = 0; d < days; d++) {
      if (ranks[d]! >= wetDays) continue;
      const mm = amounts[used++]! * scale;
      const hours = hoursOfRain(mm, random);
      const start = Math.floor(random.uniform() * (25 - hours));
      const weights = Array.from({ length: hours }, () => 0.15 - Math.log(1 - random.uniform()));
      const sum = weights.reduce((a, b) => a + b, 0);
      weights.forEach((weight, h) => (rain[(first + d) * 24 + start + h] = (mm * weight) / sum));
    }
  });
  return rain;
}
