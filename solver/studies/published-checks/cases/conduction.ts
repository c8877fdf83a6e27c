import { diffusivity, halfSpaceFilm, halfSpaceStep, slabFilm, slabTwoFaces } from "../closed-forms/conduction.ts";
import { closedFace, conductionOnly, conductor, heldTemperature, labProject } from "../lab-project.ts";
import { bookRows, checkRow, stateAt, type PublishedCheck } from "../published-check.ts";

/** Thermal diffusivity 1.5e-7 m2/s. */
const plain = conductor("plain-conductor", "Conductor with constant properties", 0.12, 1000, 800);
const constants = { conductivity_WmK: 0.12, volumetricHeatCapacity_Jm3K: 8e5 };
const a = diffusivity(constants);

const start_C = 20;
/** Half a percent of the driving difference of 20 K. */
const tolerance_K = 0.1;
const tolerance =
  "0.1 K, half a percent of the driving difference: a default grid and default steps; 0.02 K on a fine grid.";
/** A half-space for a day: heat has moved 0.11 m at most, a far face at 1.5 m is not felt. */
const halfSpace_m = 1.5;

/** Temperatures at depths and hours against a formula of depth and time. */
function temperatureCheck(
  about: Pick<PublishedCheck, "id" | "title" | "source"> & {
    readonly hours: readonly number[];
    readonly depths_m: readonly number[];
  },
  faces: Pick<Parameters<typeof labProject>[0], "outside" | "inside"> & { readonly thickness_m: number },
  formula: (x_m: number, time_s: number) => number,
): PublishedCheck {
  const { hours, depths_m, ...words } = about;
  return {
    ...words,
    flag: "COMPUTED",
    compares: `Temperature at ${depths_m.length} depths after ${hours.join(", ")} h`,
    tolerance,
    slow: false,
    project: () =>
      labProject({
        name: about.title,
        materials: [plain],
        layers: [{ id: "slab", material: plain.id, thickness_m: faces.thickness_m }],
        outside: faces.outside,
        inside: faces.inside,
        physics: conductionOnly,
        duration_h: Math.max(...hours),
        initialTemperature_C: start_C,
        depths_m,
      }),
    compare: ([result]) => [
      ...hours.flatMap((hour) =>
        depths_m.map((depth_m) =>
          checkRow(
            `T after ${hour} h at ${(depth_m * 1000).toFixed(0)} mm`,
            "degC",
            formula(depth_m, hour * 3600),
            stateAt(result!, { depth_m }, hour).T_C,
            tolerance_K,
          ),
        ),
      ),
      ...bookRows(result!, { heat: true, water: false }),
    ],
  };
}

const film_Wm2K = 10;
const airAtZero = { temperature_C: 0, heatFilm_Wm2K: film_Wm2K, vapourFilm_kgm2sPa: 0 } as const;

export const halfSpaceStepCheck = temperatureCheck(
  {
    id: "half-space-step",
    title: "Half-space whose face turns cold",
    source: "Error-function solution; Carslaw and Jaeger, Conduction of Heat in Solids (1959), 2.4",
    hours: [1, 3, 6, 12, 24],
    depths_m: [0.005, 0.01, 0.025, 0.04, 0.08, 0.15],
  },
  { thickness_m: halfSpace_m, outside: heldTemperature(0), inside: closedFace(start_C) },
  (x, t) => halfSpaceStep(x, t, a, start_C, 0),
);

export const slabTwoTemperaturesCheck = temperatureCheck(
  {
    id: "slab-two-temperatures",
    title: "Slab between two held temperatures",
    source: "Sine series; Carslaw and Jaeger, Conduction of Heat in Solids (1959), 3.4",
    hours: [1, 3, 6, 24, 72],
    depths_m: [0.02, 0.05, 0.1, 0.15, 0.18],
  },
  { thickness_m: 0.2, outside: heldTemperature(0), inside: heldTemperature(10) },
  (x, t) => slabTwoFaces(x, t, a, 0.2, start_C, 0, 10),
);

export const slabFilmCheck = temperatureCheck(
  {
    id: "slab-film",
    title: "Slab that cools through a film, back face adiabatic",
    source: "Series over the roots of b tan b = Bi; Carslaw and Jaeger, Conduction of Heat in Solids (1959), 3.11",
    hours: [1, 2, 5, 12, 24],
    depths_m: [0, 0.025, 0.05, 0.075, 0.1],
  },
  { thickness_m: 0.1, outside: airAtZero, inside: closedFace(start_C) },
  (x, t) => slabFilm(0.1 - x, t, constants, 0.1, film_Wm2K, start_C, 0),
);

export const halfSpaceFilmCheck = temperatureCheck(
  {
    id: "half-space-film",
    title: "Half-space that cools through a film",
    source: "Complementary error functions; Carslaw and Jaeger, Conduction of Heat in Solids (1959), 2.7",
    hours: [1, 5, 12, 24],
    depths_m: [0, 0.01, 0.03, 0.06, 0.1],
  },
  { thickness_m: halfSpace_m, outside: airAtZero, inside: closedFace(start_C) },
  (x, t) => halfSpaceFilm(x, t, constants, film_Wm2K, start_C, 0),
);
