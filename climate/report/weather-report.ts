import { daysInMonth, firstDayOfMonth, hoursOfYear, monthlyMeans, stampOfHour } from "../calendar.ts";
import type { Issue } from "../issue.ts";
import { nearestPlace } from "../places/find-places.ts";
import { annualRain_mm, placeName } from "../places/place-normals.ts";
import { columnRules, weatherColumns } from "../readers/columns.ts";
import type { Place, WeatherColumn, WeatherYear } from "../weather-year.ts";
import { computedClimateZone } from "./climate-zone.ts";
import { degreeDays } from "./degree-days.ts";

export interface ColumnReport {
  readonly column: WeatherColumn;
  readonly title: string;
  readonly unit: string;
  /** Share of hours that the source had, 0..1; for a synthetic year 1. */
  readonly complete: number;
  readonly mean: number;
  readonly low: number;
  readonly lowAt: string;
  readonly high: number;
  readonly highAt: string;
}

export interface MonthlyReport {
  readonly temperature_C: readonly number[];
  readonly warmestHour_C: readonly number[];
  readonly coldestHour_C: readonly number[];
  readonly dewPoint_C: readonly number[];
  readonly global_kWhm2: readonly number[];
  readonly wind_ms: readonly number[];
  readonly rain_mm: readonly number[];
  readonly heating18_Kd: readonly number[];
  readonly heating65F_Kd: readonly number[];
  readonly cooling10_Kd: readonly number[];
}

export interface RainReport {
  readonly total_mm: number;
  readonly missingHours: number;
  /** The nearest embedded place and its normal year. */
  readonly nearest: {
    readonly id: string;
    readonly name: string;
    readonly distance_km: number;
    readonly normal_mm: number;
    readonly source: string;
  };
  /** Total over the nearest normal. */
  readonly shareOfNormal: number;
  readonly doubt: string | null;
}

export interface WeatherReport {
  readonly label: string;
  readonly kind: WeatherYear["kind"];
  readonly sha256: string;
  readonly place: Place;
  readonly columns: readonly ColumnReport[];
  readonly annual: {
    readonly temperature_C: number;
    readonly dewPoint_C: number;
    readonly relativeHumidity: number;
    readonly global_kWhm2: number;
    readonly wind_ms: number;
    readonly rain_mm: number;
    readonly skyInfrared_Wm2: number;
    readonly heating18_Kd: number;
    readonly cooling10_Kd: number;
  };
  readonly monthly: MonthlyReport;
  readonly rain: RainReport;
  /** Advice only: the code assigns zones by county. */
  readonly climateZone: { readonly computed: string; readonly advice: string };
  readonly repairs: readonly Issue[];
}

/** Nearer than this the nearest place's normal is held against the year's rain [km]. Common practice, no source. */
const comparableWithin_km = 150;

/** What this year contains: shown before it is used. */
export function weatherReport(year: WeatherYear): WeatherReport {
  const mean = (values: Float64Array): number => values.reduce((sum, value) => sum + value, 0) / values.length;
  const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
  const monthSums = (values: Float64Array): number[] => monthlyMeans(values).map((m, k) => m * daysInMonth[k]! * 24);
  const degrees = degreeDays(year.temperature_C);
  const monthly: MonthlyReport = {
    temperature_C: monthlyMeans(year.temperature_C),
    warmestHour_C: extremes(year.temperature_C, Math.max),
    coldestHour_C: extremes(year.temperature_C, Math.min),
    dewPoint_C: monthlyMeans(year.dewPoint_C),
    global_kWhm2: monthSums(year.globalHorizontal_Wm2).map((wh) => wh / 1000),
    wind_ms: monthlyMeans(year.windSpeed_ms),
    rain_mm: monthSums(year.rain_mm),
    ...degrees,
  };
  const rain = rainReport(year, sum(monthly.rain_mm));
  const zone = zoneOf(year, monthly, rain);
  return {
    label: year.label,
    kind: year.kind,
    sha256: year.sha256,
    place: year.place,
    columns: weatherColumns.map((column) => columnReport(year, column)),
    annual: {
      temperature_C: mean(year.temperature_C),
      dewPoint_C: mean(year.dewPoint_C),
      relativeHumidity: mean(year.relativeHumidity),
      global_kWhm2: sum(monthly.global_kWhm2),
      wind_ms: mean(year.windSpeed_ms),
      rain_mm: sum(monthly.rain_mm),
      skyInfrared_Wm2: mean(year.skyInfrared_Wm2),
      heating18_Kd: sum(monthly.heating18_Kd),
      cooling10_Kd: sum(monthly.cooling10_Kd),
    },
    monthly,
    rain,
    climateZone: zone,
    repairs: year.issues,
  };
}

