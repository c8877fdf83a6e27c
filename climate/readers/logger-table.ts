import Papa from "papaparse";
import type { Checked, Issue } from "../issue.ts";
import type { WeatherColumn } from "../weather-year.ts";
import { columnRules } from "./columns.ts";
import {
  columnOfHeading,
  conversionOf,
  isKnownUnit,
  isTimeHeading,
  unitChoices,
  type Conversion,
} from "./logger-columns.ts";
import { stepOf, undoDaylightSaving } from "./logger-clock.ts";
import { readStamp } from "./logger-time.ts";
import { plainText, readerError } from "./plain-text.ts";
import { numberOf } from "./scan-row.ts";

/** A logged table as read: rising standard time and SI values, NaN where a field is empty. */
export interface LoggerTable {
  /** "# key: value" lines at the head, keys in lower case. */
  readonly remarks: Readonly<Record<string, string>>;
  readonly columns: readonly WeatherColumn[];
  /** Position of each column in the file, counted from 1. */
  readonly fieldOf: Readonly<Partial<Record<WeatherColumn, number>>>;
  /** Standard time, minutes since 1970. */
  readonly minutes: Float64Array;
  /** Line of each row. */
  readonly lines: Int32Array;
  readonly values: Readonly<Partial<Record<WeatherColumn, Float64Array>>>;
  readonly step_min: number;
  readonly issues: readonly Issue[];
}

interface Layout {
  /** Fields of the stamp: one, or date and time. */
  readonly time: readonly number[];
  readonly columns: readonly {
    readonly column: WeatherColumn;
    readonly field: number;
    readonly conversion: Conversion;
  }[];
  /** Index of the first data row. */
  readonly dataFrom: number;
}

/**
 * Reads a plain logged table: lines "# key: value", a row of headings, a row of units (or units in the headings' brackets), data rows.
 * Commas, semicolons or tabs; decimal commas with semicolons; any step from one minute to one day. Never throws.
 */
export function readLoggerTable(name: string, text: string): Checked<LoggerTable> {
  const plain = plainText(name, text);
  if ("issue" in plain) return { ok: false, issues: [plain.issue] };
  const { remarks, body, headLines } = splitRemarks(plain.text);
  const parsed = Papa.parse<string[]>(body, { delimiter: delimiterOf(body), skipEmptyLines: false });
  const layout = layoutOf(parsed.data, headLines);
  if ("issues" in layout) return { ok: false, issues: layout.issues };
  return tableOf(name, parsed.data, layout, remarks, headLines);
}

function splitRemarks(text: string): { remarks: Record<string, string>; body: string; headLines: number } {
  const remarks: Record<string, string> = {};
  let from = 0;
  let headLines = 0;
  while (from < text.length) {
    const lineEnd = text.indexOf("\n", from);
    const end = lineEnd < 0 ? text.length : lineEnd;
    const line = text.slice(from, end).trim();
    if (!line.startsWith("#") && line !== "") break;
    const pair = /^#\s*([^:=]+)[:=]\s*(.*)$/.exec(line);
    if (pair) remarks[pair[1]!.trim().toLowerCase()] = pair[2]!.trim();
    headLines++;
    from = end + 1;
  }
  return { remarks, body: text.slice(from), headLines };
}

function delimiterOf(body: string): string {
  const line = body.slice(0, body.indexOf("\n") < 0 ? body.length : body.indexOf("\n"));
  return line.includes("\t") ? "\t" : line.includes(";") ? ";" : ",";
}

const bracketed = /[([]([^)\]]*)[)\]]/;

function layoutOf(
  rows: readonly (readonly string[])[],
  headLines: number,
): Layout | { readonly issues: readonly Issue[] } {
  const headings = rows[0] ?? [];
  const path = `line ${headLines + 1}`;
  const time = headings.flatMap((heading, field) => (isTimeHeading(heading) ? [field] : [])).slice(0, 2);
  if (time.length === 0)
    return {
      issues: [
        readerError(
          path,
          "No column is headed date or time.",
          'Head the columns like "time, temperature, relative humidity", with units in the next row.',
        ),
      ],
    };
  const second = rows[1] ?? [];
  const hasUnitsRow =
    readStamp(second[time[0]!] ?? "", false) === null &&
    second.some((cell, field) => !time.includes(field) && cell.trim() !== "" && isKnownUnit(cell));
  const issues: Issue[] = [];
  const columns: { column: WeatherColumn; field: number; conversion: Conversion }[] = [];
  headings.forEach((heading, field) => {
    if (time.includes(field)) return;
    const column = columnOfHeading(heading.replace(bracketed, ""));
    if (column === null || columns.some((other) => other.column === column)) return;
    const unit = hasUnitsRow ? (second[field] ?? "") : (bracketed.exec(heading)?.[1] ?? "");
    const conversion = conversionOf(column, unit);
    if (conversion) columns.push({ column, field, conversion });
    else
      issues.push(
        readerError(
          `line ${headLines + (hasUnitsRow ? 2 : 1)}, column ${field + 1} (${columnRules[column].title})`,
          unit.trim() === ""
            ? `The column "${heading.trim().slice(0, 40)}" has no unit.`
            : `The unit "${unit.trim().slice(0, 40)}" is not known here.`,
          `Write the unit below the heading: ${unitChoices(column)}.`,
        ),
      );
  });
  if (issues.length === 0 && columns.length === 0)
    issues.push(
      readerError(
        path,
        "No column is known.",
        'Head the columns with words like "temperature", "relative humidity", "dew point", "rain".',
      ),
    );
  return issues.length > 0 ? { issues } : { time, columns, dataFrom: hasUnitsRow ? 2 : 1 };
}

