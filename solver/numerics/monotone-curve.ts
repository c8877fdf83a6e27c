/** A curve through points that rises (or falls) wherever the points do: no overshoot between them. */
export interface Curve {
  /** Value at x; outside of the points the end values hold. */
  at(x: number): number;
}

/**
 * Monotone piecewise cubic through points (x rising strictly).
 *
 * Source: F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304, harmonic-mean slopes.
 * @throws RangeError when x does not rise or lengths differ.
 */
export function monotoneCurve(x: readonly number[], y: readonly number[]): Curve {
  const n = x.length;
  if (n !== y.length || n === 0)
    throw new RangeError(`a curve needs as many x as y and at least one, got ${n} and ${y.length}`);
  for (let i = 1; i < n; i++) {
    if (!(x[i]! > x[i - 1]!)) throw new RangeError(`x must rise, got ${x[i - 1]} then ${x[i]} at point ${i}`);
  }
  if (n === 1) return { at: () => y[0]! };
  const slope = endAndInnerSlopes(x, y);
  return {
    at(at) {
      if (at <= x[0]!) return y[0]!;
      if (at >= x[n - 1]!) return y[n - 1]!;
      let low = 0;
      let high = n - 1;
      while (high - low > 1) {
        const middle = (low + high) >> 1;
        if (x[middle]! <= at) low = middle;
        else high = middle;
      }
      const h = x[high]! - x[low]!;
      const t = (at - x[low]!) / h;
      const t2 = t * t;
      const t3 = t2 * t;
      return (
        (2 * t3 - 3 * t2 + 1) * y[low]! +
        (t3 - 2 * t2 + t) * h * slope[low]! +
        (3 * t2 - 2 * t3) * y[high]! +
        (t3 - t2) * h * slope[high]!
      );
    },
  };
}

function endAndInnerSlopes(x: readonly number[], y: readonly number[]): Float64Array {
  const n = x.length;
  const step = (i: number) => x[i + 1]! - x[i]!;
  const rise = (i: number) => (y[i + 1]! - y[i]!) / step(i);
  const slope = new Float64Array(n);
  for (let i = 1; i < n - 1; i++) {
    const before = rise(i - 1);
    const after = rise(i);
    if (before * after <= 0) continue;
    const w1 = 2 * step(i) + step(i - 1);
    const w2 = step(i) + 2 * step(i - 1);
    slope[i] = (w1 + w2) / (w1 / before + w2 / after);
  }
  slope[0] = endSlope(step(0), n > 2 ? step(1) : step(0), rise(0), n > 2 ? rise(1) : rise(0));
  slope[n - 1] = n > 2 ? endSlope(step(n - 2), step(n - 3), rise(n - 2), rise(n - 3)) : rise(0);
  return slope;
}

/** Three-point end slope, cut back where it would break monotonicity. */
function endSlope(h0: number, h1: number, d0: number, d1: number): number {
  const slope = ((2 * h0 + h1) * d0 - h0 * d1) / (h0 + h1);
  if (slope * d0 <= 0) return 0;
  return d0 * d1 <= 0 && Math.abs(slope) > 3 * Math.abs(d0) ? 3 * d0 : slope;
}

/** Straight lines through points (x rising), end values hold. */
export function polyline(x: readonly number[], y: readonly number[]): Curve {
  const n = x.length;
  return {
    at(at) {
      if (at <= x[0]!) return y[0]!;
      if (at >= x[n - 1]!) return y[n - 1]!;
      let i = 1;
      while (x[i]! < at) i++;
      return y[i - 1]! + ((y[i]! - y[i - 1]!) * (at - x[i - 1]!)) / (x[i]! - x[i - 1]!);
    },
  };
}
