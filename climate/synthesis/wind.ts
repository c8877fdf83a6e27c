import { daysInMonth, firstDayOfMonth } from "../calendar.ts";
import { autoregressive, type Random } from "./random.ts";
import { seasonOfDay } from "./seasons.ts";

/** COMPUTED medians of 57 typical-year files: hourly correlation, afternoon swing by season, wind in wet hours. */
const hourToHour = 0.82;
const afternoonSwing = [0.21, 0.31, 0.36, 0.3];
const windiest_h = 14.5;
const inWetHours = 1.14;

/** Share of the standard normal distribution below x. Source: Abramowitz and Stegun 7.1.26, error 1.5e-7. */
export function normalShareBelow(x: number): number {
  const z = Math.abs(x) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * z);
  const tail =
    t *
    (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429)))) *
    Math.exp(-z * z);
  return x >= 0 ? 1 - 0.5 * tail : 0.5 * tail;
}

/** Hourly wind [m/s]: Weibull with shape 2, correlated, stronger in the afternoon and in rain, exact monthly means. */
export function hourlyWind(
  means_ms: readonly number[],
  rain_mm: Float64Array,
  latitude_deg: number,
  random: Random,
): Float64Array {
  const series = autoregressive(random, 8760, hourToHour);
  const wind = series.map((x, k) => {
    const weibull = Math.sqrt(-Math.log(Math.max(1e-12, 1 - normalShareBelow(x))));
    const swing = afternoonSwing[seasonOfDay(Math.floor(k / 24), latitude_deg)]!;
    const ofDay = 1 + swing * Math.cos((2 * Math.PI * ((k % 24) + 1 - windiest_h)) / 24);
    return weibull * ofDay * (rain_mm[k]! > 0 ? inWetHours : 1);
  });
  daysInMonth.forEach((days, month) => {
    const from = firstDayOfMonth[month]! * 24;
    let sum = 0;
    for (let k = from; k < from + days * 24; k++) sum += wind[k]!;
    const factor = (means_ms[month]! * days * 24) / sum;
    for (let k = from; k < from + days * 24; k++) wind[k]! *= factor;
  });
  return wind;
}
