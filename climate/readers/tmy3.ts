import { daysInMonth, firstDayOfMonth, hoursOfYear } from "../calendar.ts";
import type { Checked, Issue } from "../issue.ts";
import { sha256Hex } from "../sha256.ts";
import type { Place, WeatherColumn, WeatherYear } from "../weather-year.ts";
import { assembleYear } from "./assemble-year.ts";
import { placeOf } from "./epw-location.ts";
import { emptyHourTable, noteBadCell, put, putChecked, targetOf, type HourTable } from "./hour-table.ts";
import { lineAt, plainText, readerError } from "./plain-text.ts";
import { scanRow } from "./scan-row.ts";

interface Heading {
  readonly column: WeatherColumn;
  readonly heading: string;
  /** What the unit in the heading's brackets multiplies to SI. */
  readonly units: Readonly<Record<string, number>>;
  readonly needed: boolean;
}

const irradiance = { "w/m^2": 1, "w/m2": 1 };
/** Source: Wilcox and Marion 2008, Users Manual for TMY3 Data Sets, NREL/TP-581-43156, table of fields (headings SEEN in files). */
const headings: readonly Heading[] = [
  { column: "temperature_C", heading: "dry-bulb", units: { c: 1 }, needed: true },
  { column: "dewPoint_C", heading: "dew-point", units: { c: 1 }, needed: false },
  { column: "relativeHumidity", heading: "rhum", units: { "%": 0.01 }, needed: false },
  { column: "pressure_Pa", heading: "pressure", units: { mbar: 100, hpa: 100, pa: 1, kpa: 1000 }, needed: false },
  { column: "globalHorizontal_Wm2", heading: "ghi", units: irradiance, needed: true },
  { column: "directNormal_Wm2", heading: "dni", units: irradiance, needed: false },
  { column: "diffuseHorizontal_Wm2", heading: "dhi", units: irradiance, needed: false },
  { column: "windDirection_deg", heading: "wdir", units: { degrees: 1, deg: 1 }, needed: true },
  { column: "windSpeed_ms", heading: "wspd", units: { "m/s": 1 }, needed: true },
  { column: "cloudCover", heading: "opqcld", units: { tenths: 0.1 }, needed: false },
  { column: "rain_mm", heading: "lprecip depth", units: { mm: 1 }, needed: false },
];
/** At or below this a value is missing; so are "?" and an empty field. */
const missingUpTo = -9900;
/** Rain before its unit is known: up to a cloudburst in tenths of a millimetre. */
const mostRawRain = 3000;

interface Layout {
  readonly found: readonly (Heading & { readonly field: number; readonly toSi: number })[];
  readonly fieldCount: number;
}

/**
 * Reads a TMY3 CSV file: one line with the station, one with the headings, then hourly rows dated MM/DD/YYYY, HH:MM,
 * hours counted at their end (24:00 is midnight). Years jump from month to month and are not looked at. Never throws.
 */
export function readTmy3(name: string, text: string): Checked<WeatherYear> {
  const plain = plainText(name, text);
  if ("issue" in plain) return { ok: false, issues: [plain.issue] };
  const body = plain.text;
  const first = lineAt(body, 0);
  const second = lineAt(body, first.next);
  const station = readStation(body.slice(0, first.end));
  const layout = readHeadings(body.slice(first.next, second.end));
  const issues: Issue[] = [...station.issues, ...layout.issues];
  if (!station.place || !layout.layout) return { ok: false, issues };
  const { table, rows } = readRows(body, second.next, layout.layout, issues);
  if (rows === 0) {
    issues.push(
      readerError(
        name,
        "The file has headings but no hourly rows.",
        "Get the complete file: 8760 rows follow the headings.",
      ),
    );
    return { ok: false, issues };
  }
  const fieldOf = Object.fromEntries(layout.layout.found.map(({ column, field }) => [column, field + 1]));
  const label = `${station.place.name} (${name})`;
  return assembleYear(
    { name, kind: "file", label, sha256: sha256Hex(text), place: station.place, fieldOf },
    table,
    issues,
  );
}

