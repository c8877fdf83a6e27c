import { monthOfDay } from "../calendar.ts";

export interface DegreeDays {
  /** Base 18 degC, 12 months [K d]. */
  readonly heating18_Kd: readonly number[];
  /** Base 18.33 degC (65 degF), which the zone limits were drawn with. */
  readonly heating65F_Kd: readonly number[];
  /** Base 10 degC (50 degF). */
  readonly cooling10_Kd: readonly number[];
}

/** Degree-days by month, from the mean of each day's 24 hourly values. Source: definition in the climate-zone tables of the IRC. */
export function degreeDays(temperature_C: ArrayLike<number>): DegreeDays {
  const heating18_Kd = new Array<number>(12).fill(0);
  const heating65F_Kd = new Array<number>(12).fill(0);
  const cooling10_Kd = new Array<number>(12).fill(0);
  for (let day = 0; day < 365; day++) {
    let mean = 0;
    for (let h = 0; h < 24; h++) mean += temperature_C[day * 24 + h]! / 24;
    const month = monthOfDay(day);
    heating18_Kd[month]! += Math.max(0, 18 - mean);
    heating65F_Kd[month]! += Math.max(0, 55 / 3 - mean);
    cooling10_Kd[month]! += Math.max(0, mean - 10);
  }
  return { heating18_Kd, heating65F_Kd, cooling10_Kd };
}
