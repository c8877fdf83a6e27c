/**
 * Saturation pressure in the form that the steady monthly method prescribes: over water from 0 degC up, over ice below.
 * The transient solver has its own form; this one is kept to the letter so that hand checks agree.
 *
 * Source: ISO 13788, annex on psychrometry (MEMORY; agrees with the printed 260, 611 and 2337 Pa at -10, 0 and 20 degC).
 * Checked: tests/solver/physics/steady/saturation-pressure.test.ts.
 */
const atFreezing_Pa = 610.5;
const overWater = { factor: 17.269, offset_C: 237.3 };
const overIce = { factor: 21.875, offset_C: 265.5 };

/** Saturation vapour pressure [Pa] at a temperature [degC], -100 to 100. */
export function saturationPressure_Pa(temperature_C: number): number {
  const branch = temperature_C >= 0 ? overWater : overIce;
  return atFreezing_Pa * Math.exp((branch.factor * temperature_C) / (branch.offset_C + temperature_C));
}

/** Temperature [degC] at which air of this vapour pressure [Pa], > 0, is saturated. The inverse, branch by branch. */
export function dewPoint_C(vapourPressure_Pa: number): number {
  if (!(vapourPressure_Pa > 0)) throw new RangeError(`vapourPressure_Pa must be > 0, got ${vapourPressure_Pa}`);
  const logRatio = Math.log(vapourPressure_Pa / atFreezing_Pa);
  const branch = logRatio >= 0 ? overWater : overIce;
  return (branch.offset_C * logRatio) / (branch.factor - logRatio);
}
