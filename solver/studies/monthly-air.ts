import type { HourlyLoads, LoadSeries } from "../../climate/index.ts";
import { zeroCelsius_K } from "../units.ts";
import { saturationPressure_Pa } from "../physics/steady/saturation-pressure.ts";
import { monthOfDay } from "./calendar.ts";

/** Monthly means of outdoor and room air as the run sees them, January first. */
export interface MonthlyAir {
  readonly outdoor_C: readonly number[];
  readonly room_C: readonly number[];
  /** Room vapour pressure mean over saturation at the mean room temperature, 0..1. */
  readonly roomHumidity: readonly number[];
}

/** Monthly means of the loads of a case over its first year. Valid for loads of at least a year; months without hours are NaN. */
export function monthlyAir(loads: HourlyLoads): MonthlyAir {
  const outdoor_C = means(loads, loads.outside.temperature_K).map((kelvin) => kelvin - zeroCelsius_K);
  const room_C = means(loads, loads.inside.temperature_K).map((kelvin) => kelvin - zeroCelsius_K);
  const pressure = means(loads, loads.inside.vapourPressure_Pa);
  return {
    outdoor_C,
    room_C,
    roomHumidity: pressure.map((value, month) => value / saturationPressure_Pa(room_C[month]!)),
  };
}

function means(loads: HourlyLoads, series: LoadSeries): number[] {
  const sums = new Array<number>(12).fill(0);
  const spans = new Array<number>(12).fill(0);
  const intervals = loads.time_s.length - 1;
  for (let k = 0; k < intervals; k += 1) {
    const from = loads.time_s[k]!;
    if (from >= 365 * 86400) break;
    const span = loads.time_s[k + 1]! - from;
    const month = monthOfDay(loads.startDay + from / 86400);
    sums[month]! += ((series.start[k]! + series.end[k]!) / 2 + series.bulge[k]!) * span;
    spans[month]! += span;
  }
  return sums.map((sum, month) => sum / spans[month]!);
}

/** Mean of the three calendar months in a row that are coldest, and the middle one of them. */
export function coldestSeason(monthly: readonly number[]): {
  readonly mean: number;
  readonly months: readonly number[];
} {
  const seasons = monthly.map((_, month) => {
    const months = [(month + 11) % 12, month, (month + 1) % 12];
    return { months, mean: months.reduce((sum, each) => sum + monthly[each]!, 0) / 3 };
  });
  return seasons.reduce((coldest, season) => (season.mean < coldest.mean ? season : coldest));
}
