import { hoursOfYear } from "../calendar.ts";
import type { Checked, Issue } from "../issue.ts";
import type { WeatherColumn, WeatherYear } from "../weather-year.ts";
import { countMissing, placeInFile, refuse, warn, listGaps, type Assembly, type Source } from "./assembly.ts";
import { columnRules, weatherColumns } from "./columns.ts";
import { doubtPlace, doubtUnits } from "./doubts.ts";
import { gapsOf, longestFilledGap_h } from "./gaps.ts";
import type { HourTable } from "./hour-table.ts";
import { mendRainUnit } from "./rain-unit.ts";
import { mendCloud, mendInfrared, mendSun, sunOfYear } from "./mend-radiation.ts";
import { mendColumn, mendHumidity, mendPressure, mendRain, mendWind } from "./mend-state.ts";

/**
 * From raw hours to a WeatherYear: counts what is missing, refuses what cannot be, fills and computes what may be, and says each.
 * The table's arrays become the year's.
 */
export function assembleYear(source: Source, table: HourTable, earlier: readonly Issue[]): Checked<WeatherYear> {
  const assembly: Assembly = { source, table, issues: [...earlier], missingHours: {} };
  assembly.issues.push(...mendRainUnit(table.values.rain_mm, placeInFile(assembly, "rain_mm")));
  for (const column of weatherColumns) {
    const missing = countMissing(table.values[column]);
    if (missing > 0) assembly.missingHours[column] = missing;
  }
  reportBadCells(assembly);
  if (!absentRows(assembly)) return { ok: false, issues: assembly.issues };
  doubtUnits(assembly);
  const sun = sunOfYear(source.place);
  const temperatureWhole = mendColumn(assembly, "temperature_C");
  const humidityWhole = temperatureWhole && mendHumidity(assembly);
  mendPressure(assembly);
  const windWhole = mendWind(assembly);
  const sunWhole = mendSun(assembly, sun);
  if (!humidityWhole || !windWhole || !sunWhole || assembly.issues.some((issue) => issue.severity === "error"))
    return { ok: false, issues: assembly.issues };
  mendCloud(assembly, sun);
  mendInfrared(assembly);
  mendRain(assembly);
  doubtPlace(assembly, sun);
  return {
    ok: true,
    issues: assembly.issues,
    value: {
      place: source.place,
      kind: source.kind,
      label: source.label,
      sha256: source.sha256,
      hours: hoursOfYear,
      ...table.values,
      missingHours: assembly.missingHours,
      issues: assembly.issues,
    },
  };
}

/** Hours for which the file has no row at all. One message instead of one a column, and a special one for a file cut short. */
function absentRows(assembly: Assembly): boolean {
  const { rows } = assembly.table;
  const present = Float64Array.from(rows, (count) => (count > 0 ? 1 : NaN));
  const gaps = gapsOf(present);
  const long = gaps.filter((gap) => gap.length > longestFilledGap_h);
  const missing = gaps.reduce((sum, gap) => sum + gap.length, 0);
  if (long.length === 0) {
    if (missing > 0)
      warn(
        assembly,
        "rows",
        `${missing} hours have no row: ${listGaps(gaps)}.`,
        "Their values were filled by straight lines.",
      );
    return true;
  }
  const only = long.length === 1 ? long[0]! : null;
  const cut = only !== null && only.first + only.length >= hoursOfYear && only.first > 0;
  const lastLine = assembly.table.lines.reduce((most, line) => Math.max(most, line), 0);
  refuse(
    assembly,
    cut ? `line ${lastLine}` : "rows",
    cut
      ? `The file ends early: ${only.length} hours from ${listGaps([only])} have no row.`
      : `${missing} of ${hoursOfYear} hours have no row: ${listGaps(long)}.`,
    `A year has ${hoursOfYear} hourly rows. Get the complete file; gaps up to ${longestFilledGap_h} h are filled.`,
  );
  return false;
}

/** Fields that held text or numbers out of range, one warning a column. */
function reportBadCells(assembly: Assembly): void {
  const byColumn = new Map<WeatherColumn, { line: number; text: string; count: number }>();
  for (const cell of assembly.table.badCells) {
    const seen = byColumn.get(cell.column);
    if (seen) seen.count++;
    else byColumn.set(cell.column, { line: cell.line, text: cell.text, count: 1 });
  }
  const cut = assembly.table.badCellCount > assembly.table.badCells.length;
  for (const [column, { line, text, count }] of byColumn) {
    const rule = columnRules[column];
    const more = count > 1 ? ` (and ${count - 1}${cut ? " or more" : ""} like it)` : "";
    warn(
      assembly,
      `line ${line}, ${placeInFile(assembly, column)}`,
      `"${text}" is no ${rule.title} from ${rule.low} to ${rule.high}${rule.unit ? ` ${rule.unit}` : ""}${more}; it counts as missing.`,
      "Correct the field in the file.",
    );
  }
}