function columnReport(year: WeatherYear, column: WeatherColumn): ColumnReport {
  const values = year[column];
  const { title, unit } = columnRules[column];
  let low = 0;
  let high = 0;
  let total = 0;
  for (let k = 0; k < values.length; k++) {
    if (values[k]! < values[low]!) low = k;
    if (values[k]! > values[high]!) high = k;
    total += values[k]!;
  }
  return {
    column,
    title,
    unit,
    complete: 1 - (year.missingHours?.[column] ?? 0) / hoursOfYear,
    mean: total / values.length,
    low: values[low]!,
    lowAt: stampOfHour(low),
    high: values[high]!,
    highAt: stampOfHour(high),
  };
}

function extremes(values: Float64Array, pick: (...values: number[]) => number): number[] {
  return daysInMonth.map((days, month) =>
    pick(...values.subarray(firstDayOfMonth[month]! * 24, (firstDayOfMonth[month]! + days) * 24)),
  );
}

function rainReport(year: WeatherYear, total_mm: number): RainReport {
  const { place, distance_km } = nearestPlace(year.place.latitude_deg, year.place.longitude_deg);
  const normal_mm = annualRain_mm(place);
  const missingHours = year.missingHours?.rain_mm ?? 0;
  const share = total_mm / normal_mm;
  const against = `${Math.round(total_mm)} mm against a normal year's ${Math.round(normal_mm)} mm at ${placeName(place)}, ${Math.round(distance_km)} km away`;
  let doubt: string | null = null;
  const comparable = distance_km <= comparableWithin_km;
  if (comparable && share > 1.5) doubt = `Rain is far above normal: ${against}. Check its unit.`;
  else if (missingHours > 0)
    doubt = `Rain is missing in ${missingHours} hours: ${against}. Lay monthly rain over the year.`;
  else if (comparable && share < 0.7) doubt = `Rain is far below normal: ${against}. Lay monthly rain over the year.`;
  return {
    total_mm,
    missingHours,
    nearest: { id: place.id, name: placeName(place), distance_km, normal_mm, source: place.flags.rain },
    shareOfNormal: share,
    doubt,
  };
}

function zoneOf(year: WeatherYear, monthly: MonthlyReport, rain: RainReport): WeatherReport["climateZone"] {
  const usable = rain.missingHours <= 24 && rain.total_mm > 0;
  const { place, distance_km } = nearestPlace(year.place.latitude_deg, year.place.longitude_deg);
  const fromNormals = !usable && distance_km <= comparableWithin_km;
  const computed = computedClimateZone({
    heating65F_Kd: monthly.heating65F_Kd.reduce((a, b) => a + b, 0),
    cooling10_Kd: monthly.cooling10_Kd.reduce((a, b) => a + b, 0),
    temperature_C: monthly.temperature_C,
    rain_mm: usable ? monthly.rain_mm : fromNormals ? place.rain_mm : null,
    latitude_deg: year.place.latitude_deg,
  });
  const letter = usable
    ? ""
    : fromNormals
      ? ` The letter follows the normal rain of ${placeName(place)}.`
      : " Without rain no moisture letter can be given.";
  return {
    computed,
    advice: `Computed from this year by the rules of 2021; the code assigns zones by county, which decides.${letter}`,
  };
}
