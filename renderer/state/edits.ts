import type { Layer, Option, Path, Project } from "../../solver/index.ts";

/** Pure edits of a project. None changes what it is given; an edit that changes nothing gives back the same object. */

export const onOption =
  (id: string, change: (option: Option) => Option) =>
  (project: Project): Project =>
    mapOne(project, "options", project.options, (option) => option.id === id, change);

export const onPath = (option: string, path: string, change: (path: Path) => Path) =>
  onOption(option, (found) => mapOne(found, "paths", found.paths, (candidate) => candidate.id === path, change));

function mapOne<Whole extends object, Part>(
  whole: Whole,
  field: keyof Whole,
  parts: readonly Part[],
  isIt: (part: Part) => boolean,
  change: (part: Part) => Part,
): Whole {
  let changed = false;
  const next = parts.map((part) => {
    if (!isIt(part)) return part;
    const made = change(part);
    changed ||= made !== part;
    return made;
  });
  return changed ? { ...whole, [field]: next } : whole;
}

const sameMake = (one: Layer, other: Layer): boolean =>
  one.id === other.id &&
  one.thickness_m === other.thickness_m &&
  JSON.stringify(one.material) === JSON.stringify(other.material);

/** The paths of an option through which this layer runs: same id, material and thickness. */
export function pathsWithLayer(option: Option, path: Path, layerId: string): readonly Path[] {
  const layer = path.layers.find((candidate) => candidate.id === layerId);
  if (!layer) return [];
  return option.paths.filter(
    (candidate) => candidate === path || candidate.layers.some((other) => sameMake(layer, other)),
  );
}

/** Changes a layer in one path, or in every path through which it runs. */
export const onLayer =
  (optionId: string, pathId: string, layerId: string, throughAll: boolean, change: (layer: Layer) => Layer) =>
  (project: Project): Project =>
    onOption(optionId, (option) => {
      const path = option.paths.find((candidate) => candidate.id === pathId);
      if (!path) return option;
      const touched = new Set(throughAll ? pathsWithLayer(option, path, layerId) : [path]);
      const paths = option.paths.map((candidate) =>
        touched.has(candidate)
          ? mapOne(candidate, "layers", candidate.layers, (layer) => layer.id === layerId, change)
          : candidate,
      );
      return paths.every((candidate, index) => candidate === option.paths[index]) ? option : { ...option, paths };
    })(project);

export const putLayer =
  (optionId: string, pathId: string, at: number, layer: Layer) =>
  (project: Project): Project =>
    onPath(optionId, pathId, (path) => ({ ...path, layers: path.layers.toSpliced(at, 0, layer) }))(project);

export const dropLayer =
  (optionId: string, pathId: string, layerId: string) =>
  (project: Project): Project =>
    onPath(optionId, pathId, (path) =>
      path.layers.length > 1 ? { ...path, layers: path.layers.filter((layer) => layer.id !== layerId) } : path,
    )(project);

/** Swaps a layer with its neighbour: step -1 outward, 1 inward. */
export const shiftLayer =
  (optionId: string, pathId: string, layerId: string, step: 1 | -1) =>
  (project: Project): Project =>
    onPath(optionId, pathId, (path) => {
      const from = path.layers.findIndex((layer) => layer.id === layerId);
      const to = from + step;
      if (from < 0 || to < 0 || to >= path.layers.length) return path;
      const layers = [...path.layers];
      [layers[from], layers[to]] = [layers[to]!, layers[from]!];
      return { ...path, layers };
    })(project);

/** A free id for a new layer, from the material's own. */
export function freeLayerId(path: Path, wish: string): string {
  const taken = new Set(path.layers.map((layer) => layer.id));
  if (!taken.has(wish)) return wish;
  let number = 2;
  while (taken.has(`${wish}-${number}`)) number++;
  return `${wish}-${number}`;
}

/** The next free letter for an option; null when eight stand. */
export function freeOptionLetter(project: Project): string | null {
  if (project.options.length >= 8) return null;
  const taken = new Set(project.options.map((option) => option.id));
  return [..."ABCDEFGHIJKLMNOPQRSTUVWXYZ"].find((letter) => !taken.has(letter)) ?? null;
}
