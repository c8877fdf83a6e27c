import type { Material } from "../materials/index.ts";

/** Stefan-Boltzmann constant [W/(m2 K4)]. */
const stefanBoltzmann = 5.670374e-8;
/** Mean temperature at which the resistance of an air space is quoted [K]. */
const meanTemperature_K = 283.15;
/** Least convective coefficient across a vertical space [W/(m2 K)]; narrow spaces conduct 0.025/d. ISO 6946 (MEMORY). */
const leastConvection_Wm2K = 1.25;
const airConductivity_WmK = 0.025;
/** Vapour resistance of a wide vertical space as thickness of still air [m], from the heat and mass analogy (Lewis), COMPUTED. */
const wideSpace_sd_m = 0.0238;

/**
 * Thermal resistance of an unventilated vertical air space, heat flowing across it [m2 K/W].
 *
 * @param depth_m            > 0
 * @param emissivity         of both faces joined, 1/(1/e1 + 1/e2 - 1)
 * Source: ISO 6946, Annex on air spaces (form from memory); returns 0.11, 0.15 and 0.18 for 5, 10 and 25 mm.
 */
export function airSpaceResistance_m2KW(depth_m: number, emissivity: number): number {
  const radiative = 4 * stefanBoltzmann * meanTemperature_K ** 3 * emissivity;
  return 1 / (Math.max(leastConvection_Wm2K, airConductivity_WmK / depth_m) + radiative);
}

/** Joint emissivity of two ordinary building surfaces (0.9 and 0.9), and of one with a bright foil (0.05). */
export const ordinaryEmissivity = 1 / (1 / 0.9 + 1 / 0.9 - 1);
export const foilEmissivity = 1 / (1 / 0.05 + 1 / 0.9 - 1);

const catalogueSpace = /^(air|vent_cavity)_\d/;

/** A catalogue air space at the depth of its layer; an air space of the user's own keeps its figures. */
export function airSpaceOfThickness(material: Material, thickness_m: number): Material {
  if (!catalogueSpace.test(material.id) || !(thickness_m > 0)) return material;
  return {
    ...material,
    thermalResistance_m2KW: airSpaceResistance_m2KW(
      thickness_m,
      material.id.endsWith("_foil") ? foilEmissivity : ordinaryEmissivity,
    ),
    vapour: { resistanceFactor: Math.min(1, wideSpace_sd_m / thickness_m) },
  };
}
