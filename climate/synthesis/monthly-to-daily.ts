import { daysInMonth, firstDayOfMonth, monthOfDay } from "../calendar.ts";

/** Weights of the twelve mid-month nodes in the value at each day's noon, straight lines between nodes. */
const dayWeights: readonly { readonly a: number; readonly b: number; readonly share: number }[] = Array.from(
  { length: 365 },
  (_, day) => {
    const noon = day + 0.5;
    const month = monthOfDay(day);
    const middle = firstDayOfMonth[month]! + daysInMonth[month]! / 2;
    const other = noon >= middle ? (month + 1) % 12 : (month + 11) % 12;
    return { a: month, b: other, share: Math.abs(noon - middle) / ((daysInMonth[month]! + daysInMonth[other]!) / 2) };
  },
);

/** 12 x 12: mean over month k of the interpolant, by node. */
function meanMatrix(): number[][] {
  const matrix = Array.from({ length: 12 }, () => new Array<number>(12).fill(0));
  dayWeights.forEach(({ a, b, share }, day) => {
    const row = matrix[monthOfDay(day)]!;
    const weight = 1 / daysInMonth[monthOfDay(day)]!;
    row[a] = row[a]! + (1 - share) * weight;
    row[b] = row[b]! + share * weight;
  });
  return matrix;
}

/** Gauss elimination with row exchange on a small dense system. */
function solve(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const n = right.length;
  const m = matrix.map((row, k) => [...row, right[k]!]);
  for (let c = 0; c < n; c++) {
    let best = c;
    for (let r = c + 1; r < n; r++) if (Math.abs(m[r]![c]!) > Math.abs(m[best]![c]!)) best = r;
    [m[c], m[best]] = [m[best]!, m[c]!];
    for (let r = c + 1; r < n; r++) {
      const factor = m[r]![c]! / m[c]![c]!;
      for (let j = c; j <= n; j++) m[r]![j] = m[r]![j]! - factor * m[c]![j]!;
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let r = n - 1; r >= 0; r--) {
    let sum = m[r]![n]!;
    for (let j = r + 1; j < n; j++) sum -= m[r]![j]! * x[j]!;
    x[r] = sum / m[r]![r]!;
  }
  return x;
}

/** Daily values (at noon) on straight lines between mid-months whose mean over every month is the given one. */
export function dailyFromMonthly(means: readonly number[]): Float64Array {
  const nodes = solve(meanMatrix(), means);
  return Float64Array.from(dayWeights, ({ a, b, share }) => nodes[a]! * (1 - share) + nodes[b]! * share);
}

/** Hourly values on straight lines between the noons of the days; the year repeats. `k` is the hour whose *end* is dated. */
export function hourlyFromNoons(daily: Float64Array): Float64Array {
  const n = daily.length;
  return Float64Array.from({ length: n * 24 }, (_, k) => {
    const position = (k + 1 - 12) / 24;
    const before = Math.floor(position);
    const share = position - before;
    return daily[(before + n) % n]! * (1 - share) + daily[(before + 1 + n) % n]! * share;
  });
}
