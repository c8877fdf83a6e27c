import { relativeHumidity } from "../air/moist-air.ts";
import { saturationPressure_Pa } from "../air/saturation.ts";
import { hoursOfYear, stampOfHour } from "../calendar.ts";
import type { Checked, Issue } from "../issue.ts";
import type { LoggedAir } from "../rooms/room-setting.ts";
import { sha256Hex } from "../sha256.ts";
import { columnRules } from "./columns.ts";
import { longestFilledGap_h } from "./gaps.ts";
import { readLoggerTable } from "./logger-table.ts";
import { hoursOfLog } from "./logger-hours.ts";
import { readerError } from "./plain-text.ts";

/**
 * Logged room air: dry-bulb, and relative humidity or dew point, of any length. Gaps up to 6 h are filled by straight lines and listed,
 * longer ones refused. Of a log longer than a year the last whole year is taken. Never throws.
 */
export function readLoggedRoom(name: string, text: string): Checked<LoggedAir> {
  const read = readLoggerTable(name, text);
  if (!read.ok) return read;
  const issues: Issue[] = [...read.issues];
  const log = hoursOfLog(read.value);
  const temperature = log.values.temperature_C;
  const humidity = log.values.relativeHumidity ?? log.values.dewPoint_C;
  const humidityColumn = log.values.relativeHumidity ? "relativeHumidity" : "dewPoint_C";
  if (!temperature)
    issues.push(
      readerError(name, "The room log has no temperature.", 'Add a column headed "temperature" with its unit below.'),
    );
  if (!humidity)
    issues.push(
      readerError(
        name,
        "The room log has no humidity.",
        'Add a column headed "relative humidity" or "dew point" with its unit below.',
      ),
    );
  if (!temperature || !humidity) return { ok: false, issues };
  const from = Math.max(0, log.hourOfYear.length - hoursOfYear);
  if (from > 0)
    issues.push({
      path: "time",
      severity: "warning",
      message: `The log covers ${log.hourOfYear.length} hours; the last ${hoursOfYear} are used.`,
      remedy: "Cut the file to the year you want.",
    });
  const firstHour = log.hourOfYear[from]!;
  const temperature_C = temperature.slice(from);
  const second = humidity.slice(from);
  mendOpen(temperature_C, "temperature_C", firstHour, issues);
  mendOpen(second, humidityColumn, firstHour, issues);
  if (issues.some((issue) => issue.severity === "error")) return { ok: false, issues };
  const relative =
    humidityColumn === "relativeHumidity"
      ? second.map((value) => Math.min(1, value))
      : second.map((dew, k) => Math.min(1, relativeHumidity(saturationPressure_Pa(dew), temperature_C[k]!)));
  return {
    ok: true,
    issues,
    value: {
      name,
      sha256: sha256Hex(text),
      hours: temperature_C.length,
      firstHour,
      temperature_C,
      relativeHumidity: relative,
    },
  };
}

/** Fills short gaps inside a series that does not repeat. */
function mendOpen(
  values: Float64Array,
  column: "temperature_C" | "relativeHumidity" | "dewPoint_C",
  firstHour: number,
  issues: Issue[],
): void {
  const title = columnRules[column].title;
  const told: string[] = [];
  const tooLong: string[] = [];
  const n = values.length;
  const stamp = (k: number): string => stampOfHour((firstHour + k) % hoursOfYear);
  for (let k = 0; k < n; k++) {
    if (!Number.isNaN(values[k]!)) continue;
    let end = k;
    while (end < n && Number.isNaN(values[end]!)) end++;
    const text = `${stamp(k)} (${end - k} h)`;
    if (end - k > longestFilledGap_h || (k === 0 && end === n)) tooLong.push(text);
    else {
      const before = k > 0 ? values[k - 1]! : values[end]!;
      const after = end < n ? values[end]! : before;
      for (let h = k; h < end; h++) values[h] = before + ((after - before) * (h - k + 1)) / (end - k + 1);
      told.push(text);
    }
    k = end;
  }
  const list = (texts: readonly string[]): string =>
    texts.slice(0, 6).join(", ") + (texts.length > 6 ? ` and ${texts.length - 6} more` : "");
  if (told.length > 0)
    issues.push({
      path: title,
      severity: "warning",
      message: `${title}: ${told.length} gaps were filled by straight lines: ${list(told)}.`,
      remedy: "Check these hours if they matter.",
    });
  if (tooLong.length > 0)
    issues.push(
      readerError(
        title,
        `${title} is missing for longer than ${longestFilledGap_h} h from ${list(tooLong)}.`,
        `Fill these hours in the file; gaps up to ${longestFilledGap_h} h are filled here.`,
      ),
    );
}
