import type { Material } from "../../../materials/index.ts";
import { hamstadPhysics } from "../benchmark-materials.ts";
import { depthsOf, fieldRows, totalRows } from "../field-rows.ts";
import { labProject, sampled } from "../lab-project.ts";
import { fields, totals } from "../points/rain-and-sun.ts";
import { bookRows, checkRow, type PublishedCheck } from "../published-check.ts";

const outer: Material = {
  id: "outer-stone",
  name: "Absorbent outer layer",
  kind: "bulk",
  density_kgm3: 2005,
  heatCapacity_JkgK: 840,
  conductivity_WmK: { dry_WmK: 1.6, perWater: 1.4e-3 },
  freeSaturation_kgm3: 157,
  sorption: { saturation_kgm3: 157, suctionTerms: [{ share: 1, scale_perPa: 1 / 1.25e5, n: 1.69, m: 0.408 }] },
  vapour: { resistanceFactor: 30, fillsWithWater_kgm3: 157 },
  liquid: { saturatedConductivity_s: 2e-10, suctionTerm: { scale_perPa: 1 / 1.25e5, n: 1.69, m: 2 } },
};
const inner: Material = {
  id: "inner-finish",
  name: "Hygroscopic inner finish",
  kind: "bulk",
  density_kgm3: 790,
  heatCapacity_JkgK: 870,
  conductivity_WmK: { dry_WmK: 0.2, perWater: 4.5e-4 },
  freeSaturation_kgm3: 209,
  sorption: { saturation_kgm3: 209, suctionTerms: [{ share: 1, scale_perPa: 1 / 2e7, n: 1.27, m: 0.213 }] },
  vapour: { resistanceFactor: 3, fillsWithWater_kgm3: 209 },
};
const layers = [
  { id: "outer", thickness_m: 0.1, material: outer },
  { id: "inner", thickness_m: 0.02, material: inner },
];
const duration_h = 120;
const step_s = 300;
const day = 86400;
const hour = 3600;
const absorptance = 0.6;
const sun = (t: number): number => 400 * Math.max(0, Math.sin((2 * Math.PI * (t - 6 * hour)) / day)) ** 2;
const showers_h = [20, 68];
/** kg/(m2 s); 4 kg/m2 in each shower of 8 h. */
const rain = (t: number): number =>
  showers_h
    .filter((start) => t >= start * hour && t <= (start + 8) * hour)
    .reduce((sum, start) => sum + Math.sin((Math.PI * (t - start * hour)) / (8 * hour)) ** 2 / 3600, 0);
const outerFace = ([, layer, depth_m]: (typeof fields)[number]): boolean => layer === "outer" && depth_m === 0;
const innerFace = ([, layer, depth_m]: (typeof fields)[number]): boolean => layer === "inner" && depth_m === 0.02;

export const rainAndSunCheck: PublishedCheck = {
  id: "rain-and-sun",
  title: "Rain and sun on an absorbent wall",
  source:
    "Closed definition of this project, in the manner of HAMSTAD WP2 No. 4 (Hagentoft 2002); answer by an independent solution",
  flag: "COMPUTED",
  compares:
    "Surface temperatures and water content over five days with two showers, water in each layer, rain taken up",
  tolerance:
    "2 % of each layer's water, 0.2 K at the faces, water content 5 %; inside the steep wetting front only the totals are compared.",
  slow: false,
  project: () =>
    labProject({
      name: "Rain and sun on an absorbent wall",
      materials: layers.map(({ material }) => material),
      layers: layers.map(({ id, thickness_m, material }) => ({ id, material: material.id, thickness_m })),
      outside: {
        temperature_C: sampled(duration_h, step_s, (t) => 15 + 5 * Math.sin((2 * Math.PI * (t - 9 * hour)) / day)),
        absorbedRadiation_Wm2: sampled(duration_h, step_s, (t) => absorptance * sun(t)),
        vapourPressure_Pa: 1150,
        rain_kgm2s: sampled(duration_h, step_s, rain),
        heatFilm_Wm2K: 25,
        vapourFilm_kgm2sPa: 2e-7,
      },
      inside: { temperature_C: 20, vapourPressure_Pa: 1200, heatFilm_Wm2K: 8, vapourFilm_kgm2sPa: 3e-8 },
      physics: hamstadPhysics,
      duration_h,
      initialTemperature_C: 20,
      initialRelativeHumidity: 0.6,
      depths_m: depthsOf(fields, layers),
    }),
  compare: ([result]) => [
    ...fieldRows(result!, fields, layers, (point) => ({
      T_K: outerFace(point) || innerFace(point) ? 0.2 : null,
      RH_percent: null,
      w_kgm3: point[6] === "front" ? null : 0.05 * point[5],
    })),
    ...totalRows(result!, totals, layers, 0.02),
    checkRow("Rain taken up", "kg/m2", 8, result!.water.byFaceAndSource["outside rain taken up"] ?? NaN, 1e-4),
    ...bookRows(result!, { heat: true, water: true }),
  ],
};
