import type { Case } from "../model/index.ts";
import { layerOf, withThickness } from "./change-case.ts";
import { besideTheRun, type Beside, type CodeRow, type Winter } from "./how-thick-beside.ts";
import { phrase, amount, type Phrase } from "./phrase.ts";
import { stockThicknesses_m } from "./stock.ts";
import type { Done, Member, Study } from "./study.ts";
import { findingKinds, limited, worstMargin, type MemberSummary } from "./summary.ts";

export interface HowThickQuestion {
  readonly case: Case;
  /** The insulation layer whose thickness is asked for. */
  readonly layer: string;
  /** Boards on the market [m]; by default those of the trade for this kind of insulation. */
  readonly stock_m?: readonly number[];
  readonly max_m?: number;
  /** Ids of the findings that must hold; by default all that carry a limit. */
  readonly hold?: readonly string[];
  /** The row of the code table that applies, and the winter of the place, to stand beside the answer. */
  readonly codeRow?: CodeRow | null;
  readonly winter?: Winter | null;
}

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

export interface WorseThanNone {
  readonly from_m: number;
  readonly to_m: number;
  readonly worst_m: number;
  readonly without_percent: number;
  readonly worst_percent: number;
}

export interface HowThickAnswer {
  readonly option: string;
  readonly path: string;
  readonly layer: string;
  readonly layerName: string;
  /** Rising thickness. */
  readonly points: readonly ThicknessPoint[];
  readonly needs: readonly ThicknessNeed[];
  /** Thickness from which every finding holds [m]; null: not within the range, or not known yet. */
  readonly needed_m: number | null;
  readonly governing: string | null;
  /** Findings that no thickness looked at can hold. */
  readonly outOfReach: readonly string[];
  /** Smallest stock board that was run and holds every finding [m]. */
  readonly board_m: number | null;
  /** What the board leaves in hand [m]. */
  readonly margin_m: number | null;
  readonly worseThanNone: WorseThanNone | null;
  readonly beside: Beside;
  readonly lead: Phrase;
  /** Members that were asked for and did not finish. */
  readonly missing: number;
}

/** Root search ends at a bracket this narrow [m], a sixteenth of an inch. */
const tolerance_m = 0.0254 / 16;
const mostRefinements = 6;
/** Two peaks closer than this are the same [points of moisture content]. */
const samePeak_percent = 0.5;

const keyOf = (thickness_m: number): string => `t:${thickness_m.toFixed(5)}`;

/** How thick must this layer be for every finding to hold? Runs the stock boards first, then searches between two of them. */
export function howThick(question: HowThickQuestion): Study<HowThickAnswer> {
  const { case: base, layer: layerId } = question;
  const layer = layerOf(base, layerId);
  const max_m = question.max_m ?? 0.1524;
  const stock_m = (question.stock_m ?? stockThicknesses_m(layer.material)).filter(
    (board) => board > 0 && board <= max_m + 1e-9,
  );
  const member = (thickness_m: number): Member => ({
    key: keyOf(thickness_m),
    label: `${layer.name}, ${Math.round(thickness_m * 1000)} mm`,
    case: withThickness(base, layerId, thickness_m),
  });
  const first = spread(
    [
      ...new Set(
        [0, ...stock_m, ...(layer.thickness_m <= max_m ? [layer.thickness_m] : [])].map((value) =>
          Number(value.toFixed(5)),
        ),
      ),
    ].sort((a, b) => a - b),
  );
  const points = (done: Done): ThicknessPoint[] =>
    [...done]
      .filter(([, summary]) => summary.status === "finished")
      .map(([key, summary]) => ({
        thickness_m: Number(key.slice(2)),
        stock: stock_m.some((board) => Math.abs(board - Number(key.slice(2))) < 1e-5),
        summary,
      }))
      .sort((a, b) => a.thickness_m - b.thickness_m);
  const needsOf = (sorted: readonly ThicknessPoint[]): ThicknessNeed[] =>
    (question.hold ?? findingKinds(sorted.map((point) => point.summary))).map((finding) => needOf(sorted, finding));
  return {
    id: `how-thick:${base.option}/${base.path}/${layerId}`,
    members: first.map(member),
    next: (done) => {
      const sorted = points(done);
      if (done.size >= first.length + mostRefinements) return [];
      const open = governingNeed(needsOf(sorted));
      if (open?.between_m == null || open.between_m[1] - open.between_m[0] <= tolerance_m) return [];
      const [low, high] = open.between_m;
      const third = 0.12 * (high - low);
      const guess = Math.min(high - third, Math.max(low + third, open.needed_m ?? (low + high) / 2));
      return [member(Number(guess.toFixed(5)))].filter(({ key }) => !done.has(key));
    },
    reduce: (done) => {
      const sorted = points(done);
      const needs = needsOf(sorted);
      const governing = governingNeed(needs);
      const outOfReach = needs.filter((need) => need.needed_m === null).map((need) => need.finding);
      const complete = first.every((thickness_m) => done.get(keyOf(thickness_m))?.status === "finished");
      const needed_m = sorted.length < 2 || outOfReach.length > 0 ? null : (governing?.needed_m ?? 0);
      const kept = (point: ThicknessPoint): boolean =>
        needs.every((need) => (worstMargin(point.summary, need.finding) ?? 0) >= 0);
      const board =
        needed_m === null
          ? undefined
          : sorted.find((point) => point.stock && kept(point) && point.thickness_m >= needed_m - 1e-9);
      const board_m = needed_m === 0 ? 0 : (board?.thickness_m ?? null);
      const answer = {
        option: base.option,
        path: base.path,
        layer: layerId,
        layerName: layer.name,
        points: sorted,
        needs,
        needed_m,
        governing: needed_m === null || needed_m === 0 ? null : (governing?.finding ?? null),
        outOfReach,
        board_m,
        margin_m: board_m === null || needed_m === null ? null : board_m - needed_m,
        worseThanNone: worseThanNone(sorted),
        missing:
          first.length - first.filter((thickness_m) => done.get(keyOf(thickness_m))?.status === "finished").length,
      };
      return {
        ...answer,
        beside: besideTheRun(base, layer, needed_m, question.codeRow ?? null, question.winter ?? null),
        lead: lead(answer, max_m, complete),
      };
    },
  };
}

