import type { Case } from "../model/index.ts";
import type { Done, Member } from "./study.ts";
import { holdsAll } from "./summary.ts";
import { shareOf, valueAt, type Unknown, type UnknownOfCase } from "./unknowns.ts";

/** An input that turns the answer over within its range. */
export interface Flip {
  readonly unknown: Unknown;
  /** Value at which the answer turns, the middle of `between`; the far end for inputs with two states. */
  readonly value: number;
  /** Last value that keeps the answer of the wall as drawn, first that does not. */
  readonly between: readonly [number, number];
  /** Share of the range between what is drawn and the turn, 0..1: the nearer, the sooner it matters. */
  readonly distance: number;
}

/** Search stops at this share of the range. */
const tolerance = 1 / 16;

const keyOf = (unknown: Unknown, share: number): string => `${unknown.id}@${share.toFixed(4)}`;

interface Bracket {
  /** Shares of the range. */
  readonly keeps: number;
  readonly turns: number;
  readonly from: number;
}

/** Runs that halve the brackets of inputs which may be the first to flip the answer. */
export function flipMembers(base: Case, tried: readonly UnknownOfCase[], done: Done): readonly Member[] {
  const open = tried.flatMap((unknown) => bracketsOf(unknown, done).map((bracket) => ({ unknown, bracket })));
  const nearest = Math.min(...open.map(({ bracket }) => Math.abs(bracket.turns - bracket.from)));
  const members = open
    .filter(
      ({ unknown, bracket }) =>
        unknown.scale !== "ends" &&
        Math.abs(bracket.turns - bracket.keeps) > tolerance &&
        Math.abs(bracket.keeps - bracket.from) < nearest,
    )
    .map(({ unknown, bracket }): Member => {
      const share = (bracket.keeps + bracket.turns) / 2;
      return {
        key: keyOf(unknown, share),
        label: `${unknown.label}, where it turns`,
        case: unknown.apply(base, valueAt(unknown, share)),
      };
    });
  return members.filter(({ key }) => !done.has(key));
}

/** Where an input turns the answer over, the nearer side if both do; null when it does not, or is not known yet. */
export function flipOf(unknown: UnknownOfCase, done: Done): Flip | null {
  const flips = bracketsOf(unknown, done).map(({ keeps, turns, from }): Flip => {
    const { now, apply, ...plain } = unknown;
    void now;
    void apply;
    const share = unknown.scale === "ends" ? turns : (keeps + turns) / 2;
    return {
      unknown: plain,
      value: valueAt(unknown, share),
      between: [valueAt(unknown, keeps), valueAt(unknown, turns)],
      distance: Math.abs(share - from),
    };
  });
  return flips.reduce<Flip | null>(
    (nearest, flip) => (nearest === null || flip.distance < nearest.distance ? flip : nearest),
    null,
  );
}

function bracketsOf(unknown: UnknownOfCase, done: Done): Bracket[] {
  const base = done.get("base");
  const verdict = base === undefined ? null : holdsAll(base);
  if (verdict === null) return [];
  const tried = triedShares(unknown, done);
  const from =
    unknown.now === null ? (tried.find((each) => each.holds === verdict)?.share ?? 0) : shareOf(unknown, unknown.now);
  const brackets: Bracket[] = [];
  for (const side of [-1, 1]) {
    const along = tried.filter((each) => (each.share - from) * side > 1e-9).sort((a, b) => (a.share - b.share) * side);
    let keeps = from;
    for (const each of along) {
      if (each.holds !== verdict) {
        brackets.push({ keeps, turns: each.share, from });
        break;
      }
      keeps = each.share;
    }
  }
  return brackets;
}

function triedShares(unknown: UnknownOfCase, done: Done): { readonly share: number; readonly holds: boolean }[] {
  const prefix = `${unknown.id}@`;
  return [...done].flatMap(([key, summary]) => {
    const holds = holdsAll(summary);
    if (holds === null) return [];
    if (key === `${unknown.id}:low`) return [{ share: 0, holds }];
    if (key === `${unknown.id}:high`) return [{ share: 1, holds }];
    return key.startsWith(prefix) ? [{ share: Number(key.slice(prefix.length)), holds }] : [];
  });
}
