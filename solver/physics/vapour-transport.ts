import type { Material, Vapour } from "../materials/index.ts";
import { polyline } from "../numerics/monotone-curve.ts";
import { humidityAt } from "./moisture-potential.ts";
import type { SorptionCurve } from "./sorption-curve.ts";

/** Vapour transport of a bulk material. */
export interface VapourCurve {
  /** Times the permeability of still air; or the permeability itself [kg/(m s Pa)] where `absolute`. */
  readonly at: (potential: number) => number;
  readonly absolute: boolean;
}

/** ln-linear over RH, end values hold: cup data are read that way. */
export function logLinear(given: readonly (readonly [number, number])[]): (x: number) => number {
  const curve = polyline(
    given.map(([x]) => x),
    given.map(([, y]) => Math.log(Math.max(y, 1e-30))),
  );
  return (x) => Math.exp(curve.at(x));
}

/** Still air (mu 1) where a bulk material says nothing of vapour: the schema's checks ask for it before a run. */
const stillAir: Vapour = { resistanceFactor: 1 };

export function vapourCurve(material: Material, sorption: SorptionCurve): VapourCurve {
  const vapour = material.vapour ?? stillAir;
  if ("permeability_kgmsPa" in vapour) {
    const given = vapour.permeability_kgmsPa;
    if (typeof given === "number") return { at: () => given, absolute: true };
    const curve = logLinear(given);
    return { at: (theta) => curve(humidityAt(theta)), absolute: true };
  }
  const given = vapour.resistanceFactor;
  const mu = typeof given === "number" ? () => given : logLinear(given);
  const saturation = vapour.fillsWithWater_kgm3;
  if (saturation === undefined) return { at: (theta) => 1 / mu(humidityAt(theta)), absolute: false };
  // Pores that fill with water close to vapour. Source: Hagentoft (2002), HAMSTAD WP2 material functions (MEMORY).
  return {
    at: (theta) => {
      const open = Math.max(1 - sorption.boundWaterAt(theta) / saturation, 0);
      return open / (0.503 * open * open + 0.497) / mu(humidityAt(theta));
    },
    absolute: false,
  };
}
