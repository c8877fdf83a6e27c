import { saturationPressure_Pa } from "../air/saturation.ts";
import { outdoorConvection_Wm2K, vapourFilm_kgm2sPa } from "../films/surface-films.ts";
import { windFactor } from "../films/local-wind.ts";
import type { FaceLoads } from "../hourly-loads.ts";
import { skyView } from "../sun/overhang.ts";
import { longwaveOnFace_Wm2 } from "../sun/sky-longwave.ts";
import type { WeatherYear } from "../weather-year.ts";
import { dynamicPressure_Pa, windPressureCoefficient, type House } from "./air-pressure.ts";
import { joined, rotated, smoothedMeans, stepped } from "./load-series.ts";
import { usual, type FaceSetting, type RainSetting } from "./settings.ts";
import { wallRain_kgm2 } from "./wall-rain.ts";
import { wallSun_Wm2 } from "./wall-sun.ts";

/** The outdoor face: convection by wind, sun, longwave from sky and ground, rain, wind pressure; hour `first` comes first. */
export function outsideFace(
  weather: WeatherYear,
  face: FaceSetting,
  rain: RainSetting | undefined,
  house: House,
  first: number,
): { readonly loads: FaceLoads; readonly windSpeed_ms: Float64Array } {
  const n = weather.hours;
  const state = (value: (k: number) => number): Float64Array =>
    rotated(
      Float64Array.from({ length: n }, (_, k) => value(k)),
      first,
    );
  const shelter = face.shelter ?? usual.shelter;
  const atWall = windFactor(shelter, face.height_m ?? usual.height_m);
  const atRoof = windFactor(shelter, house.height_m);
  const convection = (k: number): number => outdoorConvection_Wm2K(atWall * weather.windSpeed_ms[k]!);
  const view = skyView(face.tilt_deg, face.overhang);
  const sun = wallSun_Wm2(weather, face).map((w) => w * face.solarAbsorptance);
  const wet = wallRain_kgm2(weather, face, rain).map((kg) => kg / 3600);
  return {
    loads: {
      temperature_K: joined(state((k) => weather.temperature_C[k]! + 273.15)),
      vapourPressure_Pa: joined(state((k) => saturationPressure_Pa(weather.dewPoint_C[k]!))),
      heatFilm_Wm2K: joined(state(convection)),
      vapourFilm_kgm2sPa: joined(state((k) => vapourFilm_kgm2sPa(convection(k), weather.temperature_C[k]!))),
      absorbedRadiation_Wm2: smoothedMeans(rotated(sun, first)),
      longwave: {
        incoming_Wm2: joined(
          state((k) => longwaveOnFace_Wm2(weather.skyInfrared_Wm2[k]!, weather.temperature_C[k]!, view)),
        ),
        emissivity: face.longwaveEmissivity,
      },
      rain_kgm2s: stepped(rotated(wet, first)),
      airPressure_Pa: joined(
        state(
          (k) =>
            dynamicPressure_Pa(atRoof * weather.windSpeed_ms[k]!, weather.temperature_C[k]!) *
            windPressureCoefficient(weather.windDirection_deg[k]! - face.azimuth_deg),
        ),
      ),
      heldTemperature: false,
      heldSuction_Pa: null,
    },
    windSpeed_ms: state((k) => atWall * weather.windSpeed_ms[k]!),
  };
}
