import { hoursOfYear } from "../calendar.ts";
import type { WeatherColumn } from "../weather-year.ts";
import { columnRules, weatherColumns } from "./columns.ts";

/** A field that held no usable value. */
export interface BadCell {
  readonly line: number;
  readonly column: WeatherColumn;
  readonly text: string;
}

/**
 * Hourly slots of a year while a file is read: a mean over the rows that fell into each hour (a sum for rain), NaN where none did.
 */
export interface HourTable {
  readonly values: Readonly<Record<WeatherColumn, Float64Array>>;
  /** Rows that fell into each hour, whatever they held. */
  readonly rows: Uint16Array;
  /** Line of the last such row, 0 for none. */
  readonly lines: Int32Array;
  readonly badCells: BadCell[];
  badCellCount: number;
  readonly counts: Readonly<Record<WeatherColumn, Uint16Array>>;
}

export function emptyHourTable(): HourTable {
  const each = <T>(make: () => T): Record<WeatherColumn, T> =>
    Object.fromEntries(weatherColumns.map((column) => [column, make()])) as Record<WeatherColumn, T>;
  return {
    values: each(() => new Float64Array(hoursOfYear).fill(NaN)),
    counts: each(() => new Uint16Array(hoursOfYear)),
    rows: new Uint16Array(hoursOfYear),
    lines: new Int32Array(hoursOfYear),
    badCells: [],
    badCellCount: 0,
  };
}

/** Takes one value into its hour; wind direction adds as written (rows per hour are averaged as vectors by the caller). */
export function put(table: HourTable, hour: number, column: WeatherColumn, value: number): void {
  const values = table.values[column];
  const counts = table.counts[column];
  const before = counts[hour]!;
  if (before === 0) values[hour] = value;
  else if (column === "rain_mm") values[hour] = values[hour]! + value;
  else if (column === "windDirection_deg") values[hour] = meanDirection(values[hour]!, value, before);
  else values[hour] = values[hour]! + (value - values[hour]!) / (before + 1);
  counts[hour] = before + 1;
}

/** One column of a table, ready for the hot loop of a reader: its arrays and limits at hand, no look-up by name. */
export interface Target {
  readonly column: WeatherColumn;
  readonly values: Float64Array;
  readonly counts: Uint16Array;
  readonly low: number;
  readonly high: number;
}

export function targetOf(table: HourTable, column: WeatherColumn): Target {
  const { low, high } = columnRules[column];
  return { column, values: table.values[column], counts: table.counts[column], low, high };
}

/** Puts a value if it lies within its column's limits; else notes the cell as `written` and leaves the hour without it. */
export function putChecked(
  table: HourTable,
  target: Target,
  hour: number,
  value: number,
  line: number,
  written: number,
): void {
  if (!(value >= target.low && value <= target.high)) noteBadCell(table, line, target.column, String(written));
  else if (target.counts[hour] === 0) {
    target.values[hour] = value;
    target.counts[hour] = 1;
  } else put(table, hour, target.column, value);
}

export function noteBadCell(table: HourTable, line: number, column: WeatherColumn, text: string): void {
  table.badCellCount++;
  if (table.badCells.length < 400) table.badCells.push({ line, column, text: text.slice(0, 40) });
}

function meanDirection(mean_deg: number, next_deg: number, before: number): number {
  const turn = ((((next_deg - mean_deg) % 360) + 540) % 360) - 180;
  return (mean_deg + turn / (before + 1) + 360) % 360;
}
