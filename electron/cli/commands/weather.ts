import { weatherReport, type WeatherReport, type WeatherYear } from "../../../climate/index.ts";
import { weatherOf } from "../../../solver/index.ts";
import { exit, type Command } from "../command.ts";
import { readInput } from "../read-input.ts";

interface Row {
  readonly what: string;
  readonly unit: string;
  readonly series: (year: WeatherYear) => Float64Array;
}

const rows: readonly Row[] = [
  { what: "Temperature", unit: "degC", series: (year) => year.temperature_C },
  { what: "Dew point", unit: "degC", series: (year) => year.dewPoint_C },
  { what: "Relative humidity", unit: "1", series: (year) => year.relativeHumidity },
  { what: "Pressure", unit: "Pa", series: (year) => year.pressure_Pa },
  { what: "Global horizontal", unit: "W/m2", series: (year) => year.globalHorizontal_Wm2 },
  { what: "Direct normal", unit: "W/m2", series: (year) => year.directNormal_Wm2 },
  { what: "Diffuse horizontal", unit: "W/m2", series: (year) => year.diffuseHorizontal_Wm2 },
  { what: "Sky infrared", unit: "W/m2", series: (year) => year.skyInfrared_Wm2 },
  { what: "Wind speed", unit: "m/s", series: (year) => year.windSpeed_ms },
  { what: "Cloud cover", unit: "1", series: (year) => year.cloudCover },
  { what: "Rain", unit: "mm/h", series: (year) => year.rain_mm },
];

function facts(series: Float64Array): { min: number; mean: number; max: number; sum: number } {
  const sum = series.reduce((total, value) => total + value, 0);
  const min = series.reduce((least, value) => Math.min(least, value), Infinity);
  const max = series.reduce((most, value) => Math.max(most, value), -Infinity);
  return { min, mean: sum / series.length, max, sum };
}

function yearJson(year: WeatherYear): object {
  const { place, kind, label, sha256, hours, issues } = year;
  const series = Object.fromEntries(rows.map(({ what, unit, series: of }) => [what, { unit, ...facts(of(year)) }]));
  const { columns, annual, monthly, rain, climateZone } = weatherReport(year);
  const report = { columns, annual, monthly, rain, climateZone };
  return { format: "wallyear-weather", formatVersion: 1, label, kind, sha256, place, hours, series, report, issues };
}

function yearText(year: WeatherYear): string {
  const { place } = year;
  const hours = place.utcOffset_h;
  const head = [
    `${year.label} (${year.kind})`,
    `latitude ${place.latitude_deg}, longitude ${place.longitude_deg}, ${place.elevation_m} m above the sea, UTC${hours < 0 ? "" : "+"}${hours}`,
    `${year.hours} hours; SHA-256 ${year.sha256}`,
    "",
    `${"".padEnd(20)}${"least".padStart(10)}${"mean".padStart(10)}${"greatest".padStart(10)}`,
  ];
  const figure = (value: number): string => value.toFixed(Math.abs(value) >= 1000 ? 0 : 2).padStart(10);
  const body = rows.map(({ what, unit, series }) => {
    const { min, mean, max } = facts(series(year));
    return `${what.padEnd(20)}${figure(min)}${figure(mean)}${figure(max)}  ${unit}`;
  });
  return [...head, ...body, "", ...contents(weatherReport(year))].join("\n");
}

/** What the year contains, and what in it is doubtful. */
function contents({ annual, rain, climateZone, columns }: WeatherReport): string[] {
  const partial = columns.filter(({ complete }) => complete < 1);
  const { nearest } = rain;
  return [
    `Degree days: heating ${annual.heating18_Kd.toFixed(0)} K d below 18 degC, cooling ${annual.cooling10_Kd.toFixed(0)} K d above 10 degC`,
    `Climate zone by these hours: ${climateZone.computed}. ${climateZone.advice}`,
    `Rain in the year: ${rain.total_mm.toFixed(0)} mm, ${(100 * rain.shareOfNormal).toFixed(0)} % of the normal of ${nearest.name} (${nearest.normal_mm.toFixed(0)} mm, ${nearest.distance_km.toFixed(0)} km away)`,
    ...(rain.doubt === null ? [] : [`Doubt about the rain: ${rain.doubt}`]),
    partial.length === 0
      ? "Every column is complete in the source."
      : `Not complete in the source: ${partial.map(({ title, complete }) => `${title} ${(100 * complete).toFixed(1)} %`).join(", ")}`,
  ];
}

/** Says what a weather file, or a built-in place, holds before it is used. */
export const weather: Command = {
  name: "weather",
  takes: "FILE|CITY [--json]",
  summary: "say what a weather file or a built-in place holds",
  positionals: { least: 1, most: 1 },
  options: { json: { type: "boolean", hint: "one JSON document" } },
  async run(given, output) {
    const name = given.positionals[0]!;
    const looksLikePlace = /^[a-z0-9-]+$/.test(name);
    const text = await readInput(name, "FILE");
    if (!text.ok && !looksLikePlace) {
      output.issues(text.issues);
      return exit.issues;
    }
    const read = text.ok ? weatherOf({ file: name }, { [name]: text.value }) : weatherOf({ city: name }, {});
    if (!read.ok) {
      output.issues(read.issues);
      return exit.issues;
    }
    if (given.flag("json")) output.result(JSON.stringify(yearJson(read.value), null, 2));
    else {
      output.result(yearText(read.value));
      output.issues(read.value.issues);
    }
    return exit.done;
  },
};
