import { ratedResistance_m2KW, type Case } from "../model/index.ts";
import { dewPoint_C, saturationPressure_Pa } from "../physics/steady/saturation-pressure.ts";
import { rsiPerR } from "../units.ts";
import { condensingPlane } from "./plane.ts";

/** Resistances on either side of the condensing plane [m2 K/W]. */
export interface PlaneResistances {
  readonly outside_m2KW: number;
  readonly inside_m2KW: number;
}

/** Still-air film inside and wind film outside, R-0.68 and. Source: ASHRAE Fundamentals, surface films of walls, winter; MEMORY. */
export const frameWallFilms: PlaneResistances = { inside_m2KW: 0.68 * rsiPerR, outside_m2KW: 0.17 * rsiPerR };

/**
 * Rated resistances of a path on either side of its condensing plane, films included. A space that breathes outdoor air
 * and all outward of it count nothing but their film, as the strict method for U has it.
 */
export function planeResistances(
  aCase: Pick<Case, "layers">,
  films: PlaneResistances = frameWallFilms,
): PlaneResistances {
  const { index } = condensingPlane(aCase);
  const layers = aCase.layers;
  let outermost = 0;
  layers.forEach((layer, place) => {
    if (
      place <= index &&
      layer.material.kind === "air" &&
      layer.airChangesPerHour !== null &&
      layer.airChangesPerHour !== 0
    )
      outermost = place + 1;
  });
  const sum = (from: number, to: number): number =>
    layers.slice(from, to).reduce((total, layer) => total + ratedResistance_m2KW(layer.material, layer.thickness_m), 0);
  return {
    outside_m2KW: sum(outermost, index + 1) + films.outside_m2KW,
    inside_m2KW: sum(index + 1, layers.length) + films.inside_m2KW,
  };
}

/** Steady temperature of a plane between two airs [degC]. */
export function steadyFace_C(outdoor_C: number, room_C: number, resistances: PlaneResistances): number {
  return (
    outdoor_C + ((room_C - outdoor_C) * resistances.outside_m2KW) / (resistances.outside_m2KW + resistances.inside_m2KW)
  );
}

/** Dew point of room air [degC]. @param relativeHumidity 0..1, above 0 */
export const roomDewPoint_C = (room_C: number, relativeHumidity: number): number =>
  dewPoint_C(relativeHumidity * saturationPressure_Pa(room_C));

/**
 * The dew-point rule by hand: the resistance outside of the plane that keeps it at the dew point of the room at a steady
 * outdoor temperature. R_out >= R_in (T_dew - T_out)/(T_in - T_dew). Zero where it is warm enough bare.
 *
 * Source: series resistances at rest; the rule ignores storage, drying, sun and air leakage.
 * Checked: tests/solver/studies/ratio-rule.test.ts.
 */
export function outsideResistanceAtDewPoint_m2KW(
  outdoor_C: number,
  room_C: number,
  relativeHumidity: number,
  inside_m2KW: number,
): number {
  const dew_C = roomDewPoint_C(room_C, relativeHumidity);
  if (dew_C >= room_C) return Infinity;
  return Math.max(0, (inside_m2KW * (dew_C - outdoor_C)) / (room_C - dew_C));
}

/** The same rule the other way round: room humidity at which the plane sits at the dew point, 0..1. */
export function humidityAtDewPoint(outdoor_C: number, room_C: number, resistances: PlaneResistances): number {
  return Math.min(
    1,
    saturationPressure_Pa(steadyFace_C(outdoor_C, room_C, resistances)) / saturationPressure_Pa(room_C),
  );
}

/** What the hand check says of a plane: "dry" while the face is at or above the dew point of the room. */
export interface HandCheck {
  readonly face_C: number;
  readonly dewPoint_C: number;
  /** Face above dew point [K]. */
  readonly margin_K: number;
  readonly says: "dry" | "wet";
}

/** Steady face temperature against the dew point of the room. */
export function handCheck(
  outdoor_C: number,
  room_C: number,
  relativeHumidity: number,
  resistances: PlaneResistances,
): HandCheck {
  const face_C = steadyFace_C(outdoor_C, room_C, resistances);
  const dew = roomDewPoint_C(room_C, relativeHumidity);
  return { face_C, dewPoint_C: dew, margin_K: face_C - dew, says: face_C >= dew ? "dry" : "wet" };
}
