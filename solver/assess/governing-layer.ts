import type { Case, CaseLayer } from "../model/index.ts";

/** The layer that decides a path, and the plane that indoor air would wet first. */
export interface GoverningLayer {
  readonly index: number;
  readonly layer: CaseLayer;
  /** sheathing: wood-based panel or board · masonry: a wall of it · plane: neither, so the first continuous layer behind the cladding. */
  readonly kind: "sheathing" | "masonry" | "plane";
  /** The first cold plane that indoor air reaches: inner face of the layer just outside of the cavity fill. */
  readonly condensing: CaseLayer;
  /** Index of the outermost layer behind the cladding's air space; 0 where there is none. */
  readonly behindCladding: number;
}

/** Framing depth from which a layer counts as what fills the frame; service cavities are shallower (common practice, no source). */
const frameDepth_m = 0.08;
const shallowFrame_m = 0.035;
/** Lighter wood boards insulate rather than brace (common practice, no source). */
const structuralBoard_kgm3 = 300;
const thickestBoard_m = 0.06;
const masonryDensity_kgm3 = 1000;
const leastMasonry_m = 0.07;

const dryConductivity = (layer: CaseLayer): number | null => {
  const given = layer.material.conductivity_WmK;
  return given === undefined ? null : typeof given === "number" ? given : given.dry_WmK;
};

const insulates = (layer: CaseLayer): boolean => {
  const conductivity = dryConductivity(layer);
  return layer.material.kind === "bulk" && conductivity !== null && conductivity < 0.07;
};

const isMasonry = (layer: CaseLayer): boolean =>
  layer.material.kind === "bulk" &&
  layer.material.wood !== true &&
  layer.thickness_m >= leastMasonry_m &&
  ((layer.material.density_kgm3 ?? 0) >= masonryDensity_kgm3 || /masonry/i.test(layer.material.group ?? ""));

const isBoard = (layer: CaseLayer): boolean =>
  layer.material.kind === "bulk" &&
  layer.material.wood === true &&
  layer.thickness_m > 0 &&
  layer.thickness_m <= thickestBoard_m &&
  !/cladding/i.test(layer.material.group ?? "");

/** The innermost layer deep enough to be the frame's: insulation, an empty bay, or solid wood. */
function cavityIndex(layers: readonly CaseLayer[], from: number): number {
  const deep = (least_m: number): number => {
    for (let index = layers.length - 1; index >= from; index -= 1) {
      const layer = layers[index]!;
      const fills = insulates(layer) || layer.material.kind === "air" || layer.material.wood === true;
      if (fills && layer.thickness_m >= least_m) return index;
    }
    return -1;
  };
  const whole = deep(frameDepth_m);
  return whole >= 0 ? whole : deep(shallowFrame_m);
}

/** An air space with something outside of it, in the outer part of the wall: what lies outside is cladding. */
function firstBehindCladding(layers: readonly CaseLayer[]): number {
  let behind = 0;
  layers.forEach((layer, index) => {
    if (layer.material.kind !== "air" || index === 0) return;
    const vented = layer.airChangesPerHour !== null && layer.airChangesPerHour !== 0;
    const outerThin = layers.slice(0, index).every((one) => !insulates(one) && !isBoard(one));
    if (vented || (behind === 0 && outerThin && layer.thickness_m < shallowFrame_m + 0.02)) behind = index + 1;
  });
  return Math.min(behind, layers.length - 1);
}

/**
 * Which layer decides a path: the outermost wood-based panel or board between the cladding and the cavity fill; else the wall's
 * masonry; else the first layer behind the cladding. Insulating wood boards count only where no heavier one is there.
 */
export function governingLayer(aCase: Pick<Case, "layers">): GoverningLayer {
  const layers = aCase.layers;
  if (layers.length === 0) throw new RangeError("layers must hold at least one layer, got 0");
  const behindCladding = firstBehindCladding(layers);
  const cavity = cavityIndex(layers, behindCladding);
  const outsideOfCavity = (index: number): boolean => index >= behindCladding && (cavity < 0 || index < cavity);

  const bulkOutside = layers.findLastIndex(
    (layer, index) => outsideOfCavity(index) && layer.material.kind === "bulk" && layer.thickness_m > 0,
  );
  const boards = layers.flatMap((layer, index) => (outsideOfCavity(index) && isBoard(layer) ? [index] : []));
  const board =
    boards.find((index) => (layers[index]!.material.density_kgm3 ?? 0) >= structuralBoard_kgm3) ?? boards[0];
  const masonry = layers.findIndex((layer, index) => index >= behindCladding && isMasonry(layer));
  const firstBulk = layers.findIndex(
    (layer, index) => index >= behindCladding && layer.material.kind === "bulk" && layer.thickness_m > 0,
  );
  const found = (index: number, kind: GoverningLayer["kind"]): GoverningLayer => ({
    index,
    layer: layers[index]!,
    kind,
    condensing: layers[bulkOutside >= 0 ? bulkOutside : index]!,
    behindCladding,
  });
  if (board !== undefined) return found(board, "sheathing");
  if (masonry >= 0) return found(masonry, "masonry");
  // A path of solid wood (a log, a beam without sheathing) is its own governing layer.
  return found(firstBulk >= 0 ? firstBulk : behindCladding, "plane");
}
