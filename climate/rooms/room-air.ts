import { saturationPressure_Pa } from "../air/saturation.ts";
import { betweenMonths, monthlyMeans, stampOfHour, trailingMean } from "../calendar.ts";
import type { Checked, Issue } from "../issue.ts";
import type { WeatherYear } from "../weather-year.ts";
import * as rules from "./room-rules.ts";
import type { LoggedAir, Monthly, RoomAir, RoomSetting } from "./room-setting.ts";

type Hourly = (k: number) => number;

/**
 * Room air at the end of every hour of a weather year.
 *
 * Daily means are those of the 24 hours that end with the hour; monthly values are joined from mid-month to mid-month.
 * Relative humidity is over liquid water; air wetter than saturation is an error of the setting and is held at 100 % with a warning.
 */
export function roomAir(room: RoomSetting, weather: WeatherYear, logged?: LoggedAir): Checked<RoomAir> {
  const faults = faultsOf(room, weather, logged);
  if (faults.length > 0) return { ok: false, issues: faults };
  const n = weather.hours;
  const daily = trailingMean(weather.temperature_C, 24);
  const { temperature, pressure } = courses(room, weather, daily, logged);
  const temperature_C = new Float64Array(n);
  const vapourPressure_Pa = new Float64Array(n);
  let wet = 0;
  let firstWet = -1;
  for (let k = 0; k < n; k++) {
    const t = temperature(k);
    const most = saturationPressure_Pa(t);
    let p = pressure(k, t, most);
    if (p > most) {
      p = most;
      if (wet++ === 0) firstWet = k;
    }
    temperature_C[k] = t;
    vapourPressure_Pa[k] = p;
  }
  const issues: Issue[] = [];
  if (wet > 0)
    issues.push({
      path: "indoor",
      severity: "warning",
      message: `The room air would be over-saturated in ${wet} hours (first ${stampOfHour(firstWet)}); it was held at 100 %.`,
      remedy: "Take a drier class, more ventilation or a warmer room.",
    });
  return { ok: true, value: { temperature_C, vapourPressure_Pa }, issues };
}

interface Courses {
  readonly temperature: Hourly;
  readonly pressure: (k: number, temperature_C: number, saturation_Pa: number) => number;
}

function courses(room: RoomSetting, weather: WeatherYear, daily: Float64Array, logged: LoggedAir | undefined): Courses {
  switch (room.method) {
    case "fixed": {
      const humidity = monthly(room.relativeHumidity);
      return { temperature: monthly(room.temperature_C), pressure: (k, _t, saturation) => humidity(k) * saturation };
    }
    case "seasonal":
      return {
        temperature: (k) => rules.seasonalValue(daily[k]!, room.winterTemperature_C, room.summerTemperature_C),
        pressure: (k, _t, saturation) =>
          rules.seasonalValue(daily[k]!, room.winterRelativeHumidity, room.summerRelativeHumidity) * saturation,
      };
    case "en15026":
      return {
        temperature: (k) => rules.en15026Temperature_C(daily[k]!),
        pressure: (k, _t, saturation) => rules.en15026RelativeHumidity(daily[k]!, room.load) * saturation,
      };
    case "ashrae160":
      return ashrae160(room, weather, daily);
    case "iso13788": {
      const means = monthlyMeans(weather.temperature_C);
      const outdoor = monthlyMeans(outdoorVapourPressure(weather));
      const inside = means.map((mean, m) => outdoor[m]! + rules.iso13788Excess_Pa(mean, room.humidityClass));
      return { temperature: () => room.temperature_C, pressure: (k) => betweenMonths(inside, k + 1) };
    }
    case "logger": {
      const log = logged!;
      return {
        temperature: (k) => log.temperature_C[(k - log.firstHour + log.hours) % log.hours]!,
        pressure: (k, _t, saturation) =>
          log.relativeHumidity[(k - log.firstHour + log.hours) % log.hours]! * saturation,
      };
    }
  }
}

/** Air changes and dwelling where the project says nothing: ANSI/ASHRAE 160 standard construction, three bedrooms, 400 m3 (ours). */
const usualAirChanges_h = 0.2;
const usualVolume_m3 = 400;
const usualBedrooms = 3;

