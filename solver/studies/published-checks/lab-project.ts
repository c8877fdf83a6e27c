import type { Material } from "../../materials/index.ts";
import type { Lab, LabFace, LabPhysics, Layer, Project } from "../../model/index.ts";

/** What a laboratory case says; all else of the project follows. */
export interface LabCase {
  readonly name: string;
  readonly materials: readonly Material[];
  /** Outside first. */
  readonly layers: readonly Layer[];
  readonly outside: LabFace;
  readonly inside: LabFace;
  readonly physics: LabPhysics;
  readonly duration_h: number;
  readonly initialTemperature_C: Lab["initialTemperature_C"];
  /** Start humidity of the layers that say nothing themselves [0..1]. */
  readonly initialRelativeHumidity?: number;
  /** Depths at which to record [m]. */
  readonly depths_m?: readonly number[];
}

/** A probe named by its depth in micrometres, so that close depths keep apart. */
const probeOf = (depth_m: number) => ({ id: `depth-${Math.round(depth_m * 1e6)}um`, depth_m });

/** A wall of one option "A" and one path "wall" between two laboratory faces. */
export function labProject(lab: LabCase): Project {
  const depths = [...new Set(lab.depths_m ?? [])].sort((a, b) => a - b);
  return {
    format: "wallyear",
    formatVersion: 1,
    name: lab.name,
    lab: {
      outside: lab.outside,
      inside: lab.inside,
      physics: lab.physics,
      duration_h: lab.duration_h,
      initialTemperature_C: lab.initialTemperature_C,
    },
    run: { start: "10-01", years: 1, initial: { relativeHumidity: lab.initialRelativeHumidity ?? 0.5 } },
    options: [
      {
        id: "A",
        name: lab.name,
        paths: [{ id: "wall", kind: "solid", layers: [...lab.layers], probes: depths.map(probeOf) }],
      },
    ],
    materials: [...lab.materials],
  };
}

/** A material that conducts and says nothing of moisture. */
export const conductor = (
  id: string,
  name: string,
  conductivity_WmK: number,
  density_kgm3: number,
  heatCapacity_JkgK: number,
): Material => ({
  id,
  name,
  kind: "bulk",
  density_kgm3,
  heatCapacity_JkgK,
  conductivity_WmK,
});

/** A face held at a temperature, closed to moisture. */
export const heldTemperature = (temperature_C: number): LabFace => ({
  temperature_C,
  heatFilm_Wm2K: "held",
  vapourFilm_kgm2sPa: 0,
});

/** A face that lets neither heat nor moisture pass. */
export const closedFace = (temperature_C: number): LabFace => ({
  temperature_C,
  heatFilm_Wm2K: 0,
  vapourFilm_kgm2sPa: 0,
});

/** Conduction alone: no moisture moves. */
export const conductionOnly: LabPhysics = { moisture: false };

/** A course read as straight lines between values at equal steps from 0 to the end of the run. */
export function sampled(duration_h: number, step_s: number, value: (time_s: number) => number) {
  const count = Math.round((duration_h * 3600) / step_s);
  return {
    table: Array.from({ length: count + 1 }, (_, k): [number, number] => [k * step_s, value(k * step_s)]),
    between: "line" as const,
  };
}
