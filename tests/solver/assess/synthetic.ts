import { materialById } from "../../../solver/materials/index.ts";
import type { Material } from "../../../solver/materials/index.ts";
import type { Case, CaseLayer } from "../../../solver/model/index.ts";
import type { ProbeSeries, RunResult } from "../../../solver/run/index.ts";

/** A layer of a catalogue material, or of one written out. */
export function layer(
  id: string,
  material: string | Material,
  thickness_m: number,
  more: Partial<CaseLayer> = {},
): CaseLayer {
  const found = typeof material === "string" ? materialById(material) : material;
  if (!found) throw new Error(`no material ${id}`);
  return {
    id,
    name: found.name,
    material: found,
    thickness_m,
    contact: null,
    airChangesPerHour: null,
    initial: { relativeHumidity: 0.7 },
    ...more,
  };
}

/** A 2x6 wall, outside first: siding, vented space, housewrap, strand board, batt, painted gypsum board. */
export const frameLayers = (): CaseLayer[] => [
  layer("siding", "fibre_cement", 0.008),
  layer("gap", "vent_cavity_19", 0.019, { airChangesPerHour: 50 }),
  layer("wrap", "housewrap", 0),
  layer("osb", "osb_111", 0.0111),
  layer("batt", "glass_fibre_batt", 0.14),
  layer("gypsum", "gypsum_board_127", 0.0127),
  layer("paint", "paint_latex", 0),
];

export function caseOf(layers: readonly CaseLayer[], more: Partial<Case> = {}): Case {
  const face = { azimuth_deg: 0, tilt_deg: 90, solarAbsorptance: 0.6, longwaveEmissivity: 0.9 };
  return {
    project: "Quarry Lane",
    option: "A",
    optionName: "2x6, no exterior insulation",
    path: "bay",
    pathName: "Stud bay",
    pathKind: "studBay",
    layers,
    leaks: [],
    probes: [],
    exposure: {
      kind: "site",
      site: { weather: { city: "nowhere" }, face },
      face,
      indoor: { method: "fixed", temperature_C: 21, relativeHumidity: 0.35 },
      air: null,
    },
    run: { start: "10-01", years: 2, initial: "delivered" },
    ...more,
  };
}

export interface State {
  readonly T_C: number;
  readonly RH: number;
  /** % by mass for wood, else kg/m3. */
  readonly water: number;
}
/** The state at a layer's face or mean at an hour of the run. */
export type Course = (layer: CaseLayer, place: "outside" | "inside" | "mean", hour: number) => State;

const startDay = 273; // 1 October

/** A finished run whose probes follow a given course, so that only the wiring is under test. */
export function resultOf(aCase: Case, course: Course, more: Partial<RunResult> = {}, years = 2): RunResult {
  const hours = years * 8760;
  const probes = aCase.layers.flatMap((one): ProbeSeries[] =>
    (["outside", "inside", "mean"] as const).flatMap((place): ProbeSeries[] => {
      if (place === "mean" && one.thickness_m === 0) return [];
      const density = one.material.wood === true ? (one.material.density_kgm3 ?? null) : null;
      const T_C = new Float32Array(hours);
      const RH = new Float32Array(hours);
      const w_kgm3 = new Float32Array(hours);
      for (let hour = 0; hour < hours; hour += 1) {
        const state = course(one, place, hour);
        T_C[hour] = state.T_C;
        RH[hour] = state.RH;
        w_kgm3[hour] = density === null ? state.water : (state.water / 100) * density;
      }
      return [
        {
          id: `${one.id}-${place}`,
          label: one.name,
          layer: one.id,
          side: place === "mean" ? null : place,
          depth_m: 0,
          kind: place === "mean" ? "layerMean" : "interface",
          T_C,
          RH,
          w_kgm3,
          woodDensity_kgm3: density,
        },
      ];
    }),
  );
  const book = { in: 1, out: 1, stored: 0, closure: 0, byFaceAndSource: {} };
  return {
    caseHash: "synthetic",
    option: aCase.option,
    path: aCase.path,
    status: "finished",
    failure: null,
    hours,
    startDay,
    judgedFrom: hours - 8760,
    judgedHours: 8760,
    probes,
    map: {
      days: 365,
      depth_m: new Float32Array(0),
      T_C: new Float32Array(0),
      RH: new Float32Array(0),
      w_kgm3: new Float32Array(0),
    },
    water: book,
    heat: book,
    monthly: null,
    yearEndWater_kgm2: [5, 4.6, 4.6],
    log: { cells: 80, steps: 1, rejected: 0, iterations: 1, seconds: 0 },
    ...more,
  };
}

/** 1 at the deepest of winter (15 January), -1 in mid-July, for a run that starts on 1 October. */
export const winter = (hour: number): number => Math.cos((2 * Math.PI * (hour - 106 * 24)) / 8760);

/** A plausible year: the strand board swings between `lowest` and `highest` % and its inner face between the two temperatures. */
export const swinging =
  (lowest: number, highest: number, coldest_C: number, dampest: number): Course =>
  (one, place, hour) => {
    const depth = winter(hour - 30 * 24);
    const cold = winter(hour);
    if (one.id === "osb" || one.id === "board" || one.id === "brick") {
      return {
        T_C: 12 - (12 - coldest_C) * cold,
        RH: place === "outside" ? 0.6 : (dampest + 0.5) / 2 + ((dampest - 0.5) / 2) * depth,
        water: (highest + lowest) / 2 + ((highest - lowest) / 2) * depth,
      };
    }
    if (one.id === "gypsum" || one.id === "paint") {
      // 21 degC and 35 %: dew point 4.97 degC.
      return { T_C: 21, RH: 0.35, water: 4 };
    }
    return { T_C: 10 - 12 * cold, RH: 0.6, water: 1 };
  };
