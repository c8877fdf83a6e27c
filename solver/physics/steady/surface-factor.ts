import { dewPoint_C } from "./saturation-pressure.ts";
import { cautiousInsideFilm_m2KW, wallFilms } from "./steady-layer.ts";
import type { Films } from "./steady-layer.ts";

/** Share of the step from outdoors to the room that the room face keeps: (T_si - T_e)/(T_i - T_e) [-]. */
export function surfaceFactor(
  layersResistance_m2KW: number,
  films: Films = { outside_m2KW: wallFilms.outside_m2KW, inside_m2KW: cautiousInsideFilm_m2KW },
): number {
  if (!(layersResistance_m2KW >= 0)) {
    throw new RangeError(`layersResistance_m2KW must be >= 0, got ${layersResistance_m2KW}`);
  }
  const towardsOutside_m2KW = layersResistance_m2KW + films.outside_m2KW;
  return towardsOutside_m2KW / (towardsOutside_m2KW + films.inside_m2KW);
}

export interface SurfaceFactorNeeded {
  /** Least room-face temperature that keeps the surface at or under the humidity limit [degC]. */
  readonly leastSurface_C: number;
  /** Null where it is as warm outside as in the room. */
  readonly factor: number | null;
}

/**
 * The surface temperature factor that one month asks for, so that air at the room face stays at or under 80 %.
 *
 * Source: ISO 13788, clause on critical surface humidity (MEMORY).
 * Checked: tests/solver/physics/steady/surface-factor.test.ts, to the printed digits.
 */
export function surfaceFactorNeeded(
  outside_C: number,
  inside_C: number,
  insideVapourPressure_Pa: number,
  surfaceHumidityLimit = 0.8,
): SurfaceFactorNeeded {
  const leastSurface_C = dewPoint_C(insideVapourPressure_Pa / surfaceHumidityLimit);
  const step_K = inside_C - outside_C;
  return { leastSurface_C, factor: step_K > 0 ? (leastSurface_C - outside_C) / step_K : null };
}
