import { hamstadPhysics, insideInsulation } from "../benchmark-materials.ts";
import { depthsOf, fieldRows, totalRows } from "../field-rows.ts";
import { labProject } from "../lab-project.ts";
import { fields, totals } from "../points/wall-with-air-flow.ts";
import { bookRows, type PublishedCheck } from "../published-check.ts";

const thickness_m = 0.2;
const layers = [{ id: "insulation", thickness_m }];
const day_s = 86400;
/** Within this of the inner face air meets the wall and RH falls steeply. */
const nearInside_m = 0.02;

export const wallWithAirFlowCheck: PublishedCheck = {
  id: "wall-with-air-flow",
  title: "Light wall with air that leaks out, then in",
  source:
    "Closed definition of this project, with the boundary data of HAMSTAD WP2 No. 3 (Hagentoft 2002); answer by an independent solution",
  flag: "COMPUTED",
  compares: "T and RH at 52 points over 100 days, and the water in the wall",
  tolerance: "0.1 K, 0.5 % RH (1.5 % within 20 mm of the inner face), 0.5 % of the water in the wall.",
  slow: true,
  project: () =>
    labProject({
      name: "Light wall with air that leaks out, then in",
      materials: [insideInsulation],
      layers: [{ id: "insulation", material: insideInsulation.id, thickness_m }],
      outside: { temperature_C: 2, relativeHumidity: 0.8, heatFilm_Wm2K: 10, vapourFilm_kgm2sPa: 7.38e-12 },
      inside: { temperature_C: 20, relativeHumidity: 0.7, heatFilm_Wm2K: 10, vapourFilm_kgm2sPa: 2e-7 },
      physics: {
        ...hamstadPhysics,
        airVelocity_ms: {
          table: [
            [0, -1e-4],
            [20 * day_s, -1e-4],
            [21 * day_s, 1e-4],
            [100 * day_s, 1e-4],
          ],
          between: "line",
        },
      },
      duration_h: 100 * 24,
      initialTemperature_C: 20,
      initialRelativeHumidity: 0.95,
      depths_m: depthsOf(fields, layers),
    }),
  compare: ([result]) => [
    ...fieldRows(result!, fields, layers, ([, , depth_m]) => ({
      T_K: 0.1,
      RH_percent: depth_m >= thickness_m - nearInside_m - 1e-9 ? 1.5 : 0.5,
      w_kgm3: null,
    })),
    ...totalRows(result!, totals, layers, 0.005),
    ...bookRows(result!, { heat: true, water: true }),
  ],
};
