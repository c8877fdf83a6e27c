import type { Case } from "../model/index.ts";
import { layerOf, withThickness } from "./change-case.ts";
import { besideTheRun, type Beside, type CodeRow, type Winter } from "./how-thick-beside.ts";
import { phrase, amount, type Phrase } from "./phrase.ts";
import { stockThicknesses_m } from "./stock.ts";
import { together, type Done, type Member, type Study } from "./study.ts";
import { decidingFindings, findingKinds, limited, type MemberSummary } from "./summary.ts";
import {
  needOf,
  nextThickness_m,
  thicknessThatHolds,
  type ThicknessHeld,
  type ThicknessNeed,
  type ThicknessPoint,
} from "./thickness-root.ts";

export interface HowThickQuestion {
  readonly case: Case;
  /** The insulation layer whose thickness is asked for. */
  readonly layer: string;
  /** Boards on the market [m]; by default those of the trade for this kind of insulation. */
  readonly stock_m?: readonly number[];
  readonly max_m?: number;
  /** Ids of the findings that must hold; by default those that decide a wall. */
  readonly hold?: readonly string[];
  /** The row of the code table that applies, and the winter of the place, to stand beside the answer. */
  readonly codeRow?: CodeRow | null;
  readonly winter?: Winter | null;
}

/** Boards that do worse than no board at all by one measure. */
export interface WorseThanNone {
  /** Wettest hour of the wood [% by mass], or the mould index. */
  readonly measure: "peakMoisture" | "mouldIndex";
  readonly from_m: number;
  readonly to_m: number;
  readonly worst_m: number;
  readonly without: number;
  readonly worst: number;
}

export interface HowThickAnswer {
  readonly option: string;
  readonly path: string;
  readonly layer: string;
  readonly layerName: string;
  /** Rising thickness. */
  readonly points: readonly ThicknessPoint[];
  readonly needs: readonly ThicknessNeed[];
  /** Thickness from which every finding that is asked to hold does [m]; null: not within the range, or not known yet. */
  readonly needed_m: number | null;
  readonly governing: string | null;
  /** Findings asked to hold that no thickness looked at can hold. */
  readonly outOfReach: readonly string[];
  /** Smallest stock board that was run and holds every finding [m]. */
  readonly board_m: number | null;
  /** What the board leaves in hand [m]. */
  readonly margin_m: number | null;
  /** The same for every finding with a limit, those that only ask for a look included. */
  readonly everyFinding: ThicknessHeld;
  readonly worseThanNone: WorseThanNone | null;
  readonly beside: Beside;
  readonly lead: Phrase;
  /** Members that were asked for and did not finish. */
  readonly missing: number;
}

const mostRefinements = 5;
/** Peaks closer than half a point of moisture content, or a fifth of a point of mould index, are the same. */
const measures = [
  { measure: "peakMoisture", same: 0.5, of: (summary: MemberSummary) => summary.peakMoisture_percent },
  { measure: "mouldIndex", same: 0.2, of: (summary: MemberSummary) => summary.mouldIndex },
] as const;

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
  const asked = (sorted: readonly ThicknessPoint[]): readonly string[] =>
    findingKinds(sorted.map((point) => point.summary)).filter((kind) =>
      (question.hold ?? decidingFindings).includes(kind),
    );
  return {
    id: `how-thick:${base.option}/${base.path}/${layerId}`,
    members: first.map(member),
    next: (done) => {
      const sorted = points(done);
      if (done.size >= first.length + mostRefinements) return [];
      const guess =
        nextThickness_m(sorted, asked(sorted)) ??
        nextThickness_m(sorted, findingKinds(sorted.map((point) => point.summary)));
      return guess === null ? [] : [member(Number(guess.toFixed(5)))].filter(({ key }) => !done.has(key));
    },
    reduce: (done) => {
      const sorted = points(done);
      const kinds = findingKinds(sorted.map((point) => point.summary));
      const finished = first.filter((thickness_m) => done.get(keyOf(thickness_m))?.status === "finished").length;
      const held = thicknessThatHolds(sorted, asked(sorted));
      const answer = {
        option: base.option,
        path: base.path,
        layer: layerId,
        layerName: layer.name,
        points: sorted,
        needs: kinds.map((finding) => needOf(sorted, finding)),
        ...held,
        margin_m: held.board_m === null || held.needed_m === null ? null : held.board_m - held.needed_m,
        everyFinding: thicknessThatHolds(sorted, kinds),
        worseThanNone: worseThanNone(sorted),
        missing: first.length - finished,
      };
      return {
        ...answer,
        beside: besideTheRun(base, layer, answer.needed_m, question.codeRow ?? null, question.winter ?? null),
        lead: lead(answer, max_m, finished === first.length),
      };
    },
  };
}

