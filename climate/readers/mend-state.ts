import { dewPoint_C } from "../air/saturation.ts";
import { relativeHumidity, standardPressure_Pa, vapourPressure_Pa } from "../air/moist-air.ts";
import { saturationPressure_Pa } from "../air/saturation.ts";
import { hoursOfYear } from "../calendar.ts";
import type { WeatherColumn } from "../weather-year.ts";
import { countMissing, listGaps, placeInFile, refuse, warn, type Assembly } from "./assembly.ts";
import { columnRules } from "./columns.ts";
import { fillGaps, longestFilledGap_h } from "./gaps.ts";

/** Fills short gaps of a column and lists them; refuses long ones. True when the column is whole. */
export function mendColumn(assembly: Assembly, column: WeatherColumn): boolean {
  const values = assembly.table.values[column];
  const title = columnRules[column].title;
  const missing = countMissing(values);
  if (missing === hoursOfYear) {
    refuse(
      assembly,
      placeInFile(assembly, column),
      `The file has no ${title}.`,
      `Give a file with a ${title} column, or choose a place.`,
    );
    return false;
  }
  const { filled, open } = fillGaps(values, longestFilledGap_h, column === "windDirection_deg");
  if (filled.length > 0)
    warn(
      assembly,
      placeInFile(assembly, column, filled[0]!.first),
      `${title}: ${filled.length === 1 ? "a gap was" : `${filled.length} gaps were`} filled by straight lines: ${listGaps(filled)}.`,
      "Check these hours if they matter.",
    );
  if (open.length === 0) return true;
  refuse(
    assembly,
    placeInFile(assembly, column, open[0]!.first),
    `${title} is missing for longer than ${longestFilledGap_h} h: ${listGaps(open)}.`,
    `Fill these hours in the file (gaps up to ${longestFilledGap_h} h are filled here), take another file, or choose a place.`,
  );
  return false;
}

/**
 * Dew point and relative humidity. The dew point leads (steadier, and what stations report); hours without it take it from the
 * humidity field. Relative humidity is then computed from dew point, so the two always agree.
 */
export function mendHumidity(assembly: Assembly): boolean {
  const { temperature_C, dewPoint_C: dew, relativeHumidity: humidity } = assembly.table.values;
  let fromHumidity = 0;
  let apart = 0;
  for (let k = 0; k < hoursOfYear; k++) {
    const t = temperature_C[k]!;
    const rh = humidity[k]!;
    if (Number.isNaN(t)) continue;
    if (Number.isNaN(dew[k]!)) {
      if (!(rh > 0)) continue;
      dew[k] = dewPoint_C(vapourPressure_Pa(Math.min(1, rh), t));
      fromHumidity++;
    } else if (rh > 0 && Math.abs(relativeHumidity(saturationPressure_Pa(dew[k]!), t) - rh) > 0.1) apart++;
  }
  const hadDewPoint = fromHumidity < hoursOfYear - countMissing(dew);
  if (fromHumidity > 0 && hadDewPoint)
    warn(
      assembly,
      placeInFile(assembly, "dewPoint_C"),
      `Dew point was missing in ${fromHumidity} hours and was computed from relative humidity.`,
      "Nothing to do if the humidity column can be trusted.",
    );
  if (apart > 0)
    warn(
      assembly,
      placeInFile(assembly, "relativeHumidity"),
      `In ${apart} hours the humidity column differs by more than 10 % from the dew point; the dew point was used throughout.`,
      "Nothing to do: dew point is the steadier record.",
    );
  const whole = mendColumn(assembly, "dewPoint_C");
  let above = 0;
  for (let k = 0; k < hoursOfYear; k++) {
    const t = temperature_C[k]!;
    if (dew[k]! > t) {
      if (dew[k]! > t + 0.5) above++;
      dew[k] = t;
    }
    humidity[k] = Math.min(1, relativeHumidity(saturationPressure_Pa(dew[k]!), t));
  }
  if (above > 0)
    warn(
      assembly,
      placeInFile(assembly, "dewPoint_C"),
      `In ${above} hours the dew point stood more than 0.5 K above the dry-bulb; it was lowered to the dry-bulb (100 % humidity).`,
      "Check the humidity record if there are many such hours.",
    );
  return whole;
}

/** Pressure is filled from the elevation: it hardly matters to a wall. */
export function mendPressure(assembly: Assembly): void {
  const values = assembly.table.values.pressure_Pa;
  const { filled, open } = fillGaps(values);
  const usual = standardPressure_Pa(assembly.source.place.elevation_m);
  for (const gap of open) for (let k = 0; k < gap.length; k++) values[(gap.first + k) % hoursOfYear] = usual;
  const missing = assembly.missingHours.pressure_Pa ?? 0;
  if (filled.length + open.length > 0)
    warn(
      assembly,
      placeInFile(assembly, "pressure_Pa"),
      `Pressure was missing in ${missing} hours; short gaps were filled by straight lines, longer ones with ${Math.round(usual)} Pa, the standard at ${assembly.source.place.elevation_m} m.`,
      "Nothing to do: a wall hardly feels it.",
    );
}

/** Wind: speed must be there; the direction of a calm hour says nothing, so it may be missing in calms. */
export function mendWind(assembly: Assembly): boolean {
  const { windSpeed_ms, windDirection_deg } = assembly.table.values;
  const speedWhole = mendColumn(assembly, "windSpeed_ms");
  if (assembly.source.kind === "logged" && (assembly.missingHours.windDirection_deg ?? 0) === hoursOfYear) {
    windDirection_deg.fill(0);
    warn(
      assembly,
      placeInFile(assembly, "windDirection_deg"),
      "The log has no wind direction: wind and driving rain are taken as from the north.",
      "Add a wind direction column, or turn the face to the north for the wettest case.",
    );
    return speedWhole;
  }
  let last = NaN;
  for (let k = 0; k < hoursOfYear; k++) {
    if (!Number.isNaN(windDirection_deg[k]!)) last = windDirection_deg[k]!;
    else if (windSpeed_ms[k]! < 0.5 && !Number.isNaN(last)) windDirection_deg[k] = last;
  }
  return mendColumn(assembly, "windDirection_deg") && speedWhole;
}

/** Rain that is missing is no gap: it stays out, is counted, and monthly normals can be laid over it. */
export function mendRain(assembly: Assembly): void {
  const rain = assembly.table.values.rain_mm;
  const missing = countMissing(rain);
  let total = 0;
  for (let k = 0; k < hoursOfYear; k++) {
    if (Number.isNaN(rain[k]!)) rain[k] = 0;
    total += rain[k]!;
  }
  if (missing > 0)
    warn(
      assembly,
      placeInFile(assembly, "rain_mm"),
      missing === hoursOfYear
        ? "The file has no rain: the year counts as dry."
        : `Rain is missing in ${missing} of ${hoursOfYear} hours and counts as none there; what is left sums to ${Math.round(total)} mm.`,
      "Lay the monthly rain of a place over the year.",
    );
}
