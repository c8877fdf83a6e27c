import type { EvenField } from "./through-wall.ts";

/** A line of equal value: x in days (a column's middle is day + 0.5), y in rows from the outside, NaN-free. */
export interface Isoline {
  readonly x: number[];
  readonly y: number[];
  readonly closed: boolean;
}

const edgePairs: Record<number, readonly (readonly [number, number])[]> = {
  1: [[3, 2]],
  2: [[2, 1]],
  3: [[3, 1]],
  4: [[0, 1]],
  6: [[0, 2]],
  7: [[3, 0]],
  8: [[3, 0]],
  9: [[0, 2]],
  11: [[0, 1]],
  12: [[3, 1]],
  13: [[2, 1]],
  14: [[3, 2]],
};

/**
 * Lines along which a field equals `level`: marching squares with straight cuts, joined end to end.
 * A saddle is cut by the mean of its corners. `fromRow` leaves out the rows before it.
 */
export function isolines(field: EvenField, level: number, fromRow = 0): Isoline[] {
  const { rows, days, values } = field;
  const at = (row: number, day: number): number => values[row * days + day]!;
  const points = new Map<number, [number, number]>();
  const joins = new Map<number, number[]>();
  const join = (a: number, b: number): void => {
    joins.set(a, [...(joins.get(a) ?? []), b]);
    joins.set(b, [...(joins.get(b) ?? []), a]);
  };
  /** Edge 2i lies along the row from cell corner i to the next day, 2i + 1 down to the next row. */
  const cut = (row: number, day: number, edge: number): number => {
    const [r, d, down] =
      edge === 0 ? [row, day, 0] : edge === 1 ? [row, day + 1, 1] : edge === 2 ? [row + 1, day, 0] : [row, day, 1];
    const key = 2 * (r * days + d) + down;
    if (!points.has(key)) {
      const a = at(r, d);
      const b = down ? at(r + 1, d) : at(r, d + 1);
      const t = a === b ? 0.5 : (level - a) / (b - a);
      points.set(key, down ? [d + 0.5, r + 0.5 + t] : [d + 0.5 + t, r + 0.5]);
    }
    return key;
  };
  for (let row = fromRow; row < rows - 1; row++) {
    for (let day = 0; day < days - 1; day++) {
      const corners = [at(row, day), at(row, day + 1), at(row + 1, day + 1), at(row + 1, day)] as const;
      if (corners.some((value) => !Number.isFinite(value))) continue;
      const code =
        (corners[0] > level ? 8 : 0) +
        (corners[1] > level ? 4 : 0) +
        (corners[2] > level ? 2 : 0) +
        (corners[3] > level ? 1 : 0);
      if (code === 0 || code === 15) continue;
      const middleAbove = (corners[0] + corners[1] + corners[2] + corners[3]) / 4 > level;
      const pairs =
        code === 5
          ? middleAbove
            ? [
                [3, 0],
                [2, 1],
              ]
            : [
                [3, 2],
                [0, 1],
              ]
          : code === 10
            ? middleAbove
              ? [
                  [3, 2],
                  [0, 1],
                ]
              : [
                  [3, 0],
                  [2, 1],
                ]
            : edgePairs[code]!;
      for (const [a, b] of pairs) join(cut(row, day, a), cut(row, day, b));
    }
  }
  return chains(joins).map((keys) => ({
    x: keys.map((key) => points.get(key)![0]),
    y: keys.map((key) => points.get(key)![1]),
    closed: keys.length > 2 && keys[0] === keys.at(-1),
  }));
}

/** Walks a graph whose points have one or two neighbours: open lines from their ends first, then the rings. */
function chains(joins: Map<number, number[]>): number[][] {
  const left = new Map([...joins].map(([key, near]) => [key, new Set(near)] as const));
  const walk = (start: number): number[] => {
    const chain = [start];
    for (let here = start; ;) {
      const next = left.get(here)?.values().next().value;
      if (next === undefined) return chain;
      left.get(here)!.delete(next);
      left.get(next)?.delete(here);
      chain.push(next);
      here = next;
    }
  };
  const ends = [...joins].filter(([, near]) => near.length === 1).map(([key]) => key);
  const lines = ends.map((key) => (left.get(key)!.size > 0 ? walk(key) : []));
  const rings = [...joins.keys()].map((key) => (left.get(key)!.size > 0 ? walk(key) : []));
  return [...lines, ...rings].filter((chain) => chain.length > 1);
}

/** How far a line reaches along time [days]. */
export const reach_days = (line: Isoline): number => Math.max(...line.x) - Math.min(...line.x);

export interface LinePlace {
  readonly x: number;
  readonly y: number;
  /** Outermost and innermost row of the line over the words' width. */
  readonly low: number;
  readonly high: number;
}

/** Where a line's words sit: the flattest stretch of the line, away from the chart's ends; null for a line too short to carry them. */
export function labelPlace(
  line: Isoline,
  width: number,
  days: number,
  keepOff: readonly { x: number; y: number }[] = [],
  rowsApart = 12,
  foreign: readonly Isoline[] = [],
): LinePlace | null {
  if (reach_days(line) < width * 0.6) return null;
  let best: (LinePlace & { cost: number }) | null = null;
  for (let i = 0; i < line.x.length; i++) {
    const x = line.x[i]!;
    if (x < width || x > days - width) continue;
    let low = Infinity;
    let high = -Infinity;
    for (let j = i; j >= 0 && Math.abs(line.x[j]! - x) <= width / 2 && i - j < 200; j--) {
      low = Math.min(low, line.y[j]!);
      high = Math.max(high, line.y[j]!);
    }
    for (let j = i; j < line.x.length && Math.abs(line.x[j]! - x) <= width / 2 && j - i < 200; j++) {
      low = Math.min(low, line.y[j]!);
      high = Math.max(high, line.y[j]!);
    }
    const near = keepOff.some(
      (other) => Math.abs(other.x - x) < width * 1.4 && Math.abs(other.y - line.y[i]!) < rowsApart * 2,
    );
    // Words stand just inside of the line; another line through them costs more than an uneven stretch.
    const crossings = foreign.reduce(
      (count, other) =>
        count +
        other.x.filter(
          (at, k) => Math.abs(at - x) < width / 2 && other.y[k]! > high - 1 && other.y[k]! < high + rowsApart * 1.2,
        ).length,
      0,
    );
    const cost = high - low + Math.min(300, 6 * crossings) + (near ? 1000 : 0);
    if (!best || cost < best.cost) best = { x, y: line.y[i]!, low, high, cost };
  }
  return best && best.cost < 1000 ? best : null;
}