function ashrae160(
  room: Extract<RoomSetting, { method: "ashrae160" }>,
  weather: WeatherYear,
  daily: Float64Array,
): Courses {
  const cooled = room.cooled ?? false;
  const temperature: Hourly = (k) => rules.ashrae160Temperature_C(daily[k]!, cooled);
  if (room.variant === "simplified")
    return {
      temperature,
      pressure: (k, _t, saturation) => rules.ashrae160SimplifiedRelativeHumidity(daily[k]!) * saturation,
    };
  const excess = rules.ashrae160Excess_Pa(
    rules.ashrae160Moisture_kgday(room.bedrooms ?? usualBedrooms),
    room.volume_m3 ?? usualVolume_m3,
    room.airChangesPerHour ?? usualAirChanges_h,
  );
  const outdoor = trailingMean(outdoorVapourPressure(weather), 24);
  return {
    temperature,
    pressure: (k, _t, saturation) => Math.min(outdoor[k]! + excess, rules.ashrae160Cap * saturation),
  };
}

export function outdoorVapourPressure(weather: WeatherYear): Float64Array {
  return weather.dewPoint_C.map((dew) => saturationPressure_Pa(dew));
}

function monthly(value: Monthly): Hourly {
  return typeof value === "number" ? () => value : (k) => betweenMonths(value, k + 1);
}

function faultsOf(room: RoomSetting, weather: WeatherYear, logged: LoggedAir | undefined): Issue[] {
  const faults: Issue[] = [];
  const fault = (path: string, message: string, remedy: string): void => {
    faults.push({ path, message, remedy, severity: "error" });
  };
  const within = (path: string, value: Monthly, low: number, high: number, unit: string): void => {
    const values = typeof value === "number" ? [value] : value;
    if (typeof value !== "number" && value.length !== 12)
      fault(path, `${value.length} monthly values were given.`, "Give one value, or twelve from January to December.");
    const bad = values.find((v) => !(v >= low && v <= high));
    if (bad !== undefined) fault(path, `${bad} is out of range.`, `Enter ${low} to ${high}${unit}.`);
  };
  if (room.method === "fixed") {
    within("indoor.temperature_C", room.temperature_C, -60, 80, " degC");
    within("indoor.relativeHumidity", room.relativeHumidity, 0, 1, "");
  } else if (room.method === "seasonal") {
    within("indoor.winterTemperature_C", room.winterTemperature_C, -60, 80, " degC");
    within("indoor.summerTemperature_C", room.summerTemperature_C, -60, 80, " degC");
    within("indoor.winterRelativeHumidity", room.winterRelativeHumidity, 0, 1, "");
    within("indoor.summerRelativeHumidity", room.summerRelativeHumidity, 0, 1, "");
  } else if (room.method === "iso13788") {
    within("indoor.temperature_C", room.temperature_C, -60, 80, " degC");
    if (![1, 2, 3, 4, 5].includes(room.humidityClass))
      fault("indoor.humidityClass", `There is no humidity class ${room.humidityClass}.`, "Enter a class from 1 to 5.");
  } else if (room.method === "ashrae160" && room.variant === "intermediate") {
    within("indoor.airChangesPerHour", room.airChangesPerHour ?? usualAirChanges_h, 0.01, 50, " per hour");
    within("indoor.volume_m3", room.volume_m3 ?? usualVolume_m3, 1, 1e6, " m3");
    within("indoor.bedrooms", room.bedrooms ?? usualBedrooms, 1, 100, "");
  } else if (room.method === "logger") {
    if (!logged)
      fault(
        "indoor.file",
        `The room log "${room.file}" was not read.`,
        "Choose the file again, or take another indoor climate.",
      );
    else if (logged.hours !== weather.hours)
      fault(
        "indoor.file",
        `The room log "${logged.name}" covers ${(logged.hours / 24).toFixed(1)} days; a run needs the ${weather.hours / 24} days of the weather.`,
        "Give a log of a whole year, or use another indoor climate; a shorter log can drive a laboratory case.",
      );
  }
  return faults;
}
