import { hoursOfYear } from "../calendar.ts";
import { sunAtHour } from "../sun/sun-position.ts";
import { placeInFile, refuse, warn, type Assembly } from "./assembly.ts";
import type { SunOfYear } from "./mend-radiation.ts";

/** Longitude against time zone: a clock more than this far from the sun is a mistake, not politics [h]. */
const widestClock_h = 2.6;

/** Warns where longitude, time zone and the sun columns contradict each other. */
export function doubtPlace(assembly: Assembly, sun: SunOfYear): void {
  const { place } = assembly.source;
  const global = assembly.table.values.globalHorizontal_Wm2;
  const clock = place.longitude_deg / 15 - place.utcOffset_h;
  if (Math.abs(clock) > widestClock_h) {
    const signTurned = Math.abs(-place.longitude_deg / 15 - place.utcOffset_h) <= widestClock_h;
    warn(
      assembly,
      "place",
      `Longitude ${place.longitude_deg} and time zone ${place.utcOffset_h} h do not go together${signTurned ? "; with the other sign of one of them they would" : ""}.`,
      "West is negative for both. Correct the line of the place at the head of the file.",
    );
  }
  let weight = 0;
  let moment = 0;
  let noon = 0;
  let dark = 0;
  let darkMost = 0;
  for (let k = 0; k < hoursOfYear; k++) {
    const g = global[k]!;
    if (!(g > 0)) continue;
    weight += g;
    moment += g * ((k % 24) + 0.5);
    if (sun.cosZenith[k]! <= 0 && sunAtHour(place, k).cosZenith <= 0 && sunAtHour(place, k + 1).cosZenith <= 0) {
      dark++;
      darkMost = Math.max(darkMost, g);
    }
    noon += g * (12 - clock);
  }
  if (weight === 0) return;
  const shift = (moment - noon) / weight;
  if (Math.abs(shift) > 0.8)
    warn(
      assembly,
      "place",
      `The sun in the file stands highest ${Math.abs(shift).toFixed(1)} h ${shift > 0 ? "later" : "earlier"} than the place and time zone say.`,
      "Check longitude (west negative), time zone, and that the file runs on local standard time, hours counted at their end.",
    );
  if (dark > 60 || darkMost > 50)
    warn(
      assembly,
      placeInFile(assembly, "globalHorizontal_Wm2"),
      `In ${dark} hours the file has sun (up to ${Math.round(darkMost)} W/m2) while the sun is down at this place.`,
      "Check coordinates and time zone. The light counts as diffuse.",
    );
  doubtHemisphere(assembly, global);
}

function doubtHemisphere(assembly: Assembly, global: Float64Array): void {
  const latitude = assembly.source.place.latitude_deg;
  if (Math.abs(latitude) < 25) return;
  const sum = (from: number, to: number): number => {
    let total = 0;
    for (let k = from * 24; k < to * 24; k++) total += global[k]!;
    return total;
  };
  const northern = sum(120, 212) > sum(304, 365) * 1.0;
  if (northern !== latitude > 0)
    warn(
      assembly,
      "place",
      `The file has its summer in ${northern ? "June" : "December"}, but latitude ${latitude} lies ${latitude > 0 ? "north" : "south"}.`,
      "South is negative. Correct the latitude at the head of the file.",
    );
}

/** The driest deserts average some 20 % (common practice, no source). */
const driestYear = 0.05;
/** Yearly means above this are known from capes and mountain tops only (common practice, no source). */
const windyYear_ms = 8.5;
/** Cherrapunji, August 1860 to July 1861: 26,470 mm. World Meteorological Organization, Archive of Weather and Climate Extremes (MEMORY). */
const wettestYear_mm = 26_500;

/** Refuses columns that are plainly in another unit: nothing is worse than a silent wrong number. */
export function doubtUnits(assembly: Assembly): void {
  const { temperature_C, dewPoint_C, relativeHumidity, windSpeed_ms, rain_mm } = assembly.table.values;
  const temperature = spread(temperature_C);
  const elevation = assembly.source.place.elevation_m;
  if (temperature.mean > 35)
    refuse(
      assembly,
      placeInFile(assembly, "temperature_C"),
      `Dry-bulb averages ${temperature.mean.toFixed(1)}, warmer than any place on Earth in degC; it looks like degrees Fahrenheit.`,
      "Give temperatures in degC.",
    );
  const dew = spread(dewPoint_C);
  if (dew.mean > 29)
    refuse(
      assembly,
      placeInFile(assembly, "dewPoint_C"),
      `Dew point averages ${dew.mean.toFixed(1)} degC.`,
      "Give dew point in degC, -50 to 30.",
    );
  const humidity = spread(relativeHumidity);
  if (humidity.count > 0 && humidity.mean < driestYear)
    (dew.count > 0 ? warn : refuse)(
      assembly,
      placeInFile(assembly, "relativeHumidity"),
      `Relative humidity averages ${(100 * humidity.mean).toFixed(2)} %, drier than any desert; it looks like a fraction given as percent.`,
      'Give humidity in %, or write "fraction" as its unit in a log.',
    );
  const wind = spread(windSpeed_ms);
  if (wind.mean > 14)
    refuse(
      assembly,
      placeInFile(assembly, "windSpeed_ms"),
      `Wind averages ${wind.mean.toFixed(1)} m/s, a gale all year; it looks like km/h or knots.`,
      "Give wind speed in m/s.",
    );
  else if (wind.mean > windyYear_ms)
    warn(
      assembly,
      placeInFile(assembly, "windSpeed_ms"),
      `Wind averages ${wind.mean.toFixed(1)} m/s, more than at nearly all stations; in miles an hour or knots that would be usual.`,
      "Check that wind speed is in m/s: it drives rain, films and air leaks.",
    );
  const rain = spread(rain_mm);
  const fallen_mm = rain.mean * rain.count;
  if (fallen_mm > wettestYear_mm)
    refuse(
      assembly,
      placeInFile(assembly, "rain_mm"),
      `Rain sums to ${Math.round(fallen_mm)} mm, more than the wettest place on Earth gets in its wettest year; it is not in mm.`,
      "Give rain in mm (1 in. is 25.4 mm), or take the column out and lay monthly rain over the year.",
    );
  if (temperature.high - temperature.low === 0)
    refuse(
      assembly,
      placeInFile(assembly, "temperature_C"),
      "Dry-bulb never changes.",
      "Check that this is hourly weather.",
    );
  if (elevation < -450 || elevation > 6000)
    warn(assembly, "place", `The elevation is ${elevation} m.`, "Give metres above sea level, -450 to 6000.");
}

function spread(values: Float64Array): { mean: number; low: number; high: number; count: number } {
  let sum = 0;
  let count = 0;
  let low = Infinity;
  let high = -Infinity;
  for (const value of values)
    if (!Number.isNaN(value)) {
      sum += value;
      count++;
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
  return { mean: count > 0 ? sum / count : 0, low, high, count };
}
