import { indoorFilm, vapourFilm_kgm2sPa } from "../films/surface-films.ts";
import { windFactor } from "../films/local-wind.ts";
import type { FaceLoads } from "../hourly-loads.ts";
import type { RoomAir } from "../rooms/room-setting.ts";
import type { WeatherYear } from "../weather-year.ts";
import { dynamicPressure_Pa, roomPressureCoefficient, stackPressure_Pa, type House } from "./air-pressure.ts";
import { constant, joined, rotated } from "./load-series.ts";
import { usual, type FaceSetting } from "./settings.ts";

/** The room face: room air behind a still-air film; stack, fan and the room's share of the wind as air pressure. */
export function insideFace(
  weather: WeatherYear,
  face: FaceSetting,
  room: RoomAir,
  house: House,
  first: number,
): FaceLoads {
  const n = weather.hours;
  const state = (value: (k: number) => number): Float64Array =>
    rotated(
      Float64Array.from({ length: n }, (_, k) => value(k)),
      first,
    );
  const film = indoorFilm(face.tilt_deg);
  const atRoof = windFactor(face.shelter ?? usual.shelter, house.height_m);
  return {
    temperature_K: joined(state((k) => room.temperature_C[k]! + 273.15)),
    vapourPressure_Pa: joined(state((k) => room.vapourPressure_Pa[k]!)),
    heatFilm_Wm2K: constant(film.combined_Wm2K, n),
    vapourFilm_kgm2sPa: joined(state((k) => vapourFilm_kgm2sPa(film.convective_Wm2K, room.temperature_C[k]!))),
    absorbedRadiation_Wm2: constant(0, n),
    longwave: null,
    rain_kgm2s: constant(0, n),
    airPressure_Pa: joined(
      state((k) => {
        const outside_C = weather.temperature_C[k]!;
        const wind = dynamicPressure_Pa(atRoof * weather.windSpeed_ms[k]!, outside_C);
        return (
          stackPressure_Pa(house.aboveNeutral_m, room.temperature_C[k]!, outside_C) +
          house.fanPressure_Pa +
          wind * roomPressureCoefficient(weather.windDirection_deg[k]! - face.azimuth_deg)
        );
      }),
    ),
    heldTemperature: false,
    heldSuction_Pa: null,
  };
}
