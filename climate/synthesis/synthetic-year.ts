import { relativeHumidity, standardPressure_Pa } from "../air/moist-air.ts";
import { saturationPressure_Pa } from "../air/saturation.ts";
import type { Issue } from "../issue.ts";
import { placeName, type PlaceNormals } from "../places/place-normals.ts";
import { sha256Hex } from "../sha256.ts";
import { cloudFromClearness } from "../sun/cloud-from-clearness.ts";
import { skyInfrared_Wm2 } from "../sun/sky-longwave.ts";
import type { WeatherYear } from "../weather-year.ts";
import { monthOfDay } from "../calendar.ts";
import { dailyClearness } from "./clearness.ts";
import { hourlyDewPoint } from "./dew-point.ts";
import { hourlySun } from "./radiation.ts";
import { hourlyRain, rainOfWetDay_mm } from "./rain.ts";
import { fourDecimals, rounded, sixDecimals } from "./rounded.ts";
import { randomOf } from "./random.ts";
import { seasonOf, usualDayToDay } from "./seasons.ts";
import { skyOfYear } from "./spencer-sun.ts";
import { dailyAnomaly, hourlyTemperature, type MonthlyTemperature } from "./temperature.ts";
import { hourlyWind } from "./wind.ts";

export interface SyntheticOptions {
  readonly kind: "typical" | "cold" | "wet";
  /** Any whole number >= 0; the same seed gives the same year. */
  readonly seed: number;
}

/** How much colder the three winter months of a cold year are [K]; dew point falls with them. A choice, about one winter in ten. */
export const coldWinter_K = -3;
/**
 * Rain of a wet year over the normal. Annual sums of a humid temperate place scatter by about 20 % (common practice, no source;
 * Seattle 2012 to 2015: 828 to 1233 mm against a normal of 952), so the wettest year in ten has about 1 + 1.28 x 0.2 times the normal.
 */
export const wetYearRain = 1.25;
/** Raised when the recipe changes, so that hashes tell the years apart. */
const recipeVersion = 1;

/**
 * A plausible hourly year from a place's monthly normals: labelled synthetic, never a design year for approval.
 *
 * Deterministic: integer random numbers, and every series rounded far above the last bit of the Math functions, so the same seed gives
 * the same year to the bit in the window, a worker and the command line, on every machine.
 * @throws RangeError for a seed that is no whole number >= 0
 */
