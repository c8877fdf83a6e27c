import { daysInMonth, firstDayOfMonth, hoursOfYear } from "../calendar.ts";
import type { Checked, Issue } from "../issue.ts";
import { sha256Hex } from "../sha256.ts";
import type { WeatherColumn, WeatherYear } from "../weather-year.ts";
import { assembleYear } from "./assemble-year.ts";
import { emptyHourTable, noteBadCell, putChecked, targetOf } from "./hour-table.ts";
import { lineAt, plainText, readerError } from "./plain-text.ts";
import { readLocation } from "./epw-location.ts";
import { scanRow } from "./scan-row.ts";

interface EpwField {
  readonly column: WeatherColumn;
  /** Counted from 0. */
  readonly field: number;
  /** At or above this the value is missing. */
  readonly missingFrom: number;
  readonly toSi: number;
}

/**
 * Fields of a data row that a wall needs, with their missing codes.
 * Source: auxiliary programs documentation of the EPW format, data dictionary (field order and missing values), SEEN in files.
 */
const fields: readonly EpwField[] = [
  { column: "temperature_C", field: 6, missingFrom: 99.9, toSi: 1 },
  { column: "dewPoint_C", field: 7, missingFrom: 99.9, toSi: 1 },
  { column: "relativeHumidity", field: 8, missingFrom: 999, toSi: 0.01 },
  { column: "pressure_Pa", field: 9, missingFrom: 999_999, toSi: 1 },
  { column: "skyInfrared_Wm2", field: 12, missingFrom: 9999, toSi: 1 },
  { column: "globalHorizontal_Wm2", field: 13, missingFrom: 9999, toSi: 1 },
  { column: "directNormal_Wm2", field: 14, missingFrom: 9999, toSi: 1 },
  { column: "diffuseHorizontal_Wm2", field: 15, missingFrom: 9999, toSi: 1 },
  { column: "windDirection_deg", field: 20, missingFrom: 999, toSi: 1 },
  { column: "windSpeed_ms", field: 21, missingFrom: 999, toSi: 1 },
  { column: "cloudCover", field: 23, missingFrom: 99, toSi: 0.1 },
  { column: "rain_mm", field: 33, missingFrom: 999, toSi: 1 },
];

/** Month, day, hour, minute: the last four places of the scanned row. */
const stampFields = [1, 2, 3, 4] as const;
/** A row must reach at least to the wind speed. */
const leastFields = 22;

const slots = new Int8Array(35).fill(-1);
fields.forEach(({ field }, k) => (slots[field] = k));
stampFields.forEach((field, k) => (slots[field] = fields.length + k));

/**
 * Reads an EPW weather file (hourly typical or actual year).
 *
 * Eight header lines or more, 8760 or 8784 rows in any order of years (each month may come from another), finer steps averaged to
 * hours. Hour 1 ends at 01:00. Never throws: whatever the text, the answer is a year with what was repaired, or errors.
 */
export function readEpw(name: string, text: string): Checked<WeatherYear> {
  const plain = plainText(name, text);
  if ("issue" in plain) return { ok: false, issues: [plain.issue] };
  const body = plain.text;
  const head = readHeader(body);
  const issues: Issue[] = [...head.issues];
  if (!head.place) return { ok: false, issues };
  const { table, rows, issues: rowIssues } = readRows(body, head.dataFrom, head.dataLine);
  issues.push(...rowIssues);
  if (rows === 0) {
    issues.push(
      readerError(
        name,
        "The file has a header but no hourly rows.",
        "Get the complete file: 8760 rows follow the header.",
      ),
    );
    return { ok: false, issues };
  }
  const fieldOf = Object.fromEntries(fields.map(({ column, field }) => [column, field + 1]));
  return assembleYear(
    { name, kind: "file", label: `${head.place.name} (${name})`, sha256: sha256Hex(text), place: head.place, fieldOf },
    table,
    issues,
  );
}

/** A data row starts with a number for its year and has many fields. */
const dataRow = /^\s*\d{4}\s*,\s*\d{1,2}\s*,\s*\d{1,2}\s*,/;

