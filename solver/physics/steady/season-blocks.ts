import { vapourLine } from "./condensing-planes.ts";
import { saturationPressure_Pa } from "./saturation-pressure.ts";
import { airPermeability_kgmsPa, cautiousInsideFilm_m2KW, requireLayers, wallFilms } from "./steady-layer.ts";
import type { SteadyLayer } from "./steady-layer.ts";
import { steadyProfile } from "./steady-profile.ts";

export interface SeasonBlocks {
  readonly temperature_C: readonly number[];
  readonly saturation_Pa: readonly number[];
  /** Water gathered at each plane over the cold season [kg/m2]; plane 0 is the outer face. */
  readonly condensate_kgm2: readonly number[];
  readonly condensateTotal_kgm2: number;
  /** Water that could leave over the warm season [kg/m2]; 0 where nothing condenses. */
  readonly evaporable_kgm2: number;
  readonly drains: boolean;
}

/** Cold block: 90 days at -5 degC, 80 % outside and 20 degC, 50 % inside. Source: DIN 4108-3 from 2014 on (SEEN, secondary). */
const coldBlock = { hours: 2160, outside_C: -5, outsideHumidity: 0.8, inside_C: 20, insideHumidity: 0.5 };
/** Warm block: 90 days with 1200 Pa on both sides (SEEN, secondary); 1700 Pa at the plane of a wall, 2000 Pa in a roof (MEMORY). */
const warmBlock = { hours: 2160, airPressure_Pa: 1200, wallPlane_Pa: 1700, roofPlane_Pa: 2000 };

/**
 * Two seasons of steady diffusion instead of twelve months.
 *
 * @param layers outside first
 * Source: DIN 4108-3, block climate (SEEN, secondary; plane pressures MEMORY).
 * Checked: tests/solver/physics/steady/season-blocks.test.ts, to the printed digits.
 */
export function seasonBlocks(layers: readonly SteadyLayer[], element: "wall" | "roof" = "wall"): SeasonBlocks {
  requireLayers(layers);
  const outside = {
    temperature_C: coldBlock.outside_C,
    vapourPressure_Pa: coldBlock.outsideHumidity * saturationPressure_Pa(coldBlock.outside_C),
  };
  const inside = {
    temperature_C: coldBlock.inside_C,
    vapourPressure_Pa: coldBlock.insideHumidity * saturationPressure_Pa(coldBlock.inside_C),
  };
  const profile = steadyProfile(layers, outside, inside, {
    outside_m2KW: wallFilms.outside_m2KW,
    inside_m2KW: cautiousInsideFilm_m2KW,
  });
  const planes = profile.planes.map((plane) => ({
    sd_m: plane.sdFromOutside_m,
    ceiling_Pa: plane.saturationPressure_Pa,
    wet: false,
  }));
  const line = vapourLine(planes, outside.vapourPressure_Pa, inside.vapourPressure_Pa);
  const condensate_kgm2 = line.netFlow_kgm2s.map((flow) => Math.max(0, flow) * coldBlock.hours * 3600);
  const wet = condensate_kgm2.flatMap((water, index) => (water > 0 ? [index] : []));

  let evaporable_kgm2 = 0;
  if (wet.length > 0) {
    const total_m = planes[planes.length - 1]!.sd_m;
    const toOutside_m = planes[wet[0]!]!.sd_m;
    const toInside_m = total_m - planes[wet[wet.length - 1]!]!.sd_m;
    const plane_Pa = element === "wall" ? warmBlock.wallPlane_Pa : warmBlock.roofPlane_Pa;
    const drive_Pa = plane_Pa - warmBlock.airPressure_Pa;
    const flow_kgm2s = airPermeability_kgmsPa * drive_Pa * (1 / toOutside_m + 1 / toInside_m);
    evaporable_kgm2 = flow_kgm2s * warmBlock.hours * 3600;
  }
  const condensateTotal_kgm2 = condensate_kgm2.reduce((sum, water) => sum + water, 0);
  return {
    temperature_C: profile.planes.map((plane) => plane.temperature_C),
    saturation_Pa: profile.planes.map((plane) => plane.saturationPressure_Pa),
    condensate_kgm2,
    condensateTotal_kgm2,
    evaporable_kgm2,
    drains: evaporable_kgm2 >= condensateTotal_kgm2,
  };
}
