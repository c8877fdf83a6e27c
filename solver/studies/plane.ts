import type { Case, CaseLayer } from "../model/index.ts";
import { ratedConductivity_WmK } from "./material-figures.ts";

/** Where room air that gets past the lining first meets a cold surface, and the wooden layer that pays for it. */
export interface CondensingPlane {
  /** Layer whose inner face is the plane. */
  readonly layer: string;
  readonly layerName: string;
  /** Index of that layer, outside first. */
  readonly index: number;
  /** Nearest wooden layer from the plane outward (or the plane's own); null in a wall without one. */
  readonly wood: string | null;
  /** Index of the frame layer inward of the plane. */
  readonly frame: number;
}

/** A layer this thick [m] can be the frame depth, from a 2x3 laid flat upward. Common practice, no source. */
const leastFrameDepth_m = 0.06;
/** Conductivity above which a layer is structure, cladding or lining, not insulation [W/(m K)]. Common practice, no source. */
const insulationLimit_WmK = 0.06;

export const isInsulation = (layer: CaseLayer): boolean => {
  const conductivity = ratedConductivity_WmK(layer.material);
  return (
    layer.material.kind === "bulk" &&
    layer.thickness_m > 0.005 &&
    conductivity !== null &&
    conductivity < insulationLimit_WmK
  );
};
/** Conductivity up to which a deep layer can be a frame with its fill, wood included, masonry not [W/(m K)]. Common practice, no source. */
const frameLimit_WmK = 0.2;
const canBeFrame = (layer: CaseLayer): boolean =>
  layer.material.kind === "air"
    ? !isVentilated(layer)
    : layer.material.kind === "bulk" && (ratedConductivity_WmK(layer.material) ?? Infinity) < frameLimit_WmK;
const isVentilated = (layer: CaseLayer): boolean =>
  layer.material.kind === "air" && layer.airChangesPerHour !== null && layer.airChangesPerHour !== 0;

/**
 * The condensing plane of a path: the inner face of the first solid layer outward of the frame layer. The frame layer is
 * the innermost layer deep enough to hold a frame (fibre, foam, air or the stud itself); in a wall without one it is the
 * innermost insulation, else the lining.
 */
export function condensingPlane(aCase: Pick<Case, "layers">): CondensingPlane {
  const layers = aCase.layers;
  const frame = frameIndex(layers);
  let index = frame - 1;
  while (index > 0 && layers[index]!.material.kind !== "bulk") index -= 1;
  if (index < 0) index = 0;
  const plane = layers[index]!;
  let wood: string | null = null;
  for (let outward = index; outward >= 0 && wood === null; outward -= 1) {
    const layer = layers[outward]!;
    if (isVentilated(layer)) break;
    if (layer.material.wood === true) wood = layer.id;
  }
  if (wood === null && layers[frame]?.material.wood === true) wood = layers[frame].id;
  return { layer: plane.id, layerName: plane.name, index, wood, frame };
}

function frameIndex(layers: readonly CaseLayer[]): number {
  for (let index = layers.length - 1; index > 0; index -= 1) {
    const layer = layers[index]!;
    if (layer.thickness_m >= leastFrameDepth_m && canBeFrame(layer) && hasSolidOutside(layers, index)) return index;
  }
  for (let index = layers.length - 1; index > 0; index -= 1) if (isInsulation(layers[index]!)) return index;
  return layers.length - 1;
}

const hasSolidOutside = (layers: readonly CaseLayer[], index: number): boolean =>
  layers.slice(0, index).some((layer) => layer.material.kind === "bulk");

/** Insulation outward of the frame layer, outside first: the continuous insulation of the path. */
export function exteriorInsulation(aCase: Pick<Case, "layers">): readonly CaseLayer[] {
  return aCase.layers.slice(0, condensingPlane(aCase).frame).filter(isInsulation);
}
