/** The cut through a wall, drawn with drafting hatches. */
export { hatchOf, type HatchKind } from "./hatch-kind.ts";
export { hatchPaths, type CutRect, type Hatch } from "./hatches.ts";
export { LayerStack } from "./layer-stack.tsx";
export { outerFaces, sectionLayers, thicknessOf, type SectionLayer } from "./layers.ts";
