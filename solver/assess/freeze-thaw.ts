/** Freezing counts below the first, thawing above the second [degC]: practice, so that a noise round 0 is no cycle. */
const freezing_C = -1;
const thawing_C = 1;

export interface FreezeThaw {
  /** Freeze-thaw cycles in all, and those that froze while wetter than the critical degree. */
  readonly cycles: number;
  readonly wetCycles: number;
  readonly wettestFreeze: number;
  readonly hourOfWettestFreeze: number | null;
}

/**
 * Freeze-thaw cycles of a porous material, and how many of them freeze it while wet.
 *
 * @param saturation water content over the content with all pores full, 0..1
 * @param critical degree of saturation from which freezing harms this material, 0..1
 * Source: crossings of 0 degC with a band of 1 K: common practice, no source; critical degrees of saturation: Fagerlund 1977 (MEMORY).
 */
export function freezeThaw(
  temperature_C: ArrayLike<number>,
  saturation: ArrayLike<number>,
  critical: number,
): FreezeThaw {
  let frozen = false;
  let wetWhileFrozen = false;
  let cycles = 0;
  let wetCycles = 0;
  let wettestFreeze = 0;
  let hourOfWettestFreeze: number | null = null;
  for (let hour = 0; hour < temperature_C.length; hour += 1) {
    const t = temperature_C[hour]!;
    if (!frozen && t < freezing_C) {
      frozen = true;
      wetWhileFrozen = false;
    } else if (frozen && t > thawing_C) {
      frozen = false;
      cycles += 1;
      if (wetWhileFrozen) wetCycles += 1;
    }
    if (frozen && t < freezing_C) {
      if (saturation[hour]! > critical) wetWhileFrozen = true;
      if (saturation[hour]! > wettestFreeze) {
        wettestFreeze = saturation[hour]!;
        hourOfWettestFreeze = hour;
      }
    }
  }
  return { cycles, wetCycles, wettestFreeze, hourOfWettestFreeze };
}
