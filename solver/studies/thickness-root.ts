import { worstMargin, type MemberSummary } from "./summary.ts";

export interface ThicknessPoint {
  readonly thickness_m: number;
  readonly stock: boolean;
  readonly summary: MemberSummary;
}

/** What one kind of finding asks for. */
export interface ThicknessNeed {
  readonly finding: string;
  /** Where its margin turns positive and stays so [m]; 0: holds bare; null: not within the range looked at. */
  readonly needed_m: number | null;
  /** The last thickness that breaks it and the first above which it holds; the truth lies between. */
  readonly between_m: readonly [number, number] | null;
}

/** What a set of findings asks for together. */
export interface ThicknessHeld {
  /** Thickness from which all of them hold [m]; null: not within the range, or fewer than two thicknesses known. */
  readonly needed_m: number | null;
  /** The finding that asks for most; null where none is needed or nothing will do. */
  readonly governing: string | null;
  /** Findings that no thickness looked at can hold. */
  readonly outOfReach: readonly string[];
  /** Smallest stock board that was run and holds all of them [m]. */
  readonly board_m: number | null;
}

/** Root search ends at a bracket this narrow [m], a sixteenth of an inch. */
const tolerance_m = 0.0254 / 16;
/** A guess stays this share of the bracket away from its ends. */
const leastStep = 0.12;

/** Thickness at which the finding that asks for most should be tried next; null when its root is known closely enough. */
export function nextThickness_m(sorted: readonly ThicknessPoint[], findings: readonly string[]): number | null {
  const open = governingNeed(findings.map((finding) => needOf(sorted, finding)));
  if (open?.between_m == null || open.between_m[1] - open.between_m[0] <= tolerance_m) return null;
  const [low, high] = open.between_m;
  const step = leastStep * (high - low);
  return Math.min(high - step, Math.max(low + step, open.needed_m!));
}

/** The least thickness that holds a set of findings, and the stock board for it. */
export function thicknessThatHolds(sorted: readonly ThicknessPoint[], findings: readonly string[]): ThicknessHeld {
  const needs = findings.map((finding) => needOf(sorted, finding));
  const outOfReach = needs.filter((need) => need.needed_m === null).map((need) => need.finding);
  if (sorted.length < 2 || outOfReach.length > 0) return { needed_m: null, governing: null, outOfReach, board_m: null };
  const governing = governingNeed(needs);
  if (governing === null) return { needed_m: 0, governing: null, outOfReach, board_m: 0 };
  const holds = (point: ThicknessPoint): boolean =>
    findings.every((finding) => (worstMargin(point.summary, finding) ?? 0) >= 0);
  const board = sorted.find((point) => point.stock && point.thickness_m >= governing.needed_m! - 1e-9 && holds(point));
  return {
    needed_m: governing.needed_m,
    governing: governing.finding,
    outOfReach,
    board_m: board?.thickness_m ?? null,
  };
}

/** Where the margin of a kind of finding turns, read from the thick end: the least thickness above which it holds throughout. */
export function needOf(sorted: readonly ThicknessPoint[], finding: string): ThicknessNeed {
  const margins = sorted.map((point) => worstMargin(point.summary, finding) ?? Infinity);
  let holds = sorted.length;
  while (holds > 0 && margins[holds - 1]! >= 0) holds -= 1;
  if (sorted.length === 0 || holds === sorted.length) return { finding, needed_m: null, between_m: null };
  if (holds === 0) return { finding, needed_m: 0, between_m: null };
  const low = sorted[holds - 1]!.thickness_m;
  const high = sorted[holds]!.thickness_m;
  const below = margins[holds - 1]!;
  const above = margins[holds]!;
  const share = Number.isFinite(above) ? -below / (above - below) : 1;
  return { finding, needed_m: low + (high - low) * share, between_m: [low, high] };
}

function governingNeed(needs: readonly ThicknessNeed[]): ThicknessNeed | null {
  return needs.reduce<ThicknessNeed | null>(
    (most, need) =>
      need.needed_m !== null && need.needed_m > 0 && (most === null || need.needed_m > most.needed_m!) ? need : most,
    null,
  );
}
