import { governingLayer } from "../assess/index.ts";
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
/**
 * The condensing plane of a path, as the findings take it: the inner face of the innermost solid layer outward of what fills
 * the frame. The frame layer is the next layer inward that is not a sheet.
 */
export function condensingPlane(aCase: Pick<Case, "layers">): CondensingPlane {
  const { layers } = aCase;
  const governing = governingLayer(aCase);
  const index = layers.indexOf(governing.condensing);
  const inward = layers.findIndex((layer, place) => place > index && layer.material.kind !== "membrane");
  return {
    layer: governing.condensing.id,
    layerName: governing.condensing.name,
    index,
    wood: governing.layer.material.wood === true ? governing.layer.id : null,
    frame: inward === -1 ? layers.length - 1 : inward,
  };
}

/** Insulation outward of the frame layer, outside first: the continuous insulation of the path. */
export function exteriorInsulation(aCase: Pick<Case, "layers">): readonly CaseLayer[] {
  return aCase.layers.slice(0, condensingPlane(aCase).frame).filter(isInsulation);
}
