import { airPermeability23_kgmsPa, type Material } from "../../materials/index.ts";
import { kgm2sPaPerPerm } from "../../units.ts";

/** Mean relative humidity of the cup tests: dry 0/50 %, wet 50/100 %. */
export const dryCup = 0.25;
export const wetCup = 0.75;

function logInterpolated(points: readonly (readonly [number, number])[], x: number): number {
  const first = points[0]!;
  if (x <= first[0]) return first[1];
  for (let i = 1; i < points.length; i++) {
    const [x0, y0] = points[i - 1]!;
    const [x1, y1] = points[i]!;
    if (x <= x1)
      return y0 > 0 && y1 > 0 ? y0 * (y1 / y0) ** ((x - x0) / (x1 - x0)) : y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
  }
  return points.at(-1)![1];
}

const at = (value: number | readonly (readonly [number, number])[], humidity: number): number =>
  typeof value === "number" ? value : logInterpolated(value, humidity);

/**
 * Permeance of a layer at a mean humidity [US perm]; Infinity for an air space that hardly resists, 0 for a tight one.
 *
 * @param meanHumidity 0..1: 0.25 stands for the dry cup, 0.75 for the wet cup
 */
export function permeance_perm(material: Material, thickness_m: number, meanHumidity: number): number {
  if (material.permeance_kgm2sPa !== undefined) return at(material.permeance_kgm2sPa, meanHumidity) / kgm2sPaPerPerm;
  if (!material.vapour || !(thickness_m > 0)) return Infinity;
  if ("resistanceFactor" in material.vapour)
    return airPermeability23_kgmsPa / at(material.vapour.resistanceFactor, meanHumidity) / thickness_m / kgm2sPaPerPerm;
  return at(material.vapour.permeability_kgmsPa, meanHumidity) / thickness_m / kgm2sPaPerPerm;
}

/** Permeance of layers in series [US perm]. */
export const inSeries_perm = (permeances: readonly number[]): number =>
  1 / permeances.reduce((sum, value) => sum + 1 / Math.max(value, 1e-12), 0);
