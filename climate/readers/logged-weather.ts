import { hoursOfYear } from "../calendar.ts";
import type { Checked, Issue } from "../issue.ts";
import { sha256Hex } from "../sha256.ts";
import type { WeatherYear } from "../weather-year.ts";
import { assembleYear } from "./assemble-year.ts";
import { weatherColumns } from "./columns.ts";
import { placeOf } from "./epw-location.ts";
import { longestFilledGap_h } from "./gaps.ts";
import { emptyHourTable } from "./hour-table.ts";
import { readLoggerTable } from "./logger-table.ts";
import { hoursOfLog } from "./logger-hours.ts";
import { readerError } from "./plain-text.ts";

/** Sun cannot be put into hours from samples further apart than this [min]. */
const slowestSun_min = 180;

/**
 * Logged outdoor air as a weather year. Needs a whole year of dry-bulb, dew point or relative humidity, wind speed and global sun;
 * the rest is computed or warned about. The head names the place: "# latitude: 44.47", longitude, utc (hours), elevation (m), place.
 * Of a log longer than a year the last whole year is taken. Never throws.
 */
export function readLoggedWeather(name: string, text: string): Checked<WeatherYear> {
  const read = readLoggerTable(name, text);
  if (!read.ok) return read;
  const table = read.value;
  const issues: Issue[] = [...read.issues];
  const { place, issues: placeIssues } = placeOf(
    table.remarks["place"] ?? name,
    ["latitude", "longitude", "utc", "elevation"].map((key) => table.remarks[key] ?? ""),
    "the head of the file",
    [1, 2, 3, 4],
  );
  if (!place) {
    issues.push(
      ...placeIssues.map((issue) => ({
        ...issue,
        path: issue.path.replace(/, column \d/, ""),
        remedy: `Put "# latitude: 44.47", "# longitude: -73.15", "# utc: -5" and "# elevation: 101" at the head. ${issue.remedy}`,
      })),
    );
    return { ok: false, issues };
  }
  if (table.step_min > slowestSun_min) {
    issues.push(
      readerError(
        "time",
        `The log steps by ${Math.round(table.step_min / 60)} h; sun and wind need steps up to ${slowestSun_min / 60} h.`,
        "Log outdoor weather at least every three hours, or choose a place.",
      ),
    );
    return { ok: false, issues };
  }
  const log = hoursOfLog(table);
  const n = log.hourOfYear.length;
  if (log.leapHours > 0)
    issues.push({
      path: "29 Feb",
      severity: "warning",
      message: `${log.leapHours} hours of 29 February were left out: the year has 365 days.`,
      remedy: "Nothing to do.",
    });
  if (n < hoursOfYear - longestFilledGap_h) {
    issues.push(
      readerError(
        "time",
        `The log covers ${(n / 24).toFixed(1)} days; a weather year needs 365.`,
        "Give a log of a whole year; a shorter one can drive a laboratory case.",
      ),
    );
    return { ok: false, issues };
  }
  if (n > hoursOfYear)
    issues.push({
      path: "time",
      severity: "warning",
      message: `The log covers ${n} hours; the last ${hoursOfYear} are used.`,
      remedy: "Cut the file to the year you want.",
    });
  const hours = emptyHourTable();
  for (let k = Math.max(0, n - hoursOfYear); k < n; k++) {
    const at = log.hourOfYear[k]!;
    hours.rows[at] = log.rows[k]!;
    hours.lines[at] = log.lines[k]!;
    for (const column of weatherColumns) {
      const source = log.values[column];
      if (source) hours.values[column][at] = source[k]!;
    }
  }
  const label = `${place.name}, logged (${name})`;
  return assembleYear(
    { name, kind: "logged", label, sha256: sha256Hex(text), place, fieldOf: table.fieldOf },
    hours,
    issues,
  );
}
