import { daysInMonth, firstDayOfMonth } from "../calendar.ts";
import type { WeatherColumn } from "../weather-year.ts";
import type { LoggerTable } from "./logger-table.ts";
import { dateOfDays } from "./logger-time.ts";

/** A log brought to hours of standard time; 29 February is left out. */
export interface LoggedHours {
  /** Hour of the year 0..8759 of each logged hour, in the order of the log. */
  readonly hourOfYear: Int32Array;
  readonly values: Readonly<Partial<Record<WeatherColumn, Float64Array>>>;
  /** Rows that fell into each hour; hours between the samples of a slow log count as present. */
  readonly rows: Uint16Array;
  readonly lines: Int32Array;
  readonly leapHours: number;
}

/** Columns that are amounts of the step, not states. */
const isAmount = (column: WeatherColumn): boolean => column === "rain_mm";
const isDirection = (column: WeatherColumn): boolean => column === "windDirection_deg";

/**
 * Rows to hours. A row belongs to the hour that its stamp ends: 13:01 to 14:00 make the hour that ends at 14:00. Steps under an hour are
 * averaged (rain added up, directions as unit vectors); longer steps are joined by straight lines, rain is spread evenly.
 */
export function hoursOfLog(table: LoggerTable): LoggedHours {
  const { minutes } = table;
  const hourAt = (k: number): number => Math.ceil(minutes[k]! / 60 - 1e-9) - 1;
  let first = Infinity;
  let last = -Infinity;
  for (let k = 0; k < minutes.length; k++) {
    first = Math.min(first, hourAt(k));
    last = Math.max(last, hourAt(k));
  }
  // A row of a far-off date must not make an array of centuries: what lies over twelve years after the first is cut off.
  const n = Math.min(last - first + 1, 12 * 8784);
  const rows = new Uint16Array(n);
  const lines = new Int32Array(n);
  const order = Array.from({ length: minutes.length }, (_, k) => k).filter((k) => hourAt(k) - first < n);
  order.sort((a, b) => minutes[a]! - minutes[b]!);
  for (const k of order) {
    rows[hourAt(k) - first]!++;
    lines[hourAt(k) - first] = table.lines[k]!;
  }
  const slow = table.step_min > 60.01;
  const values: Partial<Record<WeatherColumn, Float64Array>> = {};
  for (const column of table.columns) {
    const raw = table.values[column]!;
    values[column] = slow
      ? joinedSamples(raw, order, hourAt, first, n, table.step_min, isAmount(column))
      : averaged(raw, order, hourAt, first, n, column);
  }
  if (slow) markBetween(rows, lines, Math.ceil(table.step_min / 60));
  return withoutLeapDays(first, n, values, rows, lines);
}

function averaged(
  raw: Float64Array,
  order: readonly number[],
  hourAt: (k: number) => number,
  first: number,
  n: number,
  column: WeatherColumn,
): Float64Array {
  const sum = new Float64Array(n);
  const sumOther = new Float64Array(n);
  const count = new Float64Array(n);
  const radian = Math.PI / 180;
  for (const k of order) {
    const value = raw[k]!;
    if (Number.isNaN(value)) continue;
    const at = hourAt(k) - first;
    count[at]!++;
    sum[at]! += isDirection(column) ? Math.cos(value * radian) : value;
    if (isDirection(column)) sumOther[at]! += Math.sin(value * radian);
  }
  return sum.map((total, at) => {
    if (count[at] === 0) return NaN;
    if (isDirection(column)) return (Math.atan2(sumOther[at]!, total) / radian + 360) % 360;
    return isAmount(column) ? total : total / count[at]!;
  });
}

/** Samples further apart than an hour: straight lines between neighbours no further apart than one and a half steps. */
function joinedSamples(
  raw: Float64Array,
  order: readonly number[],
  hourAt: (k: number) => number,
  first: number,
  n: number,
  step_min: number,
  amount: boolean,
): Float64Array {
  const out = new Float64Array(n).fill(NaN);
  const longest = (1.5 * step_min) / 60;
  let before = -1;
  for (const k of order) {
    const value = raw[k]!;
    if (Number.isNaN(value)) continue;
    const at = hourAt(k) - first;
    out[at] = amount ? value / (step_min / 60) : value;
    if (before >= 0 && at - before > 1 && at - before <= longest) {
      const start = out[before]!;
      for (let h = before + 1; h < at; h++)
        out[h] = amount ? out[at] : start + ((value - start) * (h - before)) / (at - before);
    }
    before = at;
  }
  return out;
}

function markBetween(rows: Uint16Array, lines: Int32Array, step_h: number): void {
  let before = -1;
  for (let h = 0; h < rows.length; h++) {
    if (rows[h] === 0) continue;
    if (before >= 0 && h - before <= 1.5 * step_h)
      for (let between = before + 1; between < h; between++) {
        rows[between] = 1;
        lines[between] = lines[h]!;
      }
    before = h;
  }
}

function withoutLeapDays(
  first: number,
  n: number,
  values: Readonly<Partial<Record<WeatherColumn, Float64Array>>>,
  rows: Uint16Array,
  lines: Int32Array,
): LoggedHours {
  const kept: number[] = [];
  const hourOfYear: number[] = [];
  for (let h = 0; h < n; h++) {
    const day = Math.floor((first + h) / 24);
    const date = dateOfDays(day);
    if (date.month === 2 && date.day > daysInMonth[1]) continue;
    kept.push(h);
    hourOfYear.push((firstDayOfMonth[date.month - 1]! + date.day - 1) * 24 + (first + h - day * 24));
  }
  const pick = <T extends Float64Array | Uint16Array | Int32Array>(source: T, make: (length: number) => T): T => {
    const out = make(kept.length);
    kept.forEach((h, k) => (out[k] = source[h]!));
    return out;
  };
  return {
    hourOfYear: Int32Array.from(hourOfYear),
    values: Object.fromEntries(
      Object.entries(values).map(([column, source]) => [column, pick(source, (length) => new Float64Array(length))]),
    ),
    rows: pick(rows, (length) => new Uint16Array(length)),
    lines: pick(lines, (length) => new Int32Array(length)),
    leapHours: n - kept.length,
  };
}
