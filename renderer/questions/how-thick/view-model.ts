import {
  amount,
  findingKinds,
  limited,
  phrase,
  say,
  stockThicknesses_m,
  type CaseLayer,
  type HowThickAnswer,
  type Phrase,
  type ThicknessPoint,
  type UnitSystem,
} from "../../../solver/index.ts";
import { kindText, kindWords, worstOf } from "../parts/finding-words.ts";
import type { Criterion } from "../asking/question-inputs.ts";
import type { Units } from "../../state/index.ts";

/** Thickest board that is looked at [m]. */
export const thickest_m = 0.1524;

export const unitSystem = (units: Units): UnitSystem => (units === "si" ? "si" : "ip");

/** What is drawn where nothing decides: damp that lasts says most of a wall that keeps its limits. */
const usualKinds = ["thirtyDayHumidity", "woodMoistureInnerFace", "woodMoisture"];

/** The kind of finding whose curve is drawn first: the one that decides, else the usual ones. */
export function firstKind(answer: HowThickAnswer): string {
  const { governing, outOfReach, everyFinding } = answer;
  const known = answer.needs.map(({ finding }) => finding);
  const usual = usualKinds.find((kind) => known.includes(kind));
  return governing ?? outOfReach[0] ?? usual ?? everyFinding.governing ?? known[0] ?? "woodMoisture";
}

/** Kinds of finding that have a curve. */
export const curveKinds = (points: readonly ThicknessPoint[]): readonly string[] =>
  findingKinds(points.map(({ summary }) => summary));

export interface CurvePoint {
  readonly thickness_m: number;
  readonly measured: number;
  readonly holds: boolean;
}

/** The worst of one kind of finding at each thickness that was run. */
export const curveOf = (points: readonly ThicknessPoint[], kind: string): readonly CurvePoint[] =>
  measuredAt(points, kind);

/** The same of points that are no boards of the answer. */
export const measuredAt = (
  points: readonly Pick<ThicknessPoint, "thickness_m" | "summary">[],
  kind: string,
): readonly CurvePoint[] =>
  points.flatMap(({ thickness_m, summary }) => {
    const worst = worstOf(summary, kind);
    return worst === null ? [] : [{ thickness_m, measured: worst.measured, holds: worst.holds }];
  });

/** The limit of a kind of finding; limits that differ from place to place give the one at the thinnest board. */
export const limitOf = (points: readonly ThicknessPoint[], kind: string): number | null =>
  points.map(({ summary }) => worstOf(summary, kind)?.limit).find((limit) => limit !== undefined) ?? null;

/** Stock boards of the asked layer that are looked at [m], and the drawn thickness if it is none of them. */
export function boardsOf(layer: CaseLayer): readonly number[] {
  const stock = stockThicknesses_m(layer.material).filter((board) => board <= thickest_m + 1e-9);
  const drawn = layer.thickness_m;
  const isStock = stock.some((board) => Math.abs(board - drawn) < 1e-4);
  return isStock || drawn > thickest_m ? stock : [...stock, drawn].sort((a, b) => a - b);
}

export const pointAt = (points: readonly ThicknessPoint[], thickness_m: number): ThicknessPoint | null =>
  points.find((point) => Math.abs(point.thickness_m - thickness_m) < 1e-4) ?? null;

/** What stands beside a board: its figure of the kind in view, and whether the limits that are asked for are kept. */
export function boardWords(point: ThicknessPoint | null, kind: string, asked: readonly string[], units: Units): string {
  if (point === null) return "not run yet";
  const worst = worstOf(point.summary, kind);
  const broken = new Set(
    limited(point.summary)
      .filter(({ id, holds }) => holds === false && asked.includes(id))
      .map(({ id }) => id),
  );
  const figure = worst === null ? "" : kindText(kind, worst.measured, units);
  if (broken.size === 0) return worst !== null && !worst.holds ? `${figure}, asks for a look` : figure;
  return broken.has(kind)
    ? `${figure}, over the limit`
    : `${figure}, ${broken.size === 1 ? "a limit is" : "limits are"} broken`;
}

/**
 * The board in view when nobody has chosen one: what the answer names first, else what the other measure asks for, else what is drawn.
 * The answer of a sound wall names the board that keeps every limit.
 */
export function firstBoard(
  answer: HowThickAnswer | null,
  criterion: Criterion,
  layer: CaseLayer,
  complete: boolean,
): number {
  if (!complete || answer === null) return layer.thickness_m;
  const boards = [answer.everyFinding.board_m, answer.board_m];
  const named = (criterion === "deciding" ? boards : boards.toReversed()).find((board) => (board ?? 0) > 0);
  return named ?? layer.thickness_m;
}

/** The answer in words. Other criteria than the deciding limits have words of their own. */
export function answerWords(answer: HowThickAnswer, criterion: Criterion, units: Units, complete: boolean): string {
  const system = unitSystem(units);
  if (criterion === "deciding") return say(answer.lead, system);
  return say(ownLead(answer, complete), system);
}

function ownLead(answer: HowThickAnswer, complete: boolean): Phrase {
  const { points, needed_m, board_m, margin_m, outOfReach } = answer;
  if (points.length < 2) return phrase`Not known yet: fewer than two thicknesses have been run.`;
  const soFar = complete ? "" : " so far";
  if (outOfReach.length > 0) {
    const broken = outOfReach.map((kind) => kindWords(kind).short.toLowerCase()).join(", ");
    return phrase`No board up to ${amount("board", thickest_m)} keeps that${soFar}: ${broken}. It needs another cure than thickness.`;
  }
  if (needed_m === null) return phrase`Not known yet.`;
  if (needed_m === 0) return phrase`None is needed for that: the limits are kept without it.`;
  if (board_m === null)
    return phrase`${amount("thickness", needed_m)} would do; no stock board of that thickness keeps it.`;
  return phrase`${amount("board", board_m)}. ${amount("thickness", needed_m)} would do; the board leaves ${amount("thickness", margin_m ?? 0)} in hand.`;
}
