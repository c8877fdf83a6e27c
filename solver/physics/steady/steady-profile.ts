import { dewPoint_C, saturationPressure_Pa } from "./saturation-pressure.ts";
import { airPermeability_kgmsPa, requireLayers, wallFilms } from "./steady-layer.ts";
import type { AirState, Films, SteadyLayer } from "./steady-layer.ts";

/** The state of one plane: plane 0 is the outer face, plane n the inner face. */
export interface SteadyPlane {
  readonly temperature_C: number;
  readonly saturationPressure_Pa: number;
  /** Vapour pressure of unlimited diffusion; it may exceed saturation, which is what the check looks for [Pa]. */
  readonly vapourPressure_Pa: number;
  readonly relativeHumidity: number;
  /** Sum of sd from the outer face [m]. */
  readonly sdFromOutside_m: number;
}

export interface SteadyProfile {
  readonly planes: readonly SteadyPlane[];
  /** Positive outward [W/m2]. */
  readonly heatFlow_Wm2: number;
  /** Unlimited diffusion, positive outward [kg/(m2 s)]. */
  readonly vapourFlow_kgm2s: number;
  readonly totalResistance_m2KW: number;
  readonly uValue_Wm2K: number;
  /** Planes at which unlimited diffusion would exceed saturation; empty: the steady check finds no condensation. */
  readonly planesAboveSaturation: readonly number[];
  readonly roomDewPoint_C: number;
}

/**
 * Straight lines through a wall at rest: temperature over thermal resistance, vapour pressure over sd.
 * No film resists vapour. Storage, liquid flow, air flow and latent heat are outside of the method.
 *
 * @param layers outside first
 * Source: textbook series resistances; saturation and air permeability as ISO 13788 (MEMORY).
 * Checked: tests/solver/physics/steady/steady-profile.test.ts, to 0.1 %.
 */
export function steadyProfile(
  layers: readonly SteadyLayer[],
  outside: AirState,
  inside: AirState,
  films: Films = wallFilms,
): SteadyProfile {
  requireLayers(layers);
  const totalResistance_m2KW =
    films.outside_m2KW + films.inside_m2KW + layers.reduce((sum, layer) => sum + layer.resistance_m2KW, 0);
  const totalSd_m = layers.reduce((sum, layer) => sum + layer.sd_m, 0);
  if (!(totalResistance_m2KW > 0)) throw new RangeError("the wall's thermal resistance must be > 0, got 0");
  const temperatureStep_K = inside.temperature_C - outside.temperature_C;
  const pressureStep_Pa = inside.vapourPressure_Pa - outside.vapourPressure_Pa;

  const planes: SteadyPlane[] = [];
  let resistance_m2KW = films.outside_m2KW;
  let sd_m = 0;
  const pushPlane = (isInnerFace: boolean): void => {
    const temperature_C = outside.temperature_C + (temperatureStep_K * resistance_m2KW) / totalResistance_m2KW;
    // A wall without any vapour resistance has the room's pressure at its inner face and the weather's elsewhere.
    const share = totalSd_m > 0 ? sd_m / totalSd_m : isInnerFace ? 1 : 0;
    const vapourPressure_Pa = outside.vapourPressure_Pa + pressureStep_Pa * share;
    const saturation_Pa = saturationPressure_Pa(temperature_C);
    planes.push({
      temperature_C,
      saturationPressure_Pa: saturation_Pa,
      vapourPressure_Pa,
      relativeHumidity: vapourPressure_Pa / saturation_Pa,
      sdFromOutside_m: sd_m,
    });
  };
  pushPlane(false);
  layers.forEach((layer, index) => {
    resistance_m2KW += layer.resistance_m2KW;
    sd_m += layer.sd_m;
    pushPlane(index === layers.length - 1);
  });

  return {
    planes,
    heatFlow_Wm2: temperatureStep_K / totalResistance_m2KW,
    vapourFlow_kgm2s: totalSd_m > 0 ? (airPermeability_kgmsPa * pressureStep_Pa) / totalSd_m : Infinity,
    totalResistance_m2KW,
    uValue_Wm2K: 1 / totalResistance_m2KW,
    planesAboveSaturation: planes.flatMap((plane, index) => (plane.relativeHumidity > 1 ? [index] : [])),
    roomDewPoint_C: dewPoint_C(inside.vapourPressure_Pa),
  };
}
