import type { Shelter } from "../films/local-wind.ts";

const degree = Math.PI / 180;

/** Below this air temperature precipitation counts as snow, which does not wet a wall [degC]. Common practice, no source. */
export const snowBelow_C = 1;

/** Cosine between wind and wall normal, 0 when the wind comes from behind. */
export function windOnWall(windDirection_deg: number, azimuth_deg: number): number {
  return Math.max(0, Math.cos((windDirection_deg - azimuth_deg) * degree));
}

/**
 * Rain on a wall by ANSI/ASHRAE 160 [kg/(m2 h)]: FE FD 0.2 U cos(theta) r.
 * @param windSpeed_ms  at 10 m
 * @param rain_mmh      on the horizontal
 * Source: ANSI/ASHRAE Standard 160-2016, section 4.6 (MEMORY).
 */
export function drivingRainAshrae160_kgm2h(
  exposureFactor: number,
  depositionFactor: number,
  windSpeed_ms: number,
  cosWind: number,
  rain_mmh: number,
): number {
  return exposureFactor * depositionFactor * 0.2 * windSpeed_ms * cosWind * rain_mmh;
}

/**
 * Free-field driving rain of ISO 15927-3 [mm/h], before the wall factors: 2/9 v r^(8/9) cos(D - theta).
 * The standard says of itself that it does not hold among cliffs and gorges, where over a quarter of the rain comes in severe
 * convective storms, or where much falls as snow or hail. Source: ISO 15927-3:2009, annual airfield index.
 */
export function drivingRainIso15927_kgm2h(windSpeed_ms: number, cosWind: number, rain_mmh: number): number {
  return (2 / 9) * windSpeed_ms * rain_mmh ** (8 / 9) * cosWind;
}

/** Upper ends of the height bands of the exposure factor [m]. */
const heightBands_m = [10, 15, 20, 30, 40, 50] as const;
const exposureByBand: Readonly<Record<Shelter, readonly number[]>> = {
  severe: [1.3, 1.3, 1.4, 1.5, 1.5, 1.5, 1.5],
  medium: [1.0, 1.1, 1.2, 1.3, 1.4, 1.5, 1.5],
  sheltered: [0.7, 0.8, 0.9, 1.1, 1.2, 1.3, 1.5],
};

/** Rain exposure factor FE. Source: ANSI/ASHRAE 160-2016 table of exposure factors (MEMORY, low confidence above 10 m). */
export function exposureFactorAshrae160(shelter: Shelter, height_m: number): number {
  const band = heightBands_m.findIndex((top) => height_m <= top);
  return exposureByBand[shelter][band < 0 ? heightBands_m.length : band]!;
}

export const depositionWords = {
  steepRoof: { factor: 0.35, words: "below a steep roof with eaves" },
  lowRoof: { factor: 0.5, words: "below a low-slope roof, no eaves" },
  runOff: { factor: 1, words: "where water runs down from above" },
} as const;

/** Depth from which an overhang counts as eaves [m]. Common practice, no source. */
const eavesFrom_m = 0.3;

/** Rain deposition factor FD where none is given: eaves of 0.3 m and more, or none. Source: ANSI/ASHRAE 160-2016 (MEMORY). */
export function depositionFactorAshrae160(overhangDepth_m: number | undefined): number {
  return overhangDepth_m !== undefined && overhangDepth_m >= eavesFrom_m
    ? depositionWords.steepRoof.factor
    : depositionWords.lowRoof.factor;
}
