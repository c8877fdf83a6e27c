import { hamstadPhysics, loadBearing, loadBearingSuction_Pa, roofInsulation } from "../benchmark-materials.ts";
import { depthsOf, fieldRows, totalRows } from "../field-rows.ts";
import { labProject, sampled } from "../lab-project.ts";
import { fields, totals } from "../points/tight-roof-year.ts";
import { bookRows, type PublishedCheck } from "../published-check.ts";

const layers = [
  { id: "bearing", thickness_m: 0.1, material: loadBearing },
  { id: "insulation", thickness_m: 0.05, material: roofInsulation },
];
const start_C = 10;
/** Suction everywhere that of 100 kg/m3 in the load-bearing layer. */
const startHumidity = Math.exp(-loadBearingSuction_Pa(100) / (1000 * 462 * (273.15 + start_C)));
const duration_h = 8760;
const day_s = 86400;
/** Swing of the year, peak on day 290 after 1 October. */
const season = (t: number): number => Math.cos((2 * Math.PI * (t - 290 * day_s)) / (365 * day_s));

export const tightRoofYearCheck: PublishedCheck = {
  id: "tight-roof-year",
  title: "Roof that is vapour-tight outside, one year",
  source:
    "Closed definition of this project, after the layers of HAMSTAD WP2 No. 1 (Hagentoft 2002); answer by an independent solution",
  flag: "COMPUTED",
  compares: "T, RH and water content at 84 points over the year, and water in each layer",
  tolerance:
    "1 % of each layer's water, 1.5 % RH, 0.15 K: what a designer can use, ten times the error of the answer and more.",
  slow: true,
  project: () =>
    labProject({
      name: "Roof that is vapour-tight outside, one year",
      materials: layers.map(({ material }) => material),
      layers: layers.map(({ id, thickness_m, material }) => ({ id, material: material.id, thickness_m })),
      outside: {
        temperature_C: sampled(
          duration_h,
          1800,
          (t) => 8 + 11 * season(t) + 7 * Math.sin((2 * Math.PI * (t - 8 * 3600)) / day_s),
        ),
        heatFilm_Wm2K: 25,
        vapourFilm_kgm2sPa: 0,
      },
      inside: {
        temperature_C: 20,
        vapourPressure_Pa: sampled(duration_h, day_s, (t) => 1000 + 300 * season(t)),
        heatFilm_Wm2K: 7,
        vapourFilm_kgm2sPa: 2e-8,
      },
      physics: hamstadPhysics,
      duration_h,
      initialTemperature_C: start_C,
      initialRelativeHumidity: startHumidity,
      depths_m: depthsOf(fields, layers),
    }),
  compare: ([result]) => [
    ...fieldRows(result!, fields, layers, () => ({ T_K: 0.15, RH_percent: 1.5, w_kgm3: null })),
    ...totalRows(result!, totals, layers, 0.01),
    ...bookRows(result!, { heat: true, water: true }),
  ],
};
