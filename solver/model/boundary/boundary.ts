import { foundLayers, isFraming, type FoundLayer } from "../layer-parts.ts";
import { lookupFor } from "../layer-material.ts";
import type { ControlRole, Option, Path, PathKind, Project } from "../project.ts";
import { inSentence, nameOfPath } from "../words.ts";
import { playedRoles, type PlayedRole } from "./control-roles.ts";

/** Which layers form the boundary on one path. */
export interface PathBoundary {
  readonly path: string;
  readonly name: string;
  readonly kind: PathKind;
  readonly roles: readonly PlayedRole[];
}

/** One joint between two paths for one role. */
export interface TieIn {
  readonly from: string;
  readonly to: string;
  readonly role: ControlRole;
  readonly joined: boolean;
  readonly by: "user" | "deduced";
}

/** A place where the boundary stops, told in a sentence. `bridge`: framing that crosses the insulation by design; counted in U, not a gap. */
export interface BoundaryBreak {
  readonly path: string;
  readonly role: ControlRole;
  readonly kind: "break" | "bridge";
  /** The neighbour whose layer stops here. */
  readonly neighbour: string;
  readonly statement: string;
  readonly remedy: string;
}

export interface BoundaryReport {
  readonly paths: readonly PathBoundary[];
  readonly tieIns: readonly TieIn[];
  readonly breaks: readonly BoundaryBreak[];
  /** True for a role whose layer can be traced through every path without lifting the pen. */
  readonly unbroken: Readonly<Record<ControlRole, boolean>>;
}

const framingKinds: ReadonlySet<PathKind> = new Set(["stud", "plate", "header"]);

/** The path the others are measured against: the largest stud bay or solid wall, else the largest path. */
function fieldOf(option: Pick<Option, "paths">): Path {
  const plain = option.paths.filter((path) => path.kind === "studBay" || path.kind === "solid");
  return (plain.length > 0 ? plain : option.paths).reduce((best, path) =>
    (path.areaShare ?? 0) > (best.areaShare ?? 0) ? path : best,
  );
}

const roleWords: Readonly<Record<ControlRole, string>> = {
  water: "water control",
  air: "air control",
  vapour: "vapour control",
  thermal: "thermal control",
};
const attached: ReadonlySet<PathKind> = new Set(["ledger", "balcony"]);

function remedyFor(role: ControlRole, path: Path, layer: string): string {
  if (attached.has(path.kind)) {
    const what = path.kind === "ledger" ? "the ledger" : "the balcony";
    return role === "thermal"
      ? `Run ${layer} behind ${what} and carry ${what} on stand-offs or on its own posts.`
      : `Run ${layer} behind ${what} before ${what} is hung, and seal each fastener that passes through it.`;
  }
  if (path.kind === "windowBuck")
    return role === "thermal"
      ? `Lap ${layer} over the buck, or set the window in line with it.`
      : `Turn ${layer} into the opening and seal it to the window.`;
  if (role === "thermal") return `Carry ${layer} across this path.`;
  return `Carry ${layer} across this path, or name the layer that takes its place and join the two.`;
}

/** Same layer in both paths: of the same material, or of the same id where neither is framing. */
function sameLayer(a: string, b: string, here: readonly FoundLayer[], there: readonly FoundLayer[]): boolean {
  const one = here.find((found) => found.layer.id === a);
  const other = there.find((found) => found.layer.id === b);
  if (!one || !other) return false;
  return one.material.id === other.material.id || (a === b && !isFraming(one) && !isFraming(other));
}

/**
 * Traces the four control layers through the paths of an option: who plays which role, where two paths are joined, and where the
 * boundary stops, each break with path, role and remedy. Needs no run.
 */
export function boundary(option: Option, project: Pick<Project, "materials"> = {}): BoundaryReport {
  const lookup = lookupFor(project);
  const layers = new Map(option.paths.map((path) => [path.id, foundLayers(path, lookup)]));
  const paths: PathBoundary[] = option.paths.map((path) => ({
    path: path.id,
    name: nameOfPath(path),
    kind: path.kind,
    roles: playedRoles(layers.get(path.id)!),
  }));
  const field = fieldOf(option);
  const tieIns: TieIn[] = [];
  const breaks: BoundaryBreak[] = [];

  for (const path of option.paths) {
    const named = path.tieIns?.to?.filter((id) => id !== path.id && layers.has(id)) ?? [];
    const neighbours = named.length > 0 ? named : path === field ? [] : [field.id];
    for (const neighbour of neighbours) {
      const here = paths.find((one) => one.path === path.id)!;
      const there = paths.find((one) => one.path === neighbour)!;
      for (const { role, layer, name } of here.roles) {
        const other = there.roles.find((one) => one.role === role)!;
        if (other.layer === null) continue;
        const set = path.tieIns?.[role];
        const joined =
          set ?? (layer !== null && sameLayer(layer, other.layer, layers.get(path.id)!, layers.get(neighbour)!));
        tieIns.push({ from: path.id, to: neighbour, role, joined, by: set === undefined ? "deduced" : "user" });
        if (joined) continue;
        // Framing that crosses cavity insulation, or replaces the layer beside it, is a bridge of the usual kind.
        const bridge = role === "thermal" && framingKinds.has(path.kind) && layers.get(path.id)!.some(isFraming);
        // What retards vapour in the bay need not be the same sheet on wood that is as tight by itself.
        if (role === "vapour" && layers.get(path.id)!.some(isFraming)) continue;
        const layerName = inSentence(other.name);
        breaks.push({
          path: path.id,
          role,
          kind: bridge ? "bridge" : "break",
          neighbour,
          statement: bridge
            ? `${here.name}: wood crosses the insulation; the ${layerName} of ${there.name.toLowerCase()} stops beside it.`
            : layer === null
              ? `${here.name}: the ${roleWords[role]} stops. The ${layerName} of ${there.name.toLowerCase()} is not carried on, and nothing takes its place.`
              : `${here.name}: the ${roleWords[role]} changes from ${layerName} to ${inSentence(name)}, and the two are not joined.`,
          remedy: bridge
            ? "Insulation outside the sheathing covers the framing; without it the framing share counts in U."
            : remedyFor(role, path, layerName),
        });
      }
    }
  }
  for (const { role, layer, because } of paths.find((one) => one.path === field.id)!.roles)
    if (layer === null && role !== "vapour")
      breaks.push({
        path: field.id,
        role,
        kind: "break",
        neighbour: field.id,
        statement: `${nameOfPath(field)}: no layer is the ${roleWords[role]}; ${because}.`,
        remedy: "Add the layer, or set the role on the layer that plays it.",
      });
  const unbroken = Object.fromEntries(
    (["water", "air", "vapour", "thermal"] as const).map((role) => [
      role,
      !breaks.some((one) => one.role === role && one.kind === "break"),
    ]),
  ) as Record<ControlRole, boolean>;
  return { paths, tieIns, breaks, unbroken };
}
