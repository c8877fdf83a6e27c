import {
  coldestSeason,
  loadsOf,
  monthlyAir,
  weatherOf,
  type Case,
  type MonthlyAir,
  type NamedTexts,
  type Winter,
} from "../../solver/index.ts";

/** Monthly air of the place and the room of a case on a site; null for a laboratory case or unreadable weather. */
export function airOf(aCase: Case, files: NamedTexts): MonthlyAir | null {
  if (aCase.exposure.kind !== "site") return null;
  const weather = weatherOf(aCase.exposure.site.weather, files);
  if (!weather.ok) return null;
  const loads = loadsOf(aCase, weather.value, files);
  return loads.ok ? monthlyAir(loads.value) : null;
}

/** Means of the three coldest months, for the hand rules beside a study's answer. */
export function winterOf(air: MonthlyAir): Winter {
  const { mean, months } = coldestSeason(air.outdoor_C);
  const over = (series: readonly number[]): number => months.reduce((sum, month) => sum + series[month]!, 0) / 3;
  return { outdoor_C: mean, room_C: over(air.room_C), roomHumidity: over(air.roomHumidity) };
}
