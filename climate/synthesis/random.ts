/**
 * Seeded random numbers: the same seed gives the same numbers everywhere. A 32-bit state takes steps of 0x6D2B79F5 and is mixed by
 * two multiply-xor rounds; integer arithmetic only, so bit-identical by the language's definition.
 */
export interface Random {
  /** Uniform in [0, 1). */
  uniform(): number;
  /** Standard normal. Source: Box and Muller 1958. */
  normal(): number;
}

export function randomOf(seed: number): Random {
  let state = seed >>> 0;
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  return {
    uniform,
    normal: () => {
      const radius = Math.sqrt(-2 * Math.log(1 - uniform()));
      return radius * Math.cos(2 * Math.PI * uniform());
    },
  };
}

/** First-order autoregressive series of unit variance. */
export function autoregressive(
  random: Random,
  length: number,
  coefficient: number | ((k: number) => number),
): Float64Array {
  const out = new Float64Array(length);
  for (let k = 0; k < length; k++) {
    const r = typeof coefficient === "number" ? coefficient : coefficient(k);
    out[k] = k === 0 ? random.normal() : r * out[k - 1]! + Math.sqrt(1 - r * r) * random.normal();
  }
  return out;
}
