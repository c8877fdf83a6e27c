import {
  broken,
  unknownsOf,
  withThickness,
  type Case,
  type Done,
  type Member,
  type MemberSummary,
  type Study,
  type UnknownOfCase,
} from "../../../solver/index.ts";

/** One thing that may be otherwise than asked. */
export interface Variant {
  readonly id: string;
  readonly unknown: UnknownOfCase;
  readonly value: number;
}

/** The answer under one variant: the first stock board that keeps what is asked. */
export interface Mover {
  readonly variant: Variant;
  /** Index into the boards; the count of boards where none keeps it; null: not known yet. */
  readonly first: number | null;
  /** What was run, by rising thickness. */
  readonly points: readonly { readonly thickness_m: number; readonly summary: MemberSummary }[];
}

/** The room is tried this much drier and damper than asked. */
const humidityStep = 0.05;
const dampest = 0.7;

/** What is tried: the room drier and damper, more leaking air, a cold year, another paint, the other side of the house. */
export function variantsOf(aCase: Case): readonly Variant[] {
  const ends: readonly (readonly [string, "low" | "high"])[] = [
    ["airLeak", "high"],
    ["weatherYear", "high"],
    ["finishPermeance", "low"],
    ["finishPermeance", "high"],
    ["orientation", "high"],
  ];
  return unknownsOf(aCase).flatMap((unknown): Variant[] => {
    if (unknown.id === "winterHumidity")
      return unknown.now === null
        ? []
        : [unknown.now + humidityStep, unknown.now - humidityStep]
            .filter((value) => value > 0.1 && value <= dampest)
            .map((value) => ({ id: `${unknown.id}:${value.toFixed(2)}`, unknown, value }));
    return ends
      .filter(([id, end]) => id === unknown.id && unknown.now !== unknown[end])
      .map(([, end]) => ({ id: `${unknown.id}:${end}`, unknown, value: unknown[end] }));
  });
}

/**
 * The first board that keeps what is asked lies in (broken, kept]; halved until one is left. -1 and the count of boards stand
 * for ends that were not run.
 *
 * @param kept   what is known of each board that was run, by index
 * @param start  board that is run first
 */
export function halving(
  kept: ReadonlyMap<number, boolean>,
  boards: number,
  start: number,
): { readonly next: number } | { readonly first: number } {
  let low = -1;
  let high = boards;
  for (const [index, holds] of kept) {
    if (holds) high = Math.min(high, index);
    else low = Math.max(low, index);
  }
  // A thicker board that breaks what a thinner one keeps: the answer is read from the thick end.
  if (high <= low) high = boards;
  if (high - low <= 1) return { first: high };
  if (kept.size === 0) return { next: Math.min(boards - 1, Math.max(0, start)) };
  for (const next of [Math.floor((low + high) / 2), low + 1, high - 1])
    if (!kept.has(next) && next > low && next < high) return { next };
  return { first: high };
}

/**
 * Which board would be the answer if one thing were otherwise?
 *
 * @param boards_m  stock boards, rising, no board at all first
 * @param start     index of the board of the answer as asked
 * @param hold      kinds of finding that must hold
 */
export function moversStudy(
  aCase: Case,
  layer: string,
  boards_m: readonly number[],
  start: number,
  hold: readonly string[],
): Study<readonly Mover[]> {
  const variants = variantsOf(aCase);
  const key = (variant: Variant, index: number): string => `${variant.id}@${index}`;
  const cases = new Map<string, Case>();
  const member = (variant: Variant, index: number): Member => {
    const name = key(variant, index);
    const made = cases.get(name) ?? withThickness(variant.unknown.apply(aCase, variant.value), layer, boards_m[index]!);
    cases.set(name, made);
    return { key: name, label: variant.unknown.label, case: made };
  };
  const runsOf = (variant: Variant, done: Done): readonly (readonly [number, MemberSummary])[] =>
    boards_m.flatMap((_, index) => {
      const summary = done.get(key(variant, index));
      return summary?.status === "finished" ? [[index, summary] as const] : [];
    });
  const step = (variant: Variant, done: Done): ReturnType<typeof halving> =>
    halving(
      new Map(runsOf(variant, done).map(([index, summary]) => [index, broken(summary, hold).length === 0])),
      boards_m.length,
      start,
    );
  return {
    id: `movers:${aCase.option}/${aCase.path}/${layer}:${hold.join()}`,
    members: variants.map((variant) => member(variant, Math.min(boards_m.length - 1, Math.max(0, start)))),
    next: (done) =>
      variants.flatMap((variant) => {
        const found = step(variant, done);
        return "next" in found && !done.has(key(variant, found.next)) ? [member(variant, found.next)] : [];
      }),
    reduce: (done) =>
      variants.map((variant): Mover => {
        const found = step(variant, done);
        return {
          variant,
          first: "first" in found ? found.first : null,
          points: runsOf(variant, done).map(([index, summary]) => ({ thickness_m: boards_m[index]!, summary })),
        };
      }),
  };
}