/** The same question for several walls at once, as a set of zones asks it: small multiples of one answer each. */
export const howThickInEach = (questions: readonly HowThickQuestion[]): Study<readonly HowThickAnswer[]> =>
  together(
    "how-thick-in-each",
    questions.map((question) => howThick(question)),
  );

/** Ends and middle first, so that the first answers span the range. */
function spread(sorted: readonly number[]): readonly number[] {
  const order = [0, sorted.length - 1, Math.floor(sorted.length / 2)];
  return [...new Set([...order, ...sorted.keys()])].map((index) => sorted[index]!);
}

/**
 * Thicknesses at which a thin board does worse than none: it closes the way out more than it warms. By the wood's peak first, then by
 * the mould index, which counts the warm wet weeks that a closed-in wall adds; null where neither is worse.
 */
export function worseThanNone(sorted: readonly ThicknessPoint[]): WorseThanNone | null {
  const bare = sorted[0];
  if (bare === undefined || bare.thickness_m > 0) return null;
  for (const { measure, same, of } of measures) {
    const without = of(bare.summary);
    if (without === null) continue;
    const worse = sorted.flatMap((point) => {
      const value = of(point.summary);
      return value !== null && value > without + same ? [{ thickness_m: point.thickness_m, value }] : [];
    });
    const first = worse[0];
    if (first === undefined) continue;
    const worst = worse.reduce((most, each) => (each.value > most.value ? each : most));
    return {
      measure,
      from_m: first.thickness_m,
      to_m: worse[worse.length - 1]!.thickness_m,
      worst_m: worst.thickness_m,
      without,
      worst: worst.value,
    };
  }
  return null;
}

function lead(
  answer: Pick<HowThickAnswer, "needed_m" | "board_m" | "margin_m" | "outOfReach" | "points" | "everyFinding">,
  max_m: number,
  complete: boolean,
): Phrase {
  if (answer.points.length < 2) return phrase`Not known yet: fewer than two thicknesses have been run.`;
  const { everyFinding } = answer;
  const { board_m, needed_m } = everyFinding;
  if (everyFinding.outOfReach.length === 0 && board_m !== null && needed_m !== null && needed_m > 0)
    return [
      ...phrase`${amount("board", board_m)} keeps every finding. ${amount("thickness", needed_m)} would do; the board leaves ${amount("thickness", board_m - needed_m)} in hand.`,
      ...decidingSentence(answer),
    ];
  const look = everySentence(answer);
  if (answer.outOfReach.length > 0)
    return phrase`Nothing up to ${amount("board", max_m)} holds every finding that decides${complete ? "" : " so far"}. What stays broken needs another cure than thickness.`;
  if (answer.needed_m === 0) return [...phrase`None is needed: every finding that decides holds without it.`, ...look];
  const need = phrase`${amount("thickness", answer.needed_m!)} would do`;
  if (answer.board_m === null) return [...need, "; no stock board of that thickness has been run."];
  return [
    ...phrase`${amount("board", answer.board_m)}. `,
    ...need,
    ...phrase`; the board leaves ${amount("thickness", answer.margin_m!)} in hand.`,
    ...look,
  ];
}

/** Beside the thickness that keeps every finding, what those that decide the wall ask for. */
function decidingSentence({ needed_m, everyFinding }: Pick<HowThickAnswer, "everyFinding" | "needed_m">): Phrase {
  if (needed_m === null || everyFinding.needed_m === null || needed_m >= everyFinding.needed_m - 1e-6) return [];
  if (needed_m === 0) return [" Those that decide the wall hold without it; the others ask for a look."];
  return phrase` Those that decide the wall ask for ${amount("thickness", needed_m)}.`;
}

/** What it takes to hold those findings too that only ask for a look. */
function everySentence({ everyFinding, needed_m }: Pick<HowThickAnswer, "everyFinding" | "needed_m">): Phrase {
  if (everyFinding.outOfReach.length > 0)
    return [" Some findings that ask for a look stay open at any thickness tried."];
  if (everyFinding.needed_m === null || everyFinding.needed_m <= (needed_m ?? 0)) return [];
  return phrase` To close those that ask for a look as well it takes ${amount("thickness", everyFinding.needed_m)}.`;
}

/** Findings at one thickness that are broken, for the words beside a board. */
export const brokenAt = (point: ThicknessPoint): readonly string[] =>
  limited(point.summary)
    .filter((finding) => finding.holds === false)
    .map((finding) => finding.id);
