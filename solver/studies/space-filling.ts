/**
 * Space-filling samples: in each dimension one point in each of n equal slices, slices paired at random. Seeded, so that
 * the same seed gives the same sample on every machine.
 *
 * @param count       points, >= 1
 * @param dimensions  >= 1
 * Source: Latin hypercube sampling, McKay, Beckman and Conover, Technometrics 21 (1979).
 * Checked: tests/solver/studies/space-filling.test.ts, each slice of each dimension holds one point.
 */
export function latinHypercube(count: number, dimensions: number, seed: number): readonly (readonly number[])[] {
  if (!Number.isInteger(count) || count < 1) throw new RangeError(`count must be a whole number >= 1, got ${count}`);
  if (!Number.isInteger(dimensions) || dimensions < 1)
    throw new RangeError(`dimensions must be a whole number >= 1, got ${dimensions}`);
  const random = seededRandom(seed);
  const columns = Array.from({ length: dimensions }, () =>
    shuffled(count, random).map((slice) => (slice + random()) / count),
  );
  return Array.from({ length: count }, (_, point) => columns.map((column) => column[point]!));
}

function shuffled(count: number, random: () => number): number[] {
  const order = Array.from({ length: count }, (_, index) => index);
  for (let last = count - 1; last > 0; last -= 1) {
    const pick = Math.floor(random() * (last + 1));
    [order[last], order[pick]] = [order[pick]!, order[last]!];
  }
  return order;
}

/** Numbers 0..1 from a 32-bit counter-based mix. Source: the "mulberry32" public-domain generator, Ettinger 2017; MEMORY. */
export function seededRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
