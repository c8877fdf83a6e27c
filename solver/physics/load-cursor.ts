import type { FaceLoads, HourlyLoads, LoadSeries } from "../../climate/index.ts";
import {
  fullPoreSuction_Pa,
  lowestPotential,
  potentialAtSuction,
  referenceTemperature_K,
} from "./moisture-potential.ts";

/** Where each load stands in the cursor's array. Outside's seven come first, inside's from `insideOffset`. */
export const load = {
  temperature: 0,
  vapourPressure: 1,
  heatFilm: 2,
  vapourFilm: 3,
  absorbed: 4,
  longwave: 5,
  rain: 6,
  airPressure: 7,
  heldPotential: 8,
} as const;
export const insideOffset = 9;
export const windSpeed = 18;
export const throughFlow = 19;
const loadCount = 20;

/** Reads all loads at one instant into one array, without allocating. */
export interface LoadCursor {
  readonly values: Float64Array;
  readonly intervals: number;
  /** Length of interval k [s]; k counts on through repeated years. */
  duration(k: number): number;
  /** Start of interval k [s]. */
  start(k: number): number;
  /** Loads at the share tau (0..1) of interval k. */
  read(k: number, tau: number): void;
  /** True: some load jumps at the start of interval k. */
  jumps(k: number): boolean;
}

export function loadCursor(loads: HourlyLoads, rhoR: number): LoadCursor {
  const { time_s } = loads;
  const intervals = time_s.length - 1;
  const period = time_s[intervals]!;
  const values = new Float64Array(loadCount);
  const series: { at: number; of: LoadSeries }[] = [];
  const addFace = (face: FaceLoads, offset: number) => {
    series.push({ at: offset + load.temperature, of: face.temperature_K });
    series.push({ at: offset + load.vapourPressure, of: face.vapourPressure_Pa });
    series.push({ at: offset + load.heatFilm, of: face.heatFilm_Wm2K });
    series.push({ at: offset + load.vapourFilm, of: face.vapourFilm_kgm2sPa });
    series.push({ at: offset + load.absorbed, of: face.absorbedRadiation_Wm2 });
    if (face.longwave !== null) series.push({ at: offset + load.longwave, of: face.longwave.incoming_Wm2 });
    series.push({ at: offset + load.rain, of: face.rain_kgm2s });
    series.push({ at: offset + load.airPressure, of: face.airPressure_Pa });
  };
  addFace(loads.outside, 0);
  addFace(loads.inside, insideOffset);
  series.push({ at: windSpeed, of: loads.windSpeed_ms });
  if (loads.throughFlow_ms !== undefined) series.push({ at: throughFlow, of: loads.throughFlow_ms });
  const { at, start, end, bulge, count } = pack(series, intervals);
  const held = [
    { offset: 0, of: loads.outside.heldSuction_Pa },
    { offset: insideOffset, of: loads.inside.heldSuction_Pa },
  ];
  // A face in contact with free water has its pores full; suctions below this add nothing to them.
  const fullPores = potentialAtSuction(fullPoreSuction_Pa, referenceTemperature_K, rhoR);
  const wrapped = (k: number) => (loads.repeats ? k % intervals : k);
  return {
    values,
    intervals,
    duration: (k) => time_s[wrapped(k) + 1]! - time_s[wrapped(k)]!,
    start: (k) => (loads.repeats ? Math.floor(k / intervals) * period : 0) + time_s[wrapped(k)]!,
    read(k, tau) {
      const base = wrapped(k) * count;
      const hump = 6 * tau * (1 - tau);
      for (let j = 0; j < count; j++) {
        const a = start[base + j]!;
        values[at[j]!] = a + (end[base + j]! - a) * tau + bulge[base + j]! * hump;
      }
      for (const face of held) {
        if (face.of === null) continue;
        const i = wrapped(k);
        const suction = face.of.start[i]! + (face.of.end[i]! - face.of.start[i]!) * tau;
        const T = values[face.offset + load.temperature]!;
        const potential = Math.log((rhoR * T) / Math.max(suction, 1e-3));
        values[face.offset + load.heldPotential] = Math.min(Math.max(potential, lowestPotential), fullPores);
      }
    },
    jumps(k) {
      if (k === 0) return true;
      const before = wrapped(k - 1) * count;
      const here = wrapped(k) * count;
      for (let j = 0; j < count; j++) {
        if (Math.abs(end[before + j]! - start[here + j]!) > 1e-9 * (1e-12 + Math.abs(end[before + j]!))) return true;
      }
      return false;
    },
  };
}

/** Interval after interval, so that one reading touches one stretch of memory. */
function pack(series: readonly { at: number; of: LoadSeries }[], intervals: number) {
  const count = series.length;
  const at = Int32Array.from(series, (one) => one.at);
  const start = new Float64Array(count * intervals);
  const end = new Float64Array(count * intervals);
  const bulge = new Float64Array(count * intervals);
  series.forEach(({ of }, j) => {
    for (let k = 0; k < intervals; k++) {
      start[k * count + j] = of.start[k]!;
      end[k * count + j] = of.end[k]!;
      bulge[k * count + j] = of.bulge[k]!;
    }
  });
  return { at, start, end, bulge, count };
}
