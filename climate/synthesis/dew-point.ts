import { daysInMonth, firstDayOfMonth } from "../calendar.ts";
import { dailyFromMonthly, hourlyFromNoons } from "./monthly-to-daily.ts";
import { autoregressive, type Random } from "./random.ts";
import { seasonOfDay } from "./seasons.ts";

/** By season, winter to autumn (COMPUTED from 57 typical-year files). */
const withTemperature = [1.0, 0.76, 0.35, 0.9];
const ownDeviation_K = [2.2, 2.7, 1.7, 2.1];
const ownCorrelation = 0.55;
/** Dew point stays this far below the temperature [K]. */
const leastDepression_K = 0.2;

/** Hourly dew point [degC]: follows the temperature's anomaly, wanders on its own, stays below the temperature, keeps monthly means. */
export function hourlyDewPoint(
  means_C: readonly number[],
  anomaly: Float64Array,
  temperature_C: Float64Array,
  latitude_deg: number,
  random: Random,
): Float64Array {
  const own = autoregressive(random, 365, ownCorrelation);
  const normal = dailyFromMonthly(means_C);
  const daily = normal.map((value, day) => {
    const season = seasonOfDay(day, latitude_deg);
    return value + withTemperature[season]! * anomaly[day]! + ownDeviation_K[season]! * own[day]!;
  });
  let hourly = new Float64Array(8760);
  for (let pass = 0; pass < 12; pass++) {
    hourly = hourlyFromNoons(daily).map((dew, k) => Math.min(dew, temperature_C[k]! - leastDepression_K));
    daysInMonth.forEach((days, month) => {
      const first = firstDayOfMonth[month]!;
      let sum = 0;
      for (let k = first * 24; k < (first + days) * 24; k++) sum += hourly[k]!;
      const shortfall = means_C[month]! - sum / (days * 24);
      for (let d = first; d < first + days; d++) daily[d]! += shortfall;
    });
  }
  return hourly;
}
