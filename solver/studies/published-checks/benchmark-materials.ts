import type { Material } from "../../materials/index.ts";
import type { LabPhysics } from "../../model/index.ts";

// Materials and constants of EN 15026:2007 (benchmark annex) and of HAMSTAD WP2 (Hagentoft 2002, report R-02:8).
// Flags: functions of the load-bearing material SEEN in quotations of the standard; vapour permeability form, functions of
// brick, mortar and inside insulation, and constants from MEMORY.

export const gravity_ms2 = 9.81;
const waterDensity_kgm3 = 1000;

/** Constants that both documents prescribe; the saturation form is the case's own. */
const constants: LabPhysics = {
  airPermeability: { coefficient_m2s: 26.1e-6 },
  waterDensity_kgm3,
  gasConstantVapour_JkgK: 462,
  latentHeat_Jkg: 2.5e6,
  waterHeatCapacity_JkgK: 4187,
  airVolumetricHeatCapacity_Jm3K: 1.2 * 1005,
  sensibleHeatOfMovingWater: false,
};
export const en15026Physics: LabPhysics = { ...constants, saturationPressure: "iso13788" };
export const hamstadPhysics: LabPhysics = { ...constants, saturationPressure: "log" };

/** Scale of a suction term given per metre of water column, h = s/(rho_w g) [1/Pa]. */
const perMetre = (scale: number): number => scale / (waterDensity_kgm3 * gravity_ms2);

/** EN 15026 benchmark material, the load-bearing material of HAMSTAD No. 1. */
export const loadBearing: Material = {
  id: "load-bearing",
  name: "Load-bearing material of the EN 15026 benchmark",
  kind: "bulk",
  density_kgm3: 2280,
  heatCapacity_JkgK: 800,
  conductivity_WmK: { dry_WmK: 1.5, perWater: 15.8e-3 },
  freeSaturation_kgm3: 146,
  sorption: { saturation_kgm3: 146, suctionTerms: [{ share: 1, scale_perPa: 8e-8, n: 1.6, m: 0.375 }] },
  vapour: { resistanceFactor: 200, fillsWithWater_kgm3: 146 },
  liquid: {
    lnConductivity: {
      coefficients: [-39.2619, 0.0704, -1.742e-4, -2.7953e-6, -1.1566e-7, 2.5969e-9],
      origin_kgm3: 73,
      scale_kgm3: 1,
    },
  },
};

/** Suction at which the load-bearing material holds w [Pa]. */
export const loadBearingSuction_Pa = (w_kgm3: number): number =>
  ((146 / w_kgm3) ** (1 / 0.375) - 1) ** (1 / 1.6) / 8e-8;

/** Non-capillary insulation of HAMSTAD No. 1. */
export const roofInsulation: Material = {
  id: "roof-insulation",
  name: "Insulation that draws no water",
  kind: "bulk",
  density_kgm3: 73.8,
  heatCapacity_JkgK: 1000,
  conductivity_WmK: { dry_WmK: 0.033, perWater: 0.59e-3 },
  freeSaturation_kgm3: 900,
  sorption: { saturation_kgm3: 900, suctionTerms: [{ share: 1, scale_perPa: 2e-4, n: 2, m: 0.5 }] },
  vapour: { resistanceFactor: 9.6, fillsWithWater_kgm3: 900 },
};

export const brick: Material = {
  id: "benchmark-brick",
  name: "Brick of HAMSTAD No. 5",
  kind: "bulk",
  density_kgm3: 1600,
  heatCapacity_JkgK: 1000,
  conductivity_WmK: 0.682,
  freeSaturation_kgm3: 373.5,
  sorption: {
    saturation_kgm3: 373.5,
    suctionTerms: [
      { share: 0.46, scale_perPa: perMetre(0.47), n: 1.5, m: 0.3333 },
      { share: 0.54, scale_perPa: perMetre(0.2), n: 3.8, m: 0.7368 },
    ],
  },
  vapour: { resistanceFactor: 7.5, fillsWithWater_kgm3: 373.5 },
  liquid: {
    lnConductivity: {
      coefficients: [-36.484, 461.325, -5240, 2.907e4, -7.41e4, 6.997e4],
      origin_kgm3: 0,
      scale_kgm3: 1000,
    },
  },
};

export const mortar: Material = {
  id: "benchmark-mortar",
  name: "Mortar of HAMSTAD No. 5",
  kind: "bulk",
  density_kgm3: 230,
  heatCapacity_JkgK: 920,
  conductivity_WmK: { dry_WmK: 0.6, perWater: 5.6e-4 },
  freeSaturation_kgm3: 700,
  sorption: {
    saturation_kgm3: 700,
    suctionTerms: [
      { share: 0.2, scale_perPa: perMetre(0.5), n: 1.5, m: 0.3333 },
      { share: 0.8, scale_perPa: perMetre(0.004), n: 3.8, m: 0.7368 },
    ],
  },
  vapour: { resistanceFactor: 50, fillsWithWater_kgm3: 700 },
  liquid: { lnConductivity: { coefficients: [-40.425, 83.319, -175.961, 123.863], origin_kgm3: 0, scale_kgm3: 1000 } },
};

export const insideInsulation: Material = {
  id: "benchmark-insulation",
  name: "Capillary-active inside insulation of HAMSTAD No. 5",
  kind: "bulk",
  density_kgm3: 212,
  heatCapacity_JkgK: 1000,
  conductivity_WmK: { dry_WmK: 0.06, perWater: 5.6e-4 },
  freeSaturation_kgm3: 871,
  sorption: {
    saturation_kgm3: 871,
    suctionTerms: [
      { share: 0.41, scale_perPa: perMetre(0.006), n: 2.4883, m: 0.5981 },
      { share: 0.59, scale_perPa: perMetre(0.012), n: 2.3898, m: 0.5816 },
    ],
  },
  vapour: { resistanceFactor: 5.6, fillsWithWater_kgm3: 871 },
  liquid: {
    lnConductivity: { coefficients: [-46.245, 294.506, -1439, 3249, -3370, 1305], origin_kgm3: 0, scale_kgm3: 1000 },
  },
};
