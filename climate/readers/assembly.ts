import type { Issue } from "../issue.ts";
import { stampOfHour, hoursOfYear } from "../calendar.ts";
import type { Place, WeatherColumn, WeatherYear } from "../weather-year.ts";
import { columnRules } from "./columns.ts";
import type { Gap } from "./gaps.ts";
import type { HourTable } from "./hour-table.ts";

/** What is known of a file besides its hours. */
export interface Source {
  readonly name: string;
  readonly kind: WeatherYear["kind"];
  readonly label: string;
  readonly sha256: string;
  readonly place: Place;
  /** Where each column stands in the file, counted from 1, for messages. */
  readonly fieldOf: Readonly<Partial<Record<WeatherColumn, number>>>;
}

/** A year on its way from raw hours to a WeatherYear. */
export interface Assembly {
  readonly source: Source;
  readonly table: HourTable;
  readonly issues: Issue[];
  readonly missingHours: Partial<Record<WeatherColumn, number>>;
}

/** "column 7 (dry-bulb)", with the line where there is one. */
export function placeInFile(assembly: Assembly, column: WeatherColumn, hour?: number): string {
  const field = assembly.source.fieldOf[column];
  const title = columnRules[column].title;
  const what = field === undefined ? title : `column ${field} (${title})`;
  if (hour === undefined) return what;
  const line = assembly.table.lines[hour]!;
  return line > 0 ? `line ${line}, ${what}` : what;
}

/** "3 Jan 04:00 to 06:00 (3 h), 9 May 11:00 (1 h) and 4 more". */
export function listGaps(gaps: readonly Gap[]): string {
  const shown = gaps.slice(0, 6).map((gap) => {
    const from = stampOfHour(gap.first);
    const to = stampOfHour((gap.first + gap.length - 1) % hoursOfYear);
    return gap.length === 1 ? `${from} (1 h)` : `${from} to ${to} (${gap.length} h)`;
  });
  return shown.join(", ") + (gaps.length > shown.length ? ` and ${gaps.length - shown.length} more` : "");
}

export function warn(assembly: Assembly, path: string, message: string, remedy: string): void {
  assembly.issues.push({ path, message, remedy, severity: "warning" });
}

export function refuse(assembly: Assembly, path: string, message: string, remedy: string): void {
  assembly.issues.push({ path, message, remedy, severity: "error" });
}

export const countMissing = (values: Float64Array): number => {
  let count = 0;
  for (const value of values) if (Number.isNaN(value)) count++;
  return count;
};
