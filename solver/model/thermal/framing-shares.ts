import type { Option, PathKind } from "../project.ts";

/** Framing share of the opaque wall by stud spacing [-]. US tables 25 % and 22 %; Canadian practice 23 % and 20 % (MEMORY, agrees with one published worked wall). */
export const framingShares = [
  { id: "us16", words: "16 in. on centre, US tables", share: 0.25 },
  { id: "us24", words: "24 in. on centre, US tables", share: 0.22 },
  { id: "canada16", words: "406 mm on centre, Canadian practice", share: 0.23 },
  { id: "canada24", words: "610 mm on centre or advanced framing, Canadian practice", share: 0.2 },
] as const;
export type FramingShareId = (typeof framingShares)[number]["id"];

/** Of the framing, the part in headers [-]: 4 of 25 points at 16 in. on centre (MEMORY). */
const headerPart = 4 / 25;
const framingKinds: ReadonlySet<PathKind> = new Set(["stud", "plate", "header"]);

export interface PathShare {
  readonly path: string;
  readonly share: number;
  /** False: the user gave none and this is a default. */
  readonly given: boolean;
}

/**
 * Area share of each path, adding up to 1. Given shares stand; the rest is split by the framing default: headers, then studs and
 * plates, then what is left among the other paths alike.
 */
export function areaShares(option: Pick<Option, "paths">, framing: FramingShareId = "us16"): readonly PathShare[] {
  const given = option.paths.reduce((sum, path) => sum + (path.areaShare ?? 0), 0);
  const missing = option.paths.filter((path) => path.areaShare === undefined);
  const rest = Math.max(0, 1 - given);
  const share = framingShares.find((entry) => entry.id === framing)!.share;
  const wood = missing.filter((path) => framingKinds.has(path.kind));
  const other = missing.filter((path) => !framingKinds.has(path.kind));
  const woodRest = other.length === 0 ? rest : wood.length === 0 ? 0 : Math.min(rest, share);
  const headers = wood.filter((path) => path.kind === "header").length;
  const plain = wood.length - headers;
  const headerShare = headers === 0 ? 0 : plain === 0 ? woodRest : woodRest * headerPart;
  return option.paths.map((path) => {
    if (path.areaShare !== undefined) return { path: path.id, share: path.areaShare, given: true };
    if (!framingKinds.has(path.kind)) return { path: path.id, share: (rest - woodRest) / other.length, given: false };
    return {
      path: path.id,
      share: path.kind === "header" ? headerShare / headers : (woodRest - headerShare) / plain,
      given: false,
    };
  });
}
