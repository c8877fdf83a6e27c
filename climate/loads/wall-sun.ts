import { faceIrradiance } from "../sun/face-irradiance.ts";
import { sunAtHour } from "../sun/sun-position.ts";
import type { WeatherYear } from "../weather-year.ts";
import { usual, type FaceSetting } from "./settings.ts";

/** Sun on a face, mean of each hour [W/m2], with the sun where it stands in the middle of the hour. */
export function wallSun_Wm2(
  weather: WeatherYear,
  face: Pick<FaceSetting, "azimuth_deg" | "tilt_deg" | "groundReflectance" | "overhang">,
  model: "hdkr" | "isotropic" = "hdkr",
): Float64Array {
  const geometry = {
    azimuth_deg: face.azimuth_deg,
    tilt_deg: face.tilt_deg,
    groundReflectance: face.groundReflectance ?? usual.groundReflectance,
    overhang: face.overhang,
  };
  const out = new Float64Array(weather.hours);
  for (let k = 0; k < out.length; k++) {
    const global = weather.globalHorizontal_Wm2[k]!;
    const direct = weather.directNormal_Wm2[k]!;
    const diffuse = weather.diffuseHorizontal_Wm2[k]!;
    if (global <= 0 && direct <= 0 && diffuse <= 0) continue;
    out[k] = faceIrradiance(sunAtHour(weather.place, k + 0.5), global, direct, diffuse, geometry, model).total_Wm2;
  }
  return out;
}
