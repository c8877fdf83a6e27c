import { conductionWithAirFlow } from "../closed-forms/conduction.ts";
import { conductor, heldTemperature, labProject } from "../lab-project.ts";
import { bookRows, checkRow, stateAt, type PublishedCheck } from "../published-check.ts";

const airHeat_Jm3K = 1206;
const conductivity_WmK = 0.06;
const thickness_m = 0.2;
/** Little storage, so that each flow is steady long before its day ends. */
const fibre = conductor("open-fibre", "Air-open insulation", conductivity_WmK, 30, 1000);
/** One flow a day [m/s], inward positive. */
const velocities_ms = [1e-4, -1e-4, 5e-4, -1e-5, -5e-4] as const;
const depths_m = [0.02, 0.05, 0.1, 0.15, 0.18];

export const conductionWithAirFlowCheck: PublishedCheck = {
  id: "conduction-with-air-flow",
  title: "Conduction with air that flows through the layer",
  source: "Exponential profile of steady conduction in a moving medium; Carslaw and Jaeger (1959), 1.7",
  flag: "COMPUTED",
  compares: `Temperature at ${depths_m.length} depths for five air flows, inward and outward`,
  tolerance: "0.1 K, half a percent of the driving difference of 20 K, on the default grid.",
  slow: false,
  project: () =>
    labProject({
      name: "Conduction with air that flows through the layer",
      materials: [fibre],
      layers: [{ id: "fibre", material: fibre.id, thickness_m }],
      outside: heldTemperature(0),
      inside: heldTemperature(20),
      physics: {
        moisture: false,
        airVolumetricHeatCapacity_Jm3K: airHeat_Jm3K,
        airVelocity_ms: { table: velocities_ms.map((v, day) => [day * 86400, v]), between: "step" },
      },
      duration_h: velocities_ms.length * 24,
      initialTemperature_C: 10,
      depths_m,
    }),
  compare: ([result]) => [
    ...velocities_ms.flatMap((v, day) =>
      depths_m.map((depth_m) =>
        checkRow(
          `T at ${(depth_m * 1000).toFixed(0)} mm with ${v * 1000} mm/s inward`,
          "degC",
          conductionWithAirFlow(depth_m, v, airHeat_Jm3K, conductivity_WmK, thickness_m, 0, 20),
          stateAt(result!, { depth_m }, (day + 1) * 24).T_C,
          0.1,
        ),
      ),
    ),
    ...bookRows(result!, { heat: true, water: false }),
  ],
};