function readHeader(text: string): {
  readonly place: WeatherYear["place"] | null;
  readonly issues: readonly Issue[];
  readonly dataFrom: number;
  readonly dataLine: number;
} {
  let from = 0;
  let line = 1;
  let location: ReturnType<typeof readLocation> | null = null;
  while (from < text.length) {
    const { end, next } = lineAt(text, from);
    const start = text.slice(from, Math.min(end, from + 40));
    if (dataRow.test(start)) break;
    if (/^\s*"?LOCATION/i.test(start)) location = readLocation(text.slice(from, end), line);
    from = next;
    line++;
    if (line > 200) break;
  }
  if (location === null)
    return {
      place: null,
      dataFrom: from,
      dataLine: line,
      issues: [
        readerError(
          "line 1",
          "There is no LOCATION line.",
          "An EPW file starts with LOCATION, name, ..., latitude, longitude, time zone, elevation.",
        ),
      ],
    };
  return { ...location, dataFrom: from, dataLine: line };
}

/** A dry-bulb of an ordinary place in kelvin; the format's codes for a missing one lie outside. */
const kelvinFrom = 200;
const kelvinTo = 340;
/** So many are no slip of a sensor. */
const kelvinRows = 100;

function readRows(text: string, dataFrom: number, dataLine: number) {
  const table = emptyHourTable();
  const targets = fields.map(({ column }) => targetOf(table, column));
  const row = new Float64Array(fields.length + stampFields.length);
  const stamp = fields.length;
  const issues: Issue[] = [];
  let rows = 0;
  let leap = 0;
  let midnightZero = 0;
  let firstHour = -1;
  let inKelvin = 0;
  const short: number[] = [];
  const undated: number[] = [];
  for (let from = dataFrom, line = dataLine; from < text.length; line++) {
    const { end, next } = lineAt(text, from);
    const start = from;
    from = next;
    if (end - start < 2 && text.slice(start, end).trim() === "") continue;
    const count = scanRow(text, start, end, slots, row, 44);
    if (count < leastFields) {
      short.push(line);
      continue;
    }
    if (row[0]! > kelvinFrom && row[0]! < kelvinTo) inKelvin++;
    const month = row[stamp]!;
    const day = row[stamp + 1]!;
    const hour = row[stamp + 2]!;
    if (month === 2 && day === 29) {
      leap++;
      continue;
    }
    if (!(
      month >= 1 &&
      month <= 12 &&
      Number.isInteger(month) &&
      day >= 1 &&
      day <= daysInMonth[month - 1]! &&
      Number.isInteger(day) &&
      hour >= 0 &&
      hour <= 24 &&
      Number.isInteger(hour)
    )) {
      undated.push(line);
      continue;
    }
    if (firstHour < 0) firstHour = hour;
    if (hour === 0) midnightZero++;
    // A file that starts at hour 0 counts 0..23 at the beginning of its hours; else 0 is the midnight that ends the day before.
    const ofDay = firstHour === 0 ? Math.min(hour, 23) : hour - 1;
    const at = ((firstDayOfMonth[month - 1]! + day - 1) * 24 + ofDay + hoursOfYear) % hoursOfYear;
    rows++;
    table.rows[at] = table.rows[at]! + 1;
    table.lines[at] = line;
    for (let k = 0; k < fields.length; k++) {
      const { column, missingFrom, toSi, field } = fields[k]!;
      const raw = row[k]!;
      if (raw >= missingFrom || (column === "skyInfrared_Wm2" && raw === 0)) continue;
      if (Number.isNaN(raw)) {
        if (field < count) noteBadCell(table, line, column, fieldText(text, start, end, field));
      } else putChecked(table, targets[k]!, at, raw * toSi, line, raw);
    }
  }
  if (inKelvin >= kelvinRows)
    issues.push(
      readerError(
        "column 7 (dry-bulb)",
        `In ${inKelvin} rows the dry-bulb lies between ${kelvinFrom} and ${kelvinTo}; it looks like kelvin.`,
        "Give temperatures in degC.",
      ),
    );
  tellRows(table.rows, rows, { leap, midnightZero, zeroFirst: firstHour === 0, short, undated }, issues);
  return { table, rows, issues };
}

function fieldText(text: string, from: number, to: number, field: number): string {
  return text.slice(from, to).split(",")[field] ?? "";
}

function tellRows(
  perHour: Uint16Array,
  rows: number,
  found: {
    leap: number;
    midnightZero: number;
    zeroFirst: boolean;
    short: readonly number[];
    undated: readonly number[];
  },
  issues: Issue[],
): void {
  const warning = (path: string, message: string, remedy: string): void => {
    issues.push({ path, message, remedy, severity: "warning" });
  };
  if (found.leap > 0)
    warning("29 Feb", `${found.leap} rows of 29 February were left out: the year has 365 days.`, "Nothing to do.");
  if (found.midnightZero > 0)
    warning(
      "column 4 (hour)",
      `${found.midnightZero} rows have hour 0; ${found.zeroFirst ? "hours were read as 0 to 23, counted at their beginning" : "it was read as the midnight that ends the day before"}.`,
      "Hours run from 1 to 24, counted at their end; check the first hours of a few days.",
    );
  if (found.short.length > 0)
    warning(
      `line ${found.short[0]}`,
      `${found.short.length} rows have fewer than ${leastFields} of 35 columns and were left out.`,
      "Get the complete file.",
    );
  if (found.undated.length > 0)
    warning(
      `line ${found.undated[0]}, column 2 to 4 (date)`,
      `${found.undated.length} rows have no valid month, day and hour and were left out.`,
      "Months run from 1 to 12, hours from 1 to 24.",
    );
  let most = 0;
  let hours = 0;
  let repeated = 0;
  for (const count of perHour) {
    most = Math.max(most, count);
    if (count > 0) hours++;
    if (count > 1) repeated++;
  }
  if (repeated > hours / 2)
    warning(
      "rows",
      `The file has ${(rows / hours).toFixed(1)} rows an hour; they were averaged to hours, rain added up.`,
      "Nothing to do.",
    );
  else if (repeated > 0)
    warning(
      "rows",
      `${repeated} hours occur more than once (up to ${most} times); their mean was used.`,
      "Check the dates of the file.",
    );
}