/** Ends and middle first, so that the first answers span the range. */
function spread(sorted: readonly number[]): readonly number[] {
  const order = [0, sorted.length - 1, Math.floor(sorted.length / 2)];
  return [...new Set([...order, ...sorted.keys()])].map((index) => sorted[index]!);
}

/** Where the margin of a kind of finding turns, read from the thick end: the least thickness above which it holds throughout. */
function needOf(sorted: readonly ThicknessPoint[], finding: string): ThicknessNeed {
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

/** Boards that leave the wood wetter than no board at all: they close the way out more than they warm. */
export function worseThanNone(sorted: readonly ThicknessPoint[]): WorseThanNone | null {
  const bare = sorted[0];
  if (bare === undefined || bare.thickness_m > 0 || bare.summary.peakMoisture_percent === null) return null;
  const without_percent = bare.summary.peakMoisture_percent;
  const worse = sorted.filter((point) => point.summary.peakMoisture_percent! > without_percent + samePeak_percent);
  if (worse.length === 0) return null;
  const worst = worse.reduce((most, point) =>
    point.summary.peakMoisture_percent! > most.summary.peakMoisture_percent! ? point : most,
  );
  return {
    from_m: worse[0]!.thickness_m,
    to_m: worse[worse.length - 1]!.thickness_m,
    worst_m: worst.thickness_m,
    without_percent,
    worst_percent: worst.summary.peakMoisture_percent!,
  };
}

function lead(
  answer: Pick<HowThickAnswer, "needed_m" | "board_m" | "margin_m" | "outOfReach" | "points">,
  max_m: number,
  complete: boolean,
): Phrase {
  if (answer.points.length < 2) return phrase`Not known yet: fewer than two thicknesses have been run.`;
  if (answer.outOfReach.length > 0)
    return phrase`Nothing up to ${amount("board", max_m)} holds every finding${complete ? "" : " so far"}. What stays broken needs another cure than thickness.`;
  if (answer.needed_m === 0) return phrase`None is needed: every finding holds without it.`;
  const need = phrase`${amount("thickness", answer.needed_m!)} would do`;
  if (answer.board_m === null) return [...need, "; no stock board of that thickness has been run."];
  return [
    ...phrase`${amount("board", answer.board_m)}. `,
    ...need,
    ...phrase`; the board leaves ${amount("thickness", answer.margin_m!)} in hand.`,
  ];
}

/** Findings at one thickness that are broken, for the words beside a board. */
export const brokenAt = (point: ThicknessPoint): readonly string[] =>
  limited(point.summary)
    .filter((finding) => finding.holds === false)
    .map((finding) => finding.id);
