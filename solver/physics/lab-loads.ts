import type { FaceLoads, HourlyLoads, LoadSeries } from "../../climate/index.ts";
import type { Course, Lab, LabFace } from "../model/index.ts";
import { physicsSettings } from "./physics-settings.ts";

const barometricPressure_Pa = 101325;

/**
 * Loads of a laboratory case from its fixed values and tables. Breakpoints are every whole hour and every row of a table, so that no
 * step crosses one and results stand on whole hours.
 */
export function labLoads(lab: Lab): HourlyLoads {
  const time_s = breakpoints(lab);
  const physics = physicsSettings(lab.physics, barometricPressure_Pa);
  const outside = labFace(lab.outside, time_s, physics.saturationPressure, physics);
  const inside = labFace(lab.inside, time_s, physics.saturationPressure, physics);
  const velocity = lab.physics?.airVelocity_ms;
  return {
    time_s,
    repeats: false,
    startDay: 0,
    outside,
    inside,
    windSpeed_ms: constant(0, time_s),
    ...(velocity === undefined ? {} : { throughFlow_ms: courseSeries(velocity, time_s) }),
    barometricPressure_Pa,
  };
}

function labFace(
  face: LabFace,
  time_s: Float64Array,
  saturation: (T: number) => number,
  physics: { waterDensity_kgm3: number; gasConstantVapour_JkgK: number },
): FaceLoads {
  const temperature = mapSeries(courseSeries(face.temperature_C, time_s), (t) => t + 273.15);
  const held = face.vapourFilm_kgm2sPa === "held";
  const rhoR = physics.waterDensity_kgm3 * physics.gasConstantVapour_JkgK;
  const humidity = face.relativeHumidity === undefined ? null : courseSeries(face.relativeHumidity, time_s);
  const given = face.vapourPressure_Pa === undefined ? null : courseSeries(face.vapourPressure_Pa, time_s);
  const suction = face.suction_Pa === undefined ? null : courseSeries(face.suction_Pa, time_s);
  const toSuction = (phi: number, T: number) => -rhoR * T * Math.log(Math.min(Math.max(phi, 1e-6), 1));
  const relative = (s: number, T: number) => Math.exp(-s / (rhoR * T));
  const pressure =
    given ??
    (humidity !== null
      ? joinSeries(humidity, temperature, (phi, T) => phi * saturation(T))
      : suction !== null
        ? joinSeries(suction, temperature, (s, T) => relative(s, T) * saturation(T))
        : constant(0, time_s));
  const heldSuction = !held
    ? null
    : (suction ??
      (humidity !== null
        ? joinSeries(humidity, temperature, toSuction)
        : joinSeries(pressure, temperature, (p, T) => toSuction(p / saturation(T), T))));
  return {
    temperature_K: temperature,
    vapourPressure_Pa: pressure,
    heatFilm_Wm2K: face.heatFilm_Wm2K === "held" ? constant(0, time_s) : courseSeries(face.heatFilm_Wm2K, time_s),
    vapourFilm_kgm2sPa:
      face.vapourFilm_kgm2sPa === "held" ? constant(0, time_s) : courseSeries(face.vapourFilm_kgm2sPa, time_s),
    absorbedRadiation_Wm2: courseSeries(face.absorbedRadiation_Wm2 ?? 0, time_s),
    longwave: null,
    rain_kgm2s: courseSeries(face.rain_kgm2s ?? 0, time_s),
    airPressure_Pa: courseSeries(face.airPressure_Pa ?? 0, time_s),
    heldTemperature: face.heatFilm_Wm2K === "held",
    heldSuction_Pa: heldSuction,
    heldInLiquid: held && suction !== null,
  };
}

const courseFields = [
  "temperature_C",
  "relativeHumidity",
  "vapourPressure_Pa",
  "suction_Pa",
  "heatFilm_Wm2K",
  "vapourFilm_kgm2sPa",
  "absorbedRadiation_Wm2",
  "rain_kgm2s",
  "airPressure_Pa",
] as const;

function breakpoints(lab: Lab): Float64Array {
  const end = lab.duration_h * 3600;
  const times = new Set<number>([0, end]);
  for (let hour = 1; hour * 3600 < end; hour++) times.add(hour * 3600);
  const addRows = (course: Course | "held" | undefined) => {
    if (course === undefined || course === "held" || typeof course === "number") return;
    for (const [time] of course.table) if (time > 0 && time < end) times.add(time);
  };
  for (const face of [lab.outside, lab.inside]) for (const field of courseFields) addRows(face[field]);
  addRows(lab.physics?.airVelocity_ms);
  return Float64Array.from(times).sort();
}

function constant(value: number, time_s: Float64Array): LoadSeries {
  const n = time_s.length - 1;
  return { start: new Float64Array(n).fill(value), end: new Float64Array(n).fill(value), bulge: new Float64Array(n) };
}

/** A fixed value, straight lines between rows, or steps that hold from each row to the next. */
function courseSeries(course: Course, time_s: Float64Array): LoadSeries {
  if (typeof course === "number") return constant(course, time_s);
  const { table } = course;
  const n = time_s.length - 1;
  const start = new Float64Array(n);
  const end = new Float64Array(n);
  const steps = course.between === "step";
  let row = 0;
  for (let k = 0; k < n; k++) {
    while (row + 1 < table.length && table[row + 1]![0] <= time_s[k]!) row++;
    const [t0, v0] = table[row]!;
    const next = table[row + 1];
    if (steps || next === undefined || time_s[k]! < t0) {
      start[k] = v0;
      end[k] = v0;
      continue;
    }
    const slope = (next[1] - v0) / (next[0] - t0);
    start[k] = v0 + slope * (time_s[k]! - t0);
    end[k] = v0 + slope * (Math.min(time_s[k + 1]!, next[0]) - t0);
  }
  return { start, end, bulge: new Float64Array(n) };
}

function mapSeries(series: LoadSeries, change: (value: number) => number): LoadSeries {
  return { start: series.start.map(change), end: series.end.map(change), bulge: series.bulge };
}

function joinSeries(a: LoadSeries, b: LoadSeries, join: (a: number, b: number) => number): LoadSeries {
  return {
    start: a.start.map((value, k) => join(value, b.start[k]!)),
    end: a.end.map((value, k) => join(value, b.end[k]!)),
    bulge: a.bulge,
  };
}
