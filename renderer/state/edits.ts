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

/** Changes the layers of one path, or of every path through which the named layer runs. */
const onPathsOf =
  (optionId: string, pathId: string, layerId: string, throughAll: boolean, change: (path: Path) => Path) =>
  (project: Project): Project =>
    onOption(optionId, (option) => {
      const path = option.paths.find((candidate) => candidate.id === pathId);
      if (!path) return option;
      const touched = new Set(throughAll ? pathsWithLayer(option, path, layerId) : [path]);
      return mapOne(option, "paths", option.paths, (candidate) => touched.has(candidate), change);
    })(project);

/** Puts a new layer inward of another. */
export const putLayer = (optionId: string, pathId: string, besideId: string, throughAll: boolean, layer: Layer) =>
  onPathsOf(optionId, pathId, besideId, throughAll, (path) => {
    const at = path.layers.findIndex((candidate) => candidate.id === besideId);
    return { ...path, layers: path.layers.toSpliced(at + 1, 0, layer) };
  });

/** Takes a layer out; the last one of a path stays. */
export const dropLayer = (optionId: string, pathId: string, layerId: string, throughAll: boolean) =>
  onPathsOf(optionId, pathId, layerId, throughAll, (path) =>
    path.layers.length > 1 ? { ...path, layers: path.layers.filter((layer) => layer.id !== layerId) } : path,
  );

/** Swaps a layer with its neighbour: step -1 outward, 1 inward. Other paths follow where they have the same neighbour. */
export const shiftLayer =
  (optionId: string, pathId: string, layerId: string, step: 1 | -1, throughAll: boolean) =>
  (project: Project): Project => {
    const path = project.options.find(({ id }) => id === optionId)?.paths.find(({ id }) => id === pathId);
    const at = path?.layers.findIndex(({ id }) => id === layerId) ?? -1;
    const neighbourId = path?.layers[at + step]?.id;
    if (at < 0 || neighbourId === undefined) return project;
    return onPathsOf(optionId, pathId, layerId, throughAll, (candidate) => {
      const from = candidate.layers.findIndex(({ id }) => id === layerId);
      const to = from + step;
      if (candidate.layers[to]?.id !== neighbourId) return candidate;
      const layers = [...candidate.layers];
      [layers[from], layers[to]] = [layers[to]!, layers[from]!];
      return { ...candidate, layers };
    })(project);
  };

/** A layer id that no path of the option uses, from the material's own. */
export function freeLayerId(option: Option, wish: string): string {
  const taken = new Set(option.paths.flatMap((path) => path.layers.map((layer) => layer.id)));
  if (!taken.has(wish)) return wish;
  let number = 2;
  while (taken.has(`${wish}-${number}`)) number++;
  return `${wish}-${number}`;
}

/** Takes an option out; the last one stays. */
export const dropOption =
  (id: string) =>
  (project: Project): Project => {
    const options = project.options.filter((option) => option.id !== id);
    return options.length === 0 || options.length === project.options.length ? project : { ...project, options };
  };

/** Swaps an option with its neighbour in the order of the project. */
export const shiftOption =
  (id: string, step: 1 | -1) =>
  (project: Project): Project => {
    const from = project.options.findIndex((option) => option.id === id);
    const to = from + step;
    if (from < 0 || project.options[to] === undefined) return project;
    const options = [...project.options];
    [options[from], options[to]] = [options[to]!, options[from]!];
    return { ...project, options };
  };

/** The next free letter for an option; null when eight stand. */
export function freeOptionLetter(project: Project): string | null {
  if (project.options.length >= 8) return null;
  const taken = new Set(project.options.map((option) => option.id));
  return [..."ABCDEFGHIJKLMNOPQRSTUVWXYZ"].find((letter) => !taken.has(letter)) ?? null;
}