/** id, "name", state, time zone, latitude, longitude, elevation; the name may hold commas inside its quotes. */
function readStation(line: string): { readonly place: Place | null; readonly issues: readonly Issue[] } {
  const parts = (line.match(/("[^"]*"|[^,]*)(,|$)/g) ?? []).map((part) =>
    part.replace(/,$/, "").replaceAll('"', "").trim(),
  );
  return placeOf(
    [parts[1], parts[2]].filter(Boolean).join(", "),
    [parts[4], parts[5], parts[3], parts[6]].map((part) => part ?? ""),
    "line 1",
    [5, 6, 4, 7],
  );
}

function readHeadings(line: string): { readonly layout: Layout | null; readonly issues: readonly Issue[] } {
  const names = line.split(",").map((part) => part.replaceAll('"', "").trim().toLowerCase());
  const issues: Issue[] = [];
  const found: (Heading & { field: number; toSi: number })[] = [];
  for (const heading of headings) {
    const field = names.findIndex((text) => text.startsWith(`${heading.heading} (`));
    if (field < 0) {
      if (heading.needed)
        issues.push(
          readerError(
            "line 2",
            `There is no column "${heading.heading}".`,
            "Get the file with all columns of the TMY3 layout.",
          ),
        );
      continue;
    }
    const unit = /\(([^)]*)\)/.exec(names[field]!)?.[1] ?? "";
    const toSi = heading.units[unit];
    if (toSi === undefined)
      issues.push(
        readerError(
          `line 2, column ${field + 1} (${heading.heading})`,
          `The unit "${unit}" is not known here.`,
          `Use ${Object.keys(heading.units).join(" or ")}.`,
        ),
      );
    else found.push({ ...heading, field, toSi });
  }
  if (!found.some(({ column }) => column === "dewPoint_C" || column === "relativeHumidity"))
    issues.push(
      readerError(
        "line 2",
        "There is neither dew point nor relative humidity.",
        "Get the file with all columns of the TMY3 layout.",
      ),
    );
  return { layout: issues.length > 0 ? null : { found, fieldCount: names.length }, issues };
}

function readRows(text: string, dataFrom: number, layout: Layout, issues: Issue[]): { table: HourTable; rows: number } {
  const table = emptyHourTable();
  const targets = layout.found.map(({ column }) => targetOf(table, column));
  const slots = new Int8Array(Math.max(...layout.found.map(({ field }) => field)) + 1).fill(-1);
  layout.found.forEach(({ field }, k) => (slots[field] = k));
  const row = new Float64Array(layout.found.length);
  let rows = 0;
  let leap = 0;
  const bad: number[] = [];
  for (let from = dataFrom, line = 3; from < text.length; line++) {
    const { end, next } = lineAt(text, from);
    const start = from;
    from = next;
    if (end - start < 2 && text.slice(start, end).trim() === "") continue;
    const at = hourOfStamp(text, start, end);
    if (at === leapDay) {
      leap++;
      continue;
    }
    const count = at >= 0 ? scanRow(text, start, end, slots, row, 44) : 0;
    if (count < slots.length) {
      bad.push(line);
      continue;
    }
    rows++;
    table.rows[at] = table.rows[at]! + 1;
    table.lines[at] = line;
    for (let k = 0; k < layout.found.length; k++) {
      const { column, toSi, field } = layout.found[k]!;
      const raw = row[k]!;
      if (raw <= missingUpTo) continue;
      if (column === "rain_mm" && raw >= 0 && raw <= mostRawRain) put(table, at, column, raw);
      else if (Number.isNaN(raw)) {
        const written = (text.slice(start, end).split(",")[field] ?? "").trim();
        if (written !== "" && written !== "?") noteBadCell(table, line, column, written);
      } else putChecked(table, targets[k]!, at, raw * toSi, line, raw);
    }
  }
  if (leap > 0)
    issues.push({
      path: "29 Feb",
      severity: "warning",
      message: `${leap} rows of 29 February were left out: the year has 365 days.`,
      remedy: "Nothing to do.",
    });
  if (bad.length > 0)
    issues.push({
      path: `line ${bad[0]}`,
      severity: "warning",
      message: `${bad.length} rows have no date as MM/DD/YYYY,HH:MM or too few columns and were left out.`,
      remedy: "Get the complete file.",
    });
  let repeated = 0;
  for (const count of table.rows) if (count > 1) repeated++;
  if (repeated > 0)
    issues.push({
      path: "rows",
      severity: "warning",
      message: `${repeated} hours occur more than once; their mean was used.`,
      remedy: "Check the dates of the file.",
    });
  return { table, rows };
}

const leapDay = -2;

/** Hour 0..8759 of a row "MM/DD/YYYY,HH:MM,...", -1 if it has no such start, -2 on 29 February. */
function hourOfStamp(text: string, from: number, to: number): number {
  const match = /^"?(\d{1,2})\/(\d{1,2})\/\d{4}"?,"?(\d{1,2}):(\d{2})/.exec(text.slice(from, Math.min(to, from + 24)));
  if (!match) return -1;
  const [month, day, hour] = [Number(match[1]), Number(match[2]), Number(match[3])];
  if (month === 2 && day === 29) return leapDay;
  if (month < 1 || month > 12 || day < 1 || day > daysInMonth[month - 1]! || hour > 24) return -1;
  return ((firstDayOfMonth[month - 1]! + day - 1) * 24 + hour - 1 + hoursOfYear) % hoursOfYear;
}
