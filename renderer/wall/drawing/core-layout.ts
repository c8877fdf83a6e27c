import type { MaterialLookup, Option, Path } from "../../../solver/index.ts";
import { outerFaces, sectionLayers, thicknessOf, type SectionLayer } from "../../section/index.ts";

/** One path as it stands on the paper [px]. */
export interface Core {
  readonly path: Path;
  readonly layers: readonly SectionLayer[];
  readonly x: number;
  readonly width: number;
  /** Of the core's outer face. */
  readonly y: number;
  readonly height: number;
  /** It shares its edges with the core before it: a stud in its bay. */
  readonly adjoins: boolean;
}

export interface CoreLayout {
  readonly cores: readonly Core[];
  /** More of the first core beyond a stud that stands in it; null: there is none. */
  readonly beyond: { readonly x: number; readonly width: number } | null;
  readonly pxPerMetre: number;
  /** The scale is 1 to this. */
  readonly ratio: number;
  readonly width: number;
  readonly height: number;
}

/** Scales that a drawing may be named by. */
const ratios = [1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20] as const;
/** A sheet has 96 px to the inch. */
const pxPerMetreFullSize = 96 / 0.0254;
const gap = 26;
const beyondWidth = 24;
/** 1 1/2 in., the dressed thickness of framing lumber. */
const studWidth_m = 0.0381;

/** Room left of the first core for the dimension string, above for the names, below, and right for the letters [px]. */
export const dimensionWidth = 104;
export const headHeight = 46;
export const footHeight = 30;
const lettersWidth = 44;

export const roomWithin = (size: { width: number; height: number }): { width: number; height: number } => ({
  width: size.width - dimensionWidth - lettersWidth,
  height: size.height - headHeight - footHeight,
});

/** Depth at which the cores are lined up: the outer face of the sheathing, or of the layer that two paths share. */
function alignmentDepths(paths: readonly Path[], drawn: readonly (readonly SectionLayer[])[]): number[] {
  const first = paths[0]!;
  const anchor =
    first.layers[drawn[0]!.findIndex((layer) => layer.hatch === "strandBoard" || layer.hatch === "plywood")] ??
    first.layers.find((layer) => layer.id === "sheathing") ??
    first.layers.find((layer) => layer.roles?.includes("air")) ??
    first.layers.find((layer) => paths.every((path) => path.layers.some((other) => other.id === layer.id)));
  return paths.map((path, index) => {
    if (!anchor) return 0;
    const at = path.layers.findIndex((layer) => layer.id === anchor.id);
    const same = at >= 0 ? at : path.layers.findIndex((layer) => layer.material === anchor.material);
    return same < 0 ? 0 : outerFaces(drawn[index]!)[same]!;
  });
}

/** Lays the paths of an option side by side, to the largest named scale that fits. */
export function layOut(option: Option, lookup: MaterialLookup, room: { width: number; height: number }): CoreLayout {
  const paths = option.paths;
  const drawn = paths.map((path) => sectionLayers(path, lookup));
  const depths = alignmentDepths(paths, drawn);
  const deepest = Math.max(...depths);
  const tops = depths.map((depth) => deepest - depth);
  const total_m = Math.max(...drawn.map((layers, index) => tops[index]! + thicknessOf(layers)), 0.001);

  const ratio = ratios.find((candidate) => (total_m * pxPerMetreFullSize) / candidate <= room.height) ?? ratios.at(-1)!;
  const pxPerMetre = pxPerMetreFullSize / ratio;

  const studAt = paths.findIndex((path, index) => index === 1 && path.kind === "stud" && paths[0]!.kind === "studBay");
  const standing = studAt === 1;
  const apart = paths.length - 1 - (standing ? 1 : 0);
  const studWidth = standing ? Math.max(28, studWidth_m * pxPerMetre) : 0;
  const taken = studWidth + (standing ? beyondWidth : 0) + apart * gap;
  const share = Math.max(40, (room.width - taken) / (1.9 + apart));
  const otherWidth = Math.min(130, share);
  const firstWidth = Math.min(apart === 0 ? 420 : 230, Math.max(60, room.width - taken - apart * otherWidth));

  let x = 0;
  const cores = paths.map((path, index): Core => {
    const adjoins = standing && index === 1;
    const width = index === 0 ? firstWidth : adjoins ? studWidth : otherWidth;
    const core = {
      path,
      layers: drawn[index]!,
      x,
      width,
      y: tops[index]! * pxPerMetre,
      height: thicknessOf(drawn[index]!) * pxPerMetre,
      adjoins,
    };
    x += width;
    const studFollows = standing && index === 0;
    if (adjoins) x += beyondWidth;
    if (!studFollows && index < paths.length - 1) x += gap;
    return core;
  });
  const stud = standing ? cores[1]! : null;
  return {
    cores,
    beyond: stud ? { x: stud.x + stud.width, width: beyondWidth } : null,
    pxPerMetre,
    ratio,
    width: x,
    height: total_m * pxPerMetre,
  };
}
