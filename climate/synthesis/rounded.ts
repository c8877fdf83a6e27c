/**
 * Values rounded to a decimal step, in place. Math functions may differ in their last bit between engine versions and processors;
 * rounding far above that bit makes an invented year the same to the bit on all of them.
 * @param perUnit  10000 keeps four decimals
 */
export function rounded(values: Float64Array, perUnit: number): Float64Array {
  for (let k = 0; k < values.length; k++) values[k] = Math.round(values[k]! * perUnit) / perUnit;
  return values;
}

export const fourDecimals = 1e4;
/** Rain is small and summed: six. */
export const sixDecimals = 1e6;
