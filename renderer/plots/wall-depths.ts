import { governingLayer, type Case, type CaseLayer } from "../../solver/index.ts";

export interface LayerSpan {
  readonly layer: CaseLayer;
  /** Depth of its outer and inner face from the outside [m]; the same for a membrane. */
  readonly from_m: number;
  readonly to_m: number;
}

/** The layers of a wall with their depths, outside first. */
export function layerSpans(layers: readonly CaseLayer[]): LayerSpan[] {
  let depth = 0;
  return layers.map((layer) => {
    const from_m = depth;
    depth += layer.thickness_m;
    return { layer, from_m, to_m: depth };
  });
}

export const wallThickness_m = (layers: readonly CaseLayer[]): number =>
  layers.reduce((sum, layer) => sum + layer.thickness_m, 0);

/** The layer that a wall is read by: the one that decides its findings. Null of a wall without layers. */
export const watchedLayer = (aCase: Pick<Case, "layers">): CaseLayer | null =>
  aCase.layers.length > 0 ? governingLayer(aCase).layer : null;

/** The word for the watched layer in a sentence: "sheathing" where it is that, else its material's name. */
export function watchedWord(aCase: Pick<Case, "layers">): string {
  if (aCase.layers.length === 0) return "wall";
  const { kind, layer } = governingLayer(aCase);
  return kind === "sheathing" ? "sheathing" : lowerFirst(layer.name.split(/[,(]/)[0]!.trim());
}

/** "Gypsum board" within a sentence; names that are all capitals stay. */
export const lowerFirst = (text: string): string =>
  /^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;

/** Depth from which humidity is the wall's own and not the weather's: behind the innermost air space that outdoor air moves through. */
export function behindVentilation_m(layers: readonly CaseLayer[]): number {
  const spans = layerSpans(layers);
  const vented = spans.filter(({ layer }) => layer.airChangesPerHour !== null);
  return vented.at(-1)?.to_m ?? 0;
}

/** Named drawing scales, largest first. */
export const drawingScales = [1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20] as const;
const pixelsPerMetre = 96 / 0.0254;

/** The largest named scale at which `thickness_m` of wall fits `room_px`; 1:20 at worst. */
export function depthScale(thickness_m: number, room_px: number): { oneTo: number; height_px: number } {
  const oneTo = drawingScales.find((scale) => (thickness_m * pixelsPerMetre) / scale <= room_px) ?? 20;
  return { oneTo, height_px: (thickness_m * pixelsPerMetre) / oneTo };
}
