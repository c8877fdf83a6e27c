import { materialOfLayer, type MaterialLookup, type Path } from "../../solver/index.ts";
import { hatchOf, type HatchKind } from "./hatch-kind.ts";

/** A layer as it is drawn; membranes and coatings have no thickness. */
export interface SectionLayer {
  readonly id: string;
  readonly name: string;
  readonly thickness_m: number;
  readonly hatch: HatchKind;
}

type PathToDraw = Pick<Path, "kind" | "layers">;

/** The layers of a path, outside first, ready to draw. A material that nobody knows is drawn blank. */
export const sectionLayers = (path: PathToDraw, lookup: MaterialLookup): readonly SectionLayer[] =>
  path.layers.map((layer) => {
    const material = materialOfLayer(layer, lookup);
    const thick = layer.thickness_m !== undefined && layer.thickness_m > 0 ? layer.thickness_m : 0;
    return {
      id: layer.id,
      name: material?.name ?? layer.id,
      thickness_m: material?.kind === "membrane" ? 0 : thick,
      hatch: material ? hatchOf(material, path.kind) : "plain",
    };
  });

export const thicknessOf = (layers: readonly SectionLayer[]): number =>
  layers.reduce((sum, layer) => sum + layer.thickness_m, 0);

/** Depth of each layer's outer face [m], outside first. */
export function outerFaces(layers: readonly SectionLayer[]): readonly number[] {
  let depth = 0;
  return layers.map((layer) => {
    const face = depth;
    depth += layer.thickness_m;
    return face;
  });
}
