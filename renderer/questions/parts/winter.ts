import { coldestSeason, type MonthlyAir, type Winter } from "../../../solver/index.ts";

/** Means of the three coldest months, for the hand rules beside a study's answer. */
export function winterOf(air: MonthlyAir): Winter {
  const { mean, months } = coldestSeason(air.outdoor_C);
  const over = (series: readonly number[]): number =>
    months.reduce((sum, month) => sum + series[month]!, 0) / months.length;
  return { outdoor_C: mean, room_C: over(air.room_C), roomHumidity: over(air.roomHumidity) };
}
