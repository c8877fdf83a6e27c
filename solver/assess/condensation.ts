/** From this humidity on the air at a surface counts as saturated; a film of water is not resolved closer. */
export const saturatedHumidity = 0.98;

export interface Uptake {
  /** Most water gained between a low and a later high of the course [kg/m2]. */
  readonly gain_kgm2: number;
  readonly from: number;
  readonly to: number;
}

/**
 * The largest rise of a course of stored water [kg/m2], a low first and the high after it.
 *
 * @param highFrom the high lies at this hour or later; the low may lie before it
 */
export function largestUptake(water_kgm2: ArrayLike<number>, highFrom = 0): Uptake {
  let low = 0;
  let best: Uptake = { gain_kgm2: 0, from: 0, to: 0 };
  for (let hour = 1; hour < water_kgm2.length; hour += 1) {
    if (water_kgm2[hour]! < water_kgm2[low]!) low = hour;
    const gain_kgm2 = water_kgm2[hour]! - water_kgm2[low]!;
    if (hour >= highFrom && gain_kgm2 > best.gain_kgm2) best = { gain_kgm2, from: low, to: hour };
  }
  return best;
}

export interface Condensate {
  /** Most water held that came while the surface was saturated [kg/m2]. */
  readonly most_kgm2: number;
  readonly hourOfMost: number;
  readonly hoursSaturated: number;
  /** Left at the end [kg/m2]. */
  readonly left_kgm2: number;
}

/**
 * Water gathered while the air at a surface is saturated: rises of the stored water count in saturated hours only, every fall
 * takes away from what was gathered. Wood takes up water by sorption before any liquid is seen; that is uptake, not this.
 */
export function potentialCondensate(water_kgm2: ArrayLike<number>, relativeHumidity: ArrayLike<number>): Condensate {
  let held = 0;
  let most_kgm2 = 0;
  let hourOfMost = 0;
  let hoursSaturated = 0;
  for (let hour = 0; hour < water_kgm2.length; hour += 1) {
    const saturated = relativeHumidity[hour]! >= saturatedHumidity;
    if (saturated) hoursSaturated += 1;
    if (hour === 0) continue;
    const change = water_kgm2[hour]! - water_kgm2[hour - 1]!;
    if (change < 0 || saturated) held = Math.max(0, held + change);
    if (held > most_kgm2) {
      most_kgm2 = held;
      hourOfMost = hour;
    }
  }
  return { most_kgm2, hourOfMost, hoursSaturated, left_kgm2: held };
}