export function syntheticYear(place: PlaceNormals, options: SyntheticOptions): WeatherYear {
  const { kind, seed } = options;
  if (!Number.isSafeInteger(seed) || seed < 0) throw new RangeError(`seed must be a whole number >= 0, got ${seed}`);
  const latitude = place.latitude_deg;
  const winter = (month: number): boolean => kind === "cold" && seasonOf(month, latitude) === 0;
  const colder = (value: number, month: number): number => value + (winter(month) ? coldWinter_K : 0);
  const usual = usualDayToDay(latitude);
  const normals: MonthlyTemperature = {
    mean_C: place.temperature_C.map(colder),
    range_K: place.dailyMaximum_C.map((maximum, month) => Math.max(0.5, maximum - place.dailyMinimum_C[month]!)),
    deviation_K:
      place.dayToDayDeviation_K ?? place.temperature_C.map((_, month) => usual[seasonOf(month, latitude)]![0]),
    correlation:
      place.dayToDayCorrelation ?? place.temperature_C.map((_, month) => usual[seasonOf(month, latitude)]![1]),
  };
  const random = randomOf(seed);
  const sky = skyOfYear(latitude, place.longitude_deg, place.utcOffset_h);
  const clearness = dailyClearness(place.global_kWhm2day, sky, random);
  const anomaly = dailyAnomaly(normals, clearness, latitude, random);
  const temperature_C = rounded(hourlyTemperature(normals, anomaly, clearness, sky, latitude, random), fourDecimals);
  const dewPoint_C = rounded(
    hourlyDewPoint(place.dewPoint_C.map(colder), anomaly, temperature_C, latitude, random),
    fourDecimals,
  );
  const sun = hourlySun(place.global_kWhm2day, clearness, sky, random);
  const monthlyRain = place.rain_mm.map((mm) => mm * (kind === "wet" ? wetYearRain : 1));
  const rain_mm = rounded(
    hourlyRain(monthlyRain, rainOfWetDay_mm(place.climateZone, latitude), clearness.daily, random),
    sixDecimals,
  );
  const windSpeed_ms = rounded(hourlyWind(place.wind_ms, rain_mm, latitude, random), fourDecimals);
  const windDirection_deg = Float64Array.from({ length: 8760 }, () => 360 * random.uniform());
  const cloudCover = Float64Array.from({ length: 8760 }, (_, k) => {
    const day = Math.floor(k / 24);
    const month = monthOfDay(day);
    if (clearness.monthly[month]! > 0) return cloudFromClearness(clearness.daily[day]!);
    return (place.cloudTenths?.[month] ?? 6) / 10;
  });
  const words = { typical: "typical year", cold: "cold year", wet: "wet year" }[kind];
  return {
    place: {
      name: placeName(place),
      latitude_deg: latitude,
      longitude_deg: place.longitude_deg,
      utcOffset_h: place.utcOffset_h,
      elevation_m: place.elevation_m,
    },
    kind: "synthetic",
    label: `${placeName(place)}, synthetic ${words} (seed ${seed})`,
    sha256: sha256Hex(JSON.stringify({ recipe: recipeVersion, place, kind, seed })),
    hours: 8760,
    temperature_C,
    dewPoint_C,
    relativeHumidity: rounded(
      dewPoint_C.map((dew, k) => relativeHumidity(saturationPressure_Pa(dew), temperature_C[k]!)),
      sixDecimals,
    ),
    pressure_Pa: rounded(new Float64Array(8760).fill(standardPressure_Pa(place.elevation_m)), fourDecimals),
    skyInfrared_Wm2: rounded(
      temperature_C.map((t, k) => skyInfrared_Wm2(t, dewPoint_C[k]!, cloudCover[k]!)),
      fourDecimals,
    ),
    globalHorizontal_Wm2: rounded(sun.global_Wm2, fourDecimals),
    directNormal_Wm2: rounded(sun.directNormal_Wm2, fourDecimals),
    diffuseHorizontal_Wm2: rounded(sun.diffuse_Wm2, fourDecimals),
    windSpeed_ms,
    windDirection_deg,
    cloudCover,
    rain_mm,
    issues: whatItIs(place, kind),
  };
}

function whatItIs(place: PlaceNormals, kind: SyntheticOptions["kind"]): Issue[] {
  const issues: Issue[] = [
    {
      path: "weather",
      severity: "warning",
      message: `This year of ${placeName(place)} is synthetic: invented hour by hour from monthly normals. Cold snaps are 1 to 3 K too mild and storms are missing.`,
      remedy: "Use an hourly file of the place for a decision; a typical or synthetic year is no moisture design year.",
    },
    {
      path: "weather.windDirection_deg",
      severity: "warning",
      message: "Wind comes from all directions alike, so all faces get about the same rain.",
      remedy: "Use an hourly file to see which face is the wettest.",
    },
  ];
  if (kind === "cold")
    issues.push({
      path: "weather",
      severity: "warning",
      message: `Cold year: the three winter months are ${-coldWinter_K} K colder than normal, dew point with them.`,
      remedy: "Compare with the typical year.",
    });
  if (kind === "wet")
    issues.push({
      path: "weather",
      severity: "warning",
      message: `Wet year: every month has ${Math.round((wetYearRain - 1) * 100)} % more rain than normal, about the wettest year in ten of a humid climate.`,
      remedy: "Compare with the typical year.",
    });
  const remembered = Object.entries<string>({ ...place.flags }).filter(([, flag]) => flag.startsWith("MEMORY"));
  if (remembered.length > 0)
    issues.push({
      path: "weather",
      severity: "warning",
      message: `Normals given from memory, not checked against a record: ${remembered.map(([quantity]) => quantity).join(", ")}.`,
      remedy: "Check them against the weather service's normals.",
    });
  return issues;
}
