import { materialById, type Material } from "../materials/index.ts";
import type { Layer, Option, Path } from "../model/index.ts";
import { ratedConductivity_WmK } from "./material-figures.ts";

/** Finds the material of a layer; the project's own materials go before the catalogue. */
type Lookup = (id: string) => Material | undefined;

export interface InsulationToAdd {
  readonly material: string;
  readonly thickness_m: number;
  /** Option letter and name of the result; by default those of the option. */
  readonly id?: string;
  readonly name?: string;
  readonly lookup?: Lookup;
}

/** Paths whose bearing goes through the insulation unless it is stood off: the board stops there. */
const bearings: ReadonlySet<Path["kind"]> = new Set(["ledger", "balcony"]);
/** Same limits as for the condensing plane: what insulates, and what is deep enough to be the frame. */
const insulationLimit_WmK = 0.06;
const frameLimit_WmK = 0.2;
const leastFrameDepth_m = 0.06;
const layerId = "ci";

/**
 * The option with a board of continuous insulation outside of its sheathing, on every path but those where a ledger or
 * balcony bears through. The board goes outside of a membrane that lies on the sheathing, and inside of any air space.
 * Insulation that already stands there is replaced.
 */
export function withContinuousInsulation(option: Option, board: InsulationToAdd): Option {
  if (!(board.thickness_m > 0)) throw new RangeError(`thickness_m must be > 0, got ${board.thickness_m}`);
  const lookup = board.lookup ?? materialById;
  const material = lookup(board.material);
  if (material === undefined)
    throw new RangeError(`material must be in the catalogue or the project, got "${board.material}"`);
  const bare = withoutContinuousInsulation(option, { lookup });
  const paths = bare.paths.map((path) =>
    bearings.has(path.kind) ? path : { ...path, layers: withBoard(path.layers, board, lookup) },
  );
  return {
    ...bare,
    id: board.id ?? option.id,
    name: board.name ?? `${option.name}, with ${material.name.toLowerCase()} outside`,
    paths,
  };
}

/** The option without any insulation outward of its frame. Leaks that arrived there arrive at the layer inward. */
export function withoutContinuousInsulation(
  option: Option,
  change: { readonly id?: string; readonly name?: string; readonly lookup?: Lookup } = {},
): Option {
  const lookup = change.lookup ?? materialById;
  const paths = option.paths.map((path) => {
    const frame = frameOf(path.layers, lookup);
    const outside = new Set(
      path.layers.filter((layer, index) => index < frame && isInsulation(layer, lookup)).map((layer) => layer.id),
    );
    return outside.size === 0 ? path : withoutLayers(path, outside);
  });
  return { ...option, id: change.id ?? option.id, name: change.name ?? option.name, paths };
}

/** True when a path of the option has insulation outward of its frame. */
export const hasContinuousInsulation = (option: Option, lookup: Lookup = materialById): boolean =>
  option.paths.some((path) =>
    path.layers.some((layer, index) => index < frameOf(path.layers, lookup) && isInsulation(layer, lookup)),
  );

function withBoard(layers: readonly Layer[], board: InsulationToAdd, lookup: Lookup): Layer[] {
  let place = sheathingOf(layers, lookup);
  while (place > 0 && materialOf(layers[place - 1]!, lookup)?.kind === "membrane") place -= 1;
  const taken = new Set(layers.map((layer) => layer.id));
  let id = layerId;
  for (let number = 2; taken.has(id); number += 1) id = `${layerId}${number}`;
  return [
    ...layers.slice(0, place),
    { id, material: board.material, thickness_m: board.thickness_m, roles: ["thermal"] },
    ...layers.slice(place),
  ];
}

function withoutLayers(path: Path, gone: ReadonlySet<string>): Path {
  const heir = (id: string): { to: string; at: "inside" | "outside" } => {
    const from = path.layers.findIndex((layer) => layer.id === id);
    const inward = path.layers.slice(from + 1).find((layer) => !gone.has(layer.id));
    return inward === undefined
      ? {
          to: path.layers
            .slice(0, from)
            .reverse()
            .find((layer) => !gone.has(layer.id))!.id,
          at: "inside",
        }
      : { to: inward.id, at: "outside" };
  };
  const layers = path.layers.filter((layer) => !gone.has(layer.id));
  return path.leaks === undefined
    ? { ...path, layers }
    : { ...path, layers, leaks: path.leaks.map((leak) => (gone.has(leak.to) ? { ...leak, ...heir(leak.to) } : leak)) };
}

const materialOf = (layer: Layer, lookup: Lookup): Material | undefined =>
  typeof layer.material === "string" ? lookup(layer.material) : layer.material;
const conductivityOf = (layer: Layer, lookup: Lookup): number => {
  const material = materialOf(layer, lookup);
  return material?.kind === "bulk" ? (ratedConductivity_WmK(material) ?? Infinity) : Infinity;
};
const isInsulation = (layer: Layer, lookup: Lookup): boolean =>
  conductivityOf(layer, lookup) < insulationLimit_WmK && (layer.thickness_m ?? 0) > 0.005;
const isStillAir = (layer: Layer, lookup: Lookup): boolean =>
  materialOf(layer, lookup)?.kind === "air" &&
  (layer.ventilation?.airChangesPerHour ?? 0) === 0 &&
  !/vent/i.test(materialOf(layer, lookup)?.id ?? "");

/** Innermost layer deep enough to be the frame with its fill; else the innermost insulation; else the lining. */
function frameOf(layers: readonly Layer[], lookup: Lookup): number {
  for (let index = layers.length - 1; index > 0; index -= 1) {
    const layer = layers[index]!;
    const deep = (layer.thickness_m ?? 0) >= leastFrameDepth_m;
    if (deep && (conductivityOf(layer, lookup) < frameLimit_WmK || isStillAir(layer, lookup))) return index;
  }
  for (let index = layers.length - 1; index > 0; index -= 1) if (isInsulation(layers[index]!, lookup)) return index;
  return layers.length - 1;
}

/** The board goes outside of the first solid layer outward of the frame, or of the frame itself where none is. */
function sheathingOf(layers: readonly Layer[], lookup: Lookup): number {
  const frame = frameOf(layers, lookup);
  for (let index = frame - 1; index >= 0; index -= 1) {
    const kind = materialOf(layers[index]!, lookup)?.kind;
    if (kind === "air") break;
    if (kind === "bulk") return index;
  }
  return frame;
}
