import { brick, hamstadPhysics, insideInsulation, mortar } from "../benchmark-materials.ts";
import { depthsOf, fieldRows, totalRows } from "../field-rows.ts";
import { labProject } from "../lab-project.ts";
import { fields, totals } from "../points/hamstad-5.ts";
import { bookRows, type PublishedCheck } from "../published-check.ts";

const layers = [
  { id: "brick", thickness_m: 0.365, material: brick },
  { id: "mortar", thickness_m: 0.015, material: mortar },
  { id: "insulation", thickness_m: 0.04, material: insideInsulation },
];

export const hamstad5Check: PublishedCheck = {
  id: "hamstad-5",
  title: "Brick wall with capillary-active inside insulation",
  source:
    "HAMSTAD WP2 benchmark No. 5, Hagentoft (2002), report R-02:8; geometry seen in quotations, material functions from memory, answer by an independent solution",
  flag: "COMPUTED",
  compares: "T, RH and water content at 84 points over 60 days, and water in each layer",
  tolerance:
    "0.1 K, 1 % RH, 1 % of each layer's water, water content 3 % or 0.5 kg/m3: far inside the spread of the published solutions.",
  slow: true,
  project: () =>
    labProject({
      name: "Brick wall with capillary-active inside insulation",
      materials: layers.map(({ material }) => material),
      layers: layers.map(({ id, thickness_m, material }) => ({ id, material: material.id, thickness_m })),
      outside: { temperature_C: 0, relativeHumidity: 0.8, heatFilm_Wm2K: 25, vapourFilm_kgm2sPa: 1.8382e-7 },
      inside: { temperature_C: 20, relativeHumidity: 0.6, heatFilm_Wm2K: 8, vapourFilm_kgm2sPa: 5.8823e-8 },
      physics: hamstadPhysics,
      duration_h: 60 * 24,
      initialTemperature_C: 25,
      initialRelativeHumidity: 0.6,
      depths_m: depthsOf(fields, layers),
    }),
  compare: ([result]) => [
    ...fieldRows(result!, fields, layers, (point) => ({
      T_K: 0.1,
      RH_percent: 1,
      w_kgm3: Math.max(0.03 * point[5], 0.5),
    })),
    ...totalRows(result!, totals, layers, 0.01),
    ...bookRows(result!, { heat: true, water: true }),
  ],
};
