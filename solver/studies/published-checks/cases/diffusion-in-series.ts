import type { Material } from "../../../materials/index.ts";
import { layersInSeries } from "../closed-forms/layers-in-series.ts";
import { labProject } from "../lab-project.ts";
import { bookRows, checkRow, probeAt, stateAt, type Place, type PublishedCheck } from "../published-check.ts";

const airPermeability_kgmsPa = 2.0e-10;
const retarder_sd_m = 5;
/** Sorption so small that the wall is steady long before the run ends; a steady answer does not depend on it. */
const sorption = { slope_kgm3: 0.1 };

/** Outside first: thickness [m], conductivity [W/(m K)], vapour resistance factor. */
const boards = [
  { id: "foam", name: "Foam", thickness_m: 0.05, conductivity: 0.035, mu: 60 },
  { id: "panel", name: "Wood panel", thickness_m: 0.011, conductivity: 0.13, mu: 150 },
  { id: "fibre", name: "Fibre", thickness_m: 0.14, conductivity: 0.036, mu: 1.3 },
  { id: "gypsum", name: "Gypsum board", thickness_m: 0.0125, conductivity: 0.25, mu: 8 },
] as const;

const materials: readonly Material[] = [
  ...boards.map((board): Material => ({
    id: board.id,
    name: board.name,
    kind: "bulk",
    density_kgm3: 50,
    heatCapacity_JkgK: 1000,
    conductivity_WmK: board.conductivity,
    sorption,
    vapour: { resistanceFactor: board.mu },
  })),
  {
    id: "retarder",
    name: "Vapour retarder",
    kind: "membrane",
    permeance_kgm2sPa: airPermeability_kgmsPa / retarder_sd_m,
  },
];

const saturation_Pa = (t: number): number => 610.5 * Math.exp((17.269 * t) / (237.3 + t));
const inside = { T_C: 20, p_Pa: 0.4 * saturation_Pa(20), film_m2KW: 0.13 };
const outside = { T_C: -5, p_Pa: 0.8 * saturation_Pa(-5), film_m2KW: 0.04 };
const expected = layersInSeries(
  [
    { thermal_m2KW: 0, vapour_m2sPakg: retarder_sd_m / airPermeability_kgmsPa },
    ...boards.toReversed().map((board) => ({
      thermal_m2KW: board.thickness_m / board.conductivity,
      vapour_m2sPakg: (board.mu * board.thickness_m) / airPermeability_kgmsPa,
    })),
  ],
  inside,
  outside,
);
/** Planes from inside: inner face of the retarder, then the outer face of each layer. */
const planes: readonly { readonly place: Place; readonly what: string }[] = [
  { place: { layer: "retarder", side: "inside" }, what: "inner face of the retarder" },
  { place: { layer: "gypsum", side: "inside" }, what: "inner face of the gypsum board" },
  { place: { layer: "fibre", side: "inside" }, what: "inner face of the fibre" },
  { place: { layer: "panel", side: "inside" }, what: "inner face of the panel" },
  { place: { layer: "foam", side: "inside" }, what: "inner face of the foam" },
  { place: { layer: "foam", side: "outside" }, what: "outer face of the foam" },
];
const duration_h = 60 * 24;
/** A film that is no resistance beside the wall's 5e10 m2 s Pa/kg. */
const openFilm_kgm2sPa = 1e-3;

export const diffusionInSeriesCheck: PublishedCheck = {
  id: "diffusion-in-series",
  title: "Frame wall with a vapour retarder, steady winter",
  source: "Resistances in series; ISO 13788:2012, 6.4",
  flag: "COMPUTED",
  compares: "Temperature and vapour pressure at every plane, heat flow and vapour flow",
  tolerance:
    "0.1 % of the driving difference (0.025 K, 0.6 Pa), 0.1 % of each flow: the steady answer has no error of grid or step.",
  slow: false,
  project: () =>
    labProject({
      name: "Frame wall with a vapour retarder, steady winter",
      materials,
      layers: [
        ...boards.map((board) => ({ id: board.id, material: board.id, thickness_m: board.thickness_m })),
        { id: "retarder", material: "retarder" },
      ],
      outside: {
        temperature_C: outside.T_C,
        vapourPressure_Pa: outside.p_Pa,
        heatFilm_Wm2K: 1 / outside.film_m2KW,
        vapourFilm_kgm2sPa: openFilm_kgm2sPa,
      },
      inside: {
        temperature_C: inside.T_C,
        vapourPressure_Pa: inside.p_Pa,
        heatFilm_Wm2K: 1 / inside.film_m2KW,
        vapourFilm_kgm2sPa: openFilm_kgm2sPa,
      },
      physics: {
        saturationPressure: "iso13788",
        airPermeability: airPermeability_kgmsPa,
        latentHeat_Jkg: 0,
        waterHeatCapacity_JkgK: 0,
        sensibleHeatOfMovingWater: false,
      },
      duration_h,
      initialTemperature_C: 10,
      initialRelativeHumidity: 0.5,
    }),
  compare: ([result]) => {
    const at = planes.map(({ place }) => stateAt(result!, place, duration_h));
    const pressure = at.map(({ T_C, RH }) => RH * saturation_Pa(T_C));
    // The membrane's two faces share a depth; the gypsum's inner face is the membrane's outer one.
    const permeance = airPermeability_kgmsPa / retarder_sd_m;
    return [
      ...planes.flatMap(({ place, what }, k) => [
        checkRow(`T at the ${what}`, "degC", expected.T_C[k]!, probeAt(result!, place).T_C.at(-1)!, 0.025),
        checkRow(`Vapour pressure at the ${what}`, "Pa", expected.p_Pa[k]!, pressure[k]!, 0.6),
      ]),
      checkRow(
        "Heat flow",
        "W/m2",
        expected.heatFlow_Wm2,
        (inside.T_C - at[0]!.T_C) / inside.film_m2KW,
        0.001 * expected.heatFlow_Wm2,
      ),
      checkRow(
        "Vapour flow",
        "1e-9 kg/(m2 s)",
        1e9 * expected.vapourFlow_kgm2s,
        1e9 * permeance * (pressure[0]! - pressure[1]!),
        1e6 * expected.vapourFlow_kgm2s,
      ),
      ...bookRows(result!, { heat: true, water: true }),
    ];
  },
};
