import type { Indoor, Layer, Option, Path, PathKind, Project } from "../project.ts";

/** A starter wall: a project to begin from. Names of places and houses are invented; the weather is a real city's. */
export interface StarterWall {
  readonly id: string;
  readonly title: string;
  /** What it is and what it teaches, in one sentence. */
  readonly sentence: string;
  readonly project: Project;
}

type Extra = Omit<Layer, "id" | "material" | "thickness_m">;

/** A board, insulation or masonry layer. */
export const board = (id: string, material: string, thickness_mm: number, extra: Extra = {}): Layer => ({
  id,
  material,
  thickness_m: Number((thickness_mm / 1000).toFixed(5)),
  ...extra,
});
/** A membrane or a coat of paint. */
export const sheet = (id: string, material: string, extra: Extra = {}): Layer => ({ id, material, ...extra });

export const lapSiding = (): Layer[] => [
  board("cladding", "pine_lap_siding", 19),
  board("gap", "vent_cavity_19", 19, { ventilation: { airChangesPerHour: 200 } }),
];
export const wrap = (): Layer => sheet("wrb", "housewrap", { roles: ["water"] });
export const strandBoard = (): Layer => board("sheathing", "osb_111", 11.1, { roles: ["air"] });
export const gypsumAndPaint = (): Layer[] => [board("gypsum", "gypsum_board_127", 12.7), sheet("paint", "paint_latex")];
export const kraft = (): Layer => sheet("retarder", "kraft_facing", { roles: ["vapour"] });

export const stud2x4_mm = 89;
export const stud2x6_mm = 140;

/** Share of studs, plates and headers at 16 in. on centre, US tables. */
const framingShare = 0.25;
/** A modest share of the house's leakage reaches the sheathing: common practice, no source. */
const usualLeak_m3hm2 = 0.05;

export const path = (
  id: string,
  kind: PathKind,
  areaShare: number,
  layers: Layer[],
  extra: Partial<Path> = {},
): Path => ({ id, kind, areaShare, layers, ...extra });

interface Frame {
  readonly outside: () => Layer[];
  readonly cavity: () => Layer[];
  readonly framing: () => Layer[];
  readonly inside: () => Layer[];
  /** Where leaking room air arrives; the inner face of the sheathing when absent. */
  readonly leakTo?: string;
}

/** Stud bay and framing of a frame wall, with the usual leak in the bay; `of` is the share of the wall both take together. */
export function frame(parts: Frame, of = 1): Path[] {
  const bay = path("bay", "studBay", Number(((1 - framingShare) * of).toFixed(4)), [
    ...parts.outside(),
    ...parts.cavity(),
    ...parts.inside(),
  ]);
  return [
    { ...bay, leaks: [{ id: "leak", to: parts.leakTo ?? "sheathing", at: "inside", flow_m3hm2: usualLeak_m3hm2 }] },
    path(
      "stud",
      "stud",
      Number((framingShare * of).toFixed(4)),
      [...parts.outside(), ...parts.framing(), ...parts.inside()],
      { name: "Stud and plates" },
    ),
  ];
}

export const studOf = (depth_mm: number) => (): Layer[] => [board("framing", "spf_framing", depth_mm)];

export const option = (id: string, name: string, paths: Path[]): Option => ({ id, name, paths });

interface Setting {
  readonly name: string;
  readonly notes: string;
  readonly city: string;
  readonly zone: string;
  readonly azimuth_deg?: number;
  readonly leakTo?: string;
  readonly leakShare?: number;
  readonly indoor?: Indoor;
  readonly run?: Project["run"];
}

/** A house room: 35 % RH in winter, 60 % in summer, the design figures of the trade (common practice, no source). */
export const usualRoom: Indoor = {
  method: "seasonal",
  winterTemperature_C: 21,
  summerTemperature_C: 24,
  winterRelativeHumidity: 0.35,
  summerRelativeHumidity: 0.6,
};

export function project(setting: Setting, options: Option[]): Project {
  return {
    format: "wallyear",
    formatVersion: 1,
    name: setting.name,
    notes: setting.notes,
    site: {
      weather: { city: setting.city },
      climateZone: setting.zone,
      face: {
        azimuth_deg: setting.azimuth_deg ?? 0,
        tilt_deg: 90,
        height_m: 5,
        shelter: "medium",
        solarAbsorptance: 0.6,
        longwaveEmissivity: 0.9,
      },
      rain: { leakShare: setting.leakShare ?? 0.01, leakTo: setting.leakTo ?? "sheathing" },
    },
    indoor: setting.indoor ?? usualRoom,
    air: { ach50: 3, storeys: 2 },
    run: setting.run ?? { start: "10-01", years: 2, initial: "delivered" },
    options,
  };
}
