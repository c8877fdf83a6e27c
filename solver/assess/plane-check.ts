import type { Case } from "../model/index.ts";
import { ratioRule, steadyLayersOf } from "../physics/steady/index.ts";
import type { RatioRule } from "../physics/steady/index.ts";
import { governingLayer } from "./governing-layer.ts";

export interface PlaneCheck extends RatioRule {
  /** Layer whose inner face is checked. */
  readonly plane: string;
  readonly outside_m2KW: number;
  readonly inside_m2KW: number;
}

/** Layers that conduct less than this count as insulation [W/(m K)] (common practice, no source). */
const insulation_WmK = 0.07;

/**
 * The ratio rule on a path: the plane that room air would wet first, what insulates outside and inside of it, and whether it
 * stays above the room's dew point at the coldest season's mean. A first look beside the run, never the verdict.
 *
 * @param counting "insulation" takes insulating layers alone, as the trade's rule does; "everything" adds boards and films
 * @returns null where nothing insulates, so that the rule has nothing to say
 */
export function planeCheck(
  aCase: Pick<Case, "layers">,
  indoor: { readonly temperature_C: number; readonly relativeHumidity: number },
  outdoorMean_C: number,
  counting: "insulation" | "everything" = "insulation",
): PlaneCheck | null {
  const plane = governingLayer(aCase).condensing;
  const at = aCase.layers.indexOf(plane);
  const wall = steadyLayersOf(aCase.layers);
  const everything = counting === "everything";
  let outside_m2KW = everything ? wall.films.outside_m2KW : 0;
  let inside_m2KW = everything ? wall.films.inside_m2KW : 0;
  for (const steady of wall.layers) {
    const index = aCase.layers.findIndex((layer) => layer.id === steady.id);
    const layer = aCase.layers[index]!;
    const insulates =
      layer.material.kind === "bulk" && layer.thickness_m / Math.max(steady.resistance_m2KW, 1e-9) < insulation_WmK;
    if (!everything && !insulates) continue;
    if (index <= at) outside_m2KW += steady.resistance_m2KW;
    else inside_m2KW += steady.resistance_m2KW;
  }
  if (outside_m2KW + inside_m2KW <= 0 || outdoorMean_C >= indoor.temperature_C) return null;
  return {
    plane: plane.id,
    outside_m2KW,
    inside_m2KW,
    ...ratioRule(outside_m2KW, inside_m2KW, indoor, outdoorMean_C),
  };
}
