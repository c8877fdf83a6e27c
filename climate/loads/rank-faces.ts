import { daysInMonth, monthlyMeans } from "../calendar.ts";
import { wallRain_kgm2 } from "./wall-rain.ts";
import { wallSun_Wm2 } from "./wall-sun.ts";
import type { FaceSetting, RainSetting } from "./settings.ts";
import type { WeatherYear } from "../weather-year.ts";

export interface RankedFace {
  readonly name: string;
  readonly azimuth_deg: number;
  /** Driving rain in the year [kg/m2], and by month. */
  readonly rain_kgm2: number;
  readonly monthlyRain_kgm2: readonly number[];
  /** Sun on the face [kWh/m2]: what dries it. */
  readonly sun_kWhm2: number;
  readonly monthlySun_kWhm2: readonly number[];
}

const compass = ["N", "NE", "E", "SE", "S", "SW", "W", "NW"] as const;

/**
 * Eight walls from the wettest to the driest by driving rain; equal ones in compass order from north.
 * @param face  tilt, height, shelter, overhang of all of them (azimuth does not count); a bare wall if left out
 */
export function rankFaces(
  weather: WeatherYear,
  face?: Partial<FaceSetting>,
  rain?: RainSetting,
): readonly RankedFace[] {
  const sums = (hourly: Float64Array): number[] =>
    monthlyMeans(hourly).map((mean, month) => mean * daysInMonth[month]! * 24);
  const total = (months: readonly number[]): number => months.reduce((sum, month) => sum + month, 0);
  return compass
    .map((name, k): RankedFace => {
      const setting: FaceSetting = {
        solarAbsorptance: 0.6,
        longwaveEmissivity: 0.9,
        tilt_deg: 90,
        ...face,
        azimuth_deg: 45 * k,
      };
      const monthlyRain_kgm2 = sums(wallRain_kgm2(weather, setting, rain));
      const monthlySun_kWhm2 = sums(wallSun_Wm2(weather, setting)).map((wh) => wh / 1000);
      return {
        name,
        azimuth_deg: 45 * k,
        rain_kgm2: total(monthlyRain_kgm2),
        monthlyRain_kgm2,
        sun_kWhm2: total(monthlySun_kWhm2),
        monthlySun_kWhm2,
      };
    })
    .sort((a, b) => b.rain_kgm2 - a.rain_kgm2 || a.azimuth_deg - b.azimuth_deg);
}
