import { dewPointIso13788_C, saturationPressureIso13788_Pa } from "../../../climate/index.ts";

/**
 * Saturation pressure in the form that the steady monthly method prescribes: over water from 0 degC up, over ice below.
 * The transient solver has its own form; this one is kept to the letter so that hand checks agree.
 *
 * Source: ISO 13788, annex on psychrometry (MEMORY; agrees with the printed 260, 611 and 2337 Pa at -10, 0 and 20 degC).
 * Checked: tests/solver/physics/steady/saturation-pressure.test.ts.
 */
export const saturationPressure_Pa = saturationPressureIso13788_Pa;

/** Temperature [degC] at which air of this vapour pressure [Pa], > 0, is saturated. The inverse, branch by branch. */
export function dewPoint_C(vapourPressure_Pa: number): number {
  if (!(vapourPressure_Pa > 0)) throw new RangeError(`vapourPressure_Pa must be > 0, got ${vapourPressure_Pa}`);
  return dewPointIso13788_C(vapourPressure_Pa);
}
