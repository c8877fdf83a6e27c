import { hoursOfYear, stampOfHour } from "../calendar.ts";
import type { HourlyLoads } from "../hourly-loads.ts";
import type { Checked, Issue } from "../issue.ts";
import { roomAir } from "../rooms/room-air.ts";
import type { LoggedAir, RoomSetting } from "../rooms/room-setting.ts";
import type { WeatherYear } from "../weather-year.ts";
import { houseOf, type AirSetting } from "./air-pressure.ts";
import { insideFace } from "./inside-face.ts";
import { joined } from "./load-series.ts";
import { outsideFace } from "./outside-face.ts";
import type { FaceSetting, RainSetting } from "./settings.ts";

export interface LoadsInput {
  readonly weather: WeatherYear;
  readonly face: FaceSetting;
  readonly rain: RainSetting | undefined;
  readonly room: RoomSetting;
  /** The room log that a room of method "logger" names. */
  readonly loggedRoom?: LoggedAir | undefined;
  readonly air: AirSetting | undefined;
  /** 0..364: the run starts at midnight of this day. */
  readonly startDay: number;
}

/**
 * Loads on both faces through a year that repeats.
 *
 * States (temperature, vapour pressure, films, longwave, air pressure) run in straight lines between the values at the ends of the
 * hours. Sun keeps every hourly mean in a continuous curve. Rain is a step.
 * Errors, as issues: weather that is no whole year or holds a number that is none; a face or room out of range; a room log not given.
 */
export function hourlyLoads(input: LoadsInput): Checked<HourlyLoads> {
  const { weather, face } = input;
  const faults = [...weatherFaults(weather), ...faceFaults(face), ...startFaults(input.startDay)];
  if (faults.length > 0) return { ok: false, issues: faults };
  const room = roomAir(input.room, weather, input.loggedRoom);
  if (!room.ok) return room;
  const n = weather.hours;
  const first = input.startDay * 24;
  const house = houseOf(input.air);
  const outside = outsideFace(weather, face, input.rain, house, first);
  let pressure = 0;
  for (const p of weather.pressure_Pa) pressure += p;
  return {
    ok: true,
    issues: [...weather.issues, ...room.issues],
    value: {
      time_s: Float64Array.from({ length: n + 1 }, (_, k) => 3600 * k),
      repeats: true,
      startDay: input.startDay,
      outside: outside.loads,
      inside: insideFace(weather, face, room.value, house, first),
      windSpeed_ms: joined(outside.windSpeed_ms),
      barometricPressure_Pa: pressure / n,
    },
  };
}

const needed = [
  "temperature_C",
  "dewPoint_C",
  "pressure_Pa",
  "skyInfrared_Wm2",
  "globalHorizontal_Wm2",
  "directNormal_Wm2",
  "diffuseHorizontal_Wm2",
  "windSpeed_ms",
  "windDirection_deg",
  "rain_mm",
] as const;

function weatherFaults(weather: WeatherYear): Issue[] {
  const faults: Issue[] = [];
  if (weather.hours !== hoursOfYear)
    faults.push({
      path: "weather",
      severity: "error",
      message: `"${weather.label}" has ${weather.hours} hours; a run needs a whole year of ${hoursOfYear}.`,
      remedy: "Give a file of a whole year, or choose a place.",
    });
  for (const column of needed) {
    const values = weather[column];
    const hole =
      values.length === weather.hours
        ? values.findIndex((v) => !Number.isFinite(v))
        : Math.min(values.length, weather.hours);
    if (hole >= 0)
      faults.push({
        path: `weather.${column}`,
        severity: "error",
        message: `${column} has no number at ${stampOfHour(hole)}.`,
        remedy: "Read the weather file again, or choose another.",
      });
  }
  return faults;
}

function faceFaults(face: FaceSetting): Issue[] {
  const faults: Issue[] = [];
  const range = (field: string, value: number | undefined, low: number, high: number): void => {
    if (value !== undefined && !(value >= low && value <= high))
      faults.push({
        path: `site.face.${field}`,
        severity: "error",
        message: `${field} is ${value}.`,
        remedy: `Enter ${low} to ${high}.`,
      });
  };
  range("azimuth_deg", face.azimuth_deg, 0, 360);
  range("tilt_deg", face.tilt_deg, 0, 180);
  range("height_m", face.height_m, 0, 500);
  range("solarAbsorptance", face.solarAbsorptance, 0, 1);
  range("longwaveEmissivity", face.longwaveEmissivity, 0, 1);
  range("groundReflectance", face.groundReflectance, 0, 1);
  range("overhang.depth_m", face.overhang?.depth_m, 0, 100);
  range("overhang.heightAbove_m", face.overhang?.heightAbove_m, 0, 100);
  return faults;
}

function startFaults(startDay: number): Issue[] {
  if (Number.isInteger(startDay) && startDay >= 0 && startDay <= 364) return [];
  return [
    {
      path: "run.start",
      severity: "error",
      message: `The start day is ${startDay}.`,
      remedy: "Enter a whole day from 0 to 364.",
    },
  ];
}
