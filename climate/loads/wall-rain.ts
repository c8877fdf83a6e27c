import * as driving from "../rain/driving-rain.ts";
import { siteFactorIso15927 } from "../rain/wall-factor.ts";
import type { WeatherYear } from "../weather-year.ts";
import { usual, type FaceSetting, type RainSetting } from "./settings.ts";

/**
 * Driving rain on a face hour by hour [kg/m2]; snow (below 1 degC) wets no wall.
 * A roof slope takes what falls on it (cos tilt) besides what is driven (sin tilt).
 */
export function wallRain_kgm2(weather: WeatherYear, face: FaceSetting, rain: RainSetting | undefined): Float64Array {
  const height_m = face.height_m ?? usual.height_m;
  const shelter = face.shelter ?? usual.shelter;
  const byIso = rain?.method === "iso15927";
  const exposure = rain?.exposureFactor ?? driving.exposureFactorAshrae160(shelter, height_m);
  const deposition = rain?.depositionFactor ?? driving.depositionFactorAshrae160(face.overhang?.depth_m);
  const isoFactor = siteFactorIso15927(shelter, height_m, face.overhang?.depth_m);
  const tilt = (face.tilt_deg * Math.PI) / 180;
  const falling = face.tilt_deg < 89.999 ? Math.max(0, Math.cos(tilt)) : 0;
  const out = new Float64Array(weather.hours);
  for (let k = 0; k < out.length; k++) {
    const r = weather.rain_mm[k]!;
    if (r <= 0 || weather.temperature_C[k]! < driving.snowBelow_C) continue;
    const wind = weather.windSpeed_ms[k]!;
    const onWall = driving.windOnWall(weather.windDirection_deg[k]!, face.azimuth_deg);
    const driven = byIso
      ? isoFactor * driving.drivingRainIso15927_kgm2h(wind, onWall, r)
      : driving.drivingRainAshrae160_kgm2h(exposure, deposition, wind, onWall, r);
    out[k] = driven * Math.sin(tilt) + r * falling;
  }
  return out;
}