/** Rows of stamp and numbers; slashed dates are month first unless a month over 12 shows the contrary. */
function tableOf(
  name: string,
  rows: readonly (readonly string[])[],
  layout: Layout,
  remarks: Readonly<Record<string, string>>,
  headLines: number,
): Checked<LoggerTable> {
  const stampText = (row: readonly string[]): string => layout.time.map((field) => row[field] ?? "").join(" ");
  let dayFirst = false;
  for (let k = layout.dataFrom; k < rows.length && !dayFirst; k++) {
    const slashed = /^\s*(\d{1,2})\/(\d{1,2})\//.exec(rows[k]![layout.time[0]!] ?? "");
    dayFirst = slashed !== null && Number(slashed[1]) > 12;
  }
  const kept: number[] = [];
  const stamps: number[] = [];
  const offsets: number[] = [];
  const undated: number[] = [];
  let slashed = false;
  for (let k = layout.dataFrom; k < rows.length; k++) {
    const row = rows[k]!;
    if (row.every((cell) => cell.trim() === "")) continue;
    const stamp = readStamp(stampText(row), dayFirst);
    if (!stamp) {
      undated.push(headLines + k + 1);
      continue;
    }
    kept.push(k);
    stamps.push(stamp.minutes);
    offsets.push(stamp.utcOffset ?? NaN);
    slashed ||= stamp.slashed;
  }
  const issues: Issue[] = [];
  if (undated.length > 0)
    issues.push({
      path: `line ${undated[0]}`,
      severity: "warning",
      message: `${undated.length} rows have no date and time that can be read and were left out.`,
      remedy: "Write stamps like 2024-01-31 13:00.",
    });
  if (slashed)
    issues.push({
      path: "time",
      severity: "warning",
      message: `Dates with slashes were read as ${dayFirst ? "day/month/year" : "month/day/year"}.`,
      remedy: "Write stamps like 2024-01-31 13:00 to be sure.",
    });
  if (kept.length < 2)
    return {
      ok: false,
      issues: [
        ...issues,
        readerError(
          name,
          "The table has fewer than two dated rows.",
          "Write one row for each time, stamped like 2024-01-31 13:00.",
        ),
      ],
    };
  const minutes = Float64Array.from(stamps);
  if (offsets.some((offset) => !Number.isNaN(offset))) toStandardTime(minutes, offsets, remarks);
  else issues.push(...undoDaylightSaving(minutes));
  const step_min = stepOf(minutes);
  if (!(step_min >= 0.99 && step_min <= 1440.01))
    return {
      ok: false,
      issues: [
        ...issues,
        readerError(
          "time",
          `The usual step is ${Number.isNaN(step_min) ? "not rising" : `${step_min.toFixed(1)} min`}.`,
          "Log with a step from 1 minute to 1 day, in rising order.",
        ),
      ],
    };
  const lines = Int32Array.from(kept, (k) => headLines + k + 1);
  const values: Partial<Record<WeatherColumn, Float64Array>> = {};
  for (const { column, field, conversion } of layout.columns) {
    const read = readColumn(rows, kept, lines, column, field, conversion);
    values[column] = read.values;
    issues.push(...read.issues);
  }
  return {
    ok: true,
    issues,
    value: {
      remarks,
      columns: layout.columns.map(({ column }) => column),
      fieldOf: Object.fromEntries(layout.columns.map(({ column, field }) => [column, field + 1])),
      minutes,
      lines,
      values,
      step_min,
      issues,
    },
  };
}

/** Stamps with offsets from UTC: to the standard time of the head, or of the smallest offset seen (daylight saving adds). */
function toStandardTime(
  minutes: Float64Array,
  offsets: readonly number[],
  remarks: Readonly<Record<string, string>>,
): void {
  const told = numberOf(remarks["utc"] ?? "");
  const standard = Number.isNaN(told)
    ? Math.min(...new Set(offsets.filter((offset) => !Number.isNaN(offset))))
    : told * 60;
  offsets.forEach((offset, k) => {
    if (!Number.isNaN(offset)) minutes[k]! += standard - offset;
  });
}

const emptyWords = new Set(["", "-", "--", "na", "n/a", "nan", "null", "none", "?"]);

function readColumn(
  rows: readonly (readonly string[])[],
  kept: readonly number[],
  lines: Int32Array,
  column: WeatherColumn,
  field: number,
  conversion: Conversion,
): { values: Float64Array; issues: Issue[] } {
  const rule = columnRules[column];
  let bad = 0;
  let path = "";
  let written = "";
  const values = Float64Array.from(kept, (k, at) => {
    const text = rows[k]![field] ?? "";
    const raw = numberOf(text.includes(",") ? text.replace(",", ".") : text);
    const value = raw * conversion.factor + conversion.offset;
    if (value >= rule.low && value <= rule.high) return value;
    if (Number.isNaN(raw) && emptyWords.has(text.trim().toLowerCase())) return NaN;
    if (bad++ === 0) {
      path = `line ${lines[at]}, column ${field + 1} (${rule.title})`;
      written = text.trim().slice(0, 40);
    }
    return NaN;
  });
  if (bad === 0) return { values, issues: [] };
  return {
    values,
    issues: [
      {
        path,
        severity: "warning",
        message: `"${written}" is no ${rule.title} in the unit given${bad > 1 ? ` (and ${bad - 1} like it)` : ""}; it counts as missing.`,
        remedy: `In SI it must lie from ${rule.low} to ${rule.high} ${rule.unit}. Check the unit and the field.`,
      },
    ],
  };
}
