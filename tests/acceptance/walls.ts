import {
  materialById,
  rsiPerR,
  type Layer,
  type Leak,
  type Material,
  type Path,
  type Project,
} from "../../solver/index.ts";

/** The walls that people of the trade know by heart, built as project files. Invented houses; places by name. */

/** Climate zone and embedded place for each. */
export const places = {
  "4A": "baltimore-md",
  "4C": "seattle-wa",
  "5A": "boston-ma",
  "6A": "burlington-vt",
  "7": "duluth-mn",
  "8": "fairbanks-ak",
  "2A": "houston-tx",
  Baltic: "helsinki-fi",
} as const;
export type Zone = keyof typeof places;

const plain = (id: string): Material => {
  const found = materialById(id);
  if (found === undefined) throw new Error(`no material ${id}`);
  const {
    id: name,
    kind,
    name: words,
    density_kgm3,
    heatCapacity_JkgK,
    conductivity_WmK,
    porosity,
    freeSaturation_kgm3,
    sorption,
    vapour,
    liquid,
    wood,
  } = found;
  const whole = {
    id: name,
    name: words,
    kind,
    density_kgm3,
    heatCapacity_JkgK,
    conductivity_WmK,
    porosity,
    freeSaturation_kgm3,
    sorption,
    vapour,
    liquid,
    wood,
  };
  return Object.fromEntries(Object.entries(whole).filter(([, value]) => value !== undefined)) as unknown as Material;
};

/** The dry conductivity of a catalogue material replaced so that a depth has the labelled R at 24 degC; its slope with temperature stays. */
export function labelled(id: string, R: number, thickness_m: number): Material {
  const material = plain(id);
  const conductivity = material.conductivity_WmK;
  const dry_WmK = thickness_m / (R * rsiPerR);
  return {
    ...material,
    id: `${id}_r${String(R).replace(".", "-")}`,
    conductivity_WmK: typeof conductivity === "object" ? { ...conductivity, dry_WmK } : dry_WmK,
  };
}

/** A sheet of a constant permeance [perm]. */
export const sheet = (id: string, name: string, perm: number): Material => ({
  id,
  name,
  kind: "membrane",
  permeance_kgm2sPa: perm * 5.72135e-11,
});

/** Room-side controls: 10 perm paint (Class III), 5 perm paint, 0.7 perm (Class II), 0.06 perm (Class I). */
export const paint = sheet("paint_10", "Paint, 10 perm", 10);
export const retarders = {
  paint10: paint,
  paint5: sheet("paint_5", "Paint, 5 perm", 5),
  classII: sheet("class_ii", "Class II retarder, 0.7 perm", 0.7),
  poly: sheet("poly", "Polyethylene sheet, 0.06 perm", 0.06),
  vinyl: sheet("vinyl", "Vinyl wall covering, 0.3 perm", 0.3),
} as const;
export type Retarder = keyof typeof retarders;

export type Board = "xps" | "eps_ii" | "pir_foil" | "stone_wool_board";

/** Outside insulation of an R as a layer; none at R-0. Every board is given the label's R at 24 degC by its thickness. */
export function board(kind: Board, R: number): Layer[] {
  if (R === 0) return [];
  const conductivity = materialById(kind)!.conductivity_WmK;
  // Boards with a conductivity that depends on temperature are labelled at 24 degC, so their rated value decides the thickness.
  const rated =
    typeof conductivity === "number"
      ? conductivity
      : (conductivity!.temperature_C?.find(([t]) => t >= 24)?.[1] ?? conductivity!.dry_WmK);
  return [{ id: "ci", material: kind, thickness_m: R * rsiPerR * rated, roles: ["thermal"] }];
}

export interface WallSpec {
  readonly zone: Zone;
  readonly frame?: "2x4" | "2x6";
  readonly ci?: { readonly board: Board; readonly R: number };
  readonly retarder?: Retarder;
  /** Winter humidity of the room, 0..1. */
  readonly humidity?: number;
  /** Room air at the sheathing [m3/(h m2)]. */
  readonly leak?: number;
  /** Sheathing at the start [% by mass]. */
  readonly startMoisture_percent?: number;
  readonly years?: number;
  /** Layers in place of the usual ones; outside first. */
  readonly layers?: readonly Layer[];
  readonly azimuth_deg?: number;
}

const frames = {
  "2x4": { depth_m: 0.0889, R: 13 },
  "2x6": { depth_m: 0.1397, R: 20 },
} as const;

export const cladding: readonly Layer[] = [
  { id: "siding", material: "pine_lap_siding", thickness_m: 0.0127 },
  { id: "gap", material: "vent_cavity_19", thickness_m: 0.019, ventilation: { airChangesPerHour: 200 } },
];
export const sheathing: Layer = { id: "sheathing", material: "osb_111", thickness_m: 0.0111, roles: ["air"] };
export const wrb: Layer = { id: "wrb", material: "housewrap", roles: ["water"] };

export function cavity(frame: "2x4" | "2x6"): Layer {
  const { depth_m, R } = frames[frame];
  return { id: "cavity", material: labelled("glass_fibre_batt", R, depth_m), thickness_m: depth_m };
}

/** Lining: a tighter retarder lies between the fill and the gypsum, which is painted all the same. */
export function lining(retarder: Retarder): Layer[] {
  const gypsum: Layer = { id: "gypsum", material: "gypsum_board_127", thickness_m: 0.0127 };
  const finish = (material: Material): Layer => ({ id: "finish", material });
  if (retarder === "paint10" || retarder === "paint5" || retarder === "vinyl")
    return [gypsum, finish(retarders[retarder])];
  return [{ id: "retarder", material: retarders[retarder] }, gypsum, finish(paint)];
}

/** Frame wall with vented siding: sheathing, boards outside of it, room at 21 degC. */
export function frameLayers(spec: WallSpec): Layer[] {
  const wood: Layer =
    spec.startMoisture_percent === undefined
      ? sheathing
      : { ...sheathing, initial: { moistureContent_percent: spec.startMoisture_percent } };
  const ci = spec.ci === undefined ? [] : board(spec.ci.board, spec.ci.R);
  return [...cladding, wrb, ...ci, wood, cavity(spec.frame ?? "2x6"), ...lining(spec.retarder ?? "paint10")];
}

export function projectOf(spec: WallSpec): Project {
  const layers = spec.layers === undefined ? frameLayers(spec) : [...spec.layers];
  const leaks: Leak[] =
    spec.leak === undefined || spec.leak === 0
      ? []
      : [{ id: "leak", to: "sheathing", at: "inside", flow_m3hm2: spec.leak }];
  const bay: Path = { id: "bay", kind: "studBay", areaShare: 1, layers, leaks };
  return {
    format: "wallyear",
    formatVersion: 1,
    name: "A wall of the trade",
    site: {
      weather: { city: places[spec.zone] },
      // Helsinki's degree days are those of zone 6A.
      climateZone: spec.zone === "Baltic" ? "6A" : spec.zone,
      face: { azimuth_deg: spec.azimuth_deg ?? 0, tilt_deg: 90, solarAbsorptance: 0.6, longwaveEmissivity: 0.9 },
    },
    indoor: {
      method: "seasonal",
      winterTemperature_C: 21,
      summerTemperature_C: 24,
      winterRelativeHumidity: spec.humidity ?? 0.35,
      summerRelativeHumidity: Math.max(0.55, spec.humidity ?? 0.35),
    },
    run: { start: "10-01", years: spec.years ?? 2, initial: "delivered" },
    options: [{ id: "A", name: "the wall", paths: [bay] }],
  };
}
