export interface Drift {
  /** Change of the wall's water over the last year [kg/m2]. */
  readonly lastYear_kgm2: number;
  /** Change over the year before it; null after two years only. */
  readonly yearBefore_kgm2: number | null;
  /** Tolerated yearly gain [kg/m2]. */
  readonly limit_kgm2: number;
  readonly ratchets: boolean;
}

/** A gain this small is within what a year of weather and the start leave over (common practice, no source). */
const smallestGain_kgm2 = 0.02;
const smallestShare = 0.01;

/**
 * Does the wall end each year wetter than the one before?
 *
 * @param yearEnd_kgm2 the start first, then each year's end
 * @returns null with fewer than two years: the first year still carries its start.
 */
export function drift(yearEnd_kgm2: readonly number[]): Drift | null {
  const years = yearEnd_kgm2.length - 1;
  if (years < 2) return null;
  const lastYear_kgm2 = yearEnd_kgm2[years]! - yearEnd_kgm2[years - 1]!;
  const yearBefore_kgm2 = years >= 3 ? yearEnd_kgm2[years - 1]! - yearEnd_kgm2[years - 2]! : null;
  const limit_kgm2 = Math.max(smallestGain_kgm2, smallestShare * yearEnd_kgm2[years - 1]!);
  return { lastYear_kgm2, yearBefore_kgm2, limit_kgm2, ratchets: lastYear_kgm2 > limit_kgm2 };
}
