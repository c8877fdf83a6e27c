/** A rounded range over values and its ticks: steps of 1, 2, 4 or 5 times a power of ten, `count` of them at most. */
export function niceRange(from: number, to: number, count: number): { from: number; to: number; ticks: number[] } {
  if (!(to > from)) return niceRange(from - 1, from + 1, count);
  const rough = (to - from) / count;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 4, 5, 10].map((factor) => factor * power).find((candidate) => candidate >= rough * (1 - 1e-9))!;
  const low = Math.floor(from / step + 1e-9) * step;
  const high = Math.ceil(to / step - 1e-9) * step;
  const steps = Math.round((high - low) / step);
  return {
    from: low,
    to: high,
    ticks: Array.from({ length: steps + 1 }, (_, i) => Number((low + i * step).toPrecision(12))),
  };
}

/** Round ticks that lie within a range that is not itself rounded, `count` of them at most. */
export function niceTicks(from: number, to: number, count: number): number[] {
  const { ticks } = niceRange(from, to, count);
  return ticks.filter((tick) => tick >= from - 1e-9 && tick <= to + 1e-9);
}
