import type { Case } from "../../solver/index.ts";
import { hatchOf, type HatchKind } from "./hatch-kind.ts";

/** A layer as it is drawn; membranes and coatings have no thickness. */
export interface SectionLayer {
  readonly id: string;
  readonly name: string;
  readonly thickness_m: number;
  readonly hatch: HatchKind;
}

/** The layers of a case, outside first, ready to draw. */
export const sectionLayers = (aCase: Pick<Case, "layers" | "pathKind">): readonly SectionLayer[] =>
  aCase.layers.map(({ id, name, thickness_m, material }) => ({
    id,
    name,
    thickness_m,
    hatch: hatchOf(material, aCase.pathKind),
  }));

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
