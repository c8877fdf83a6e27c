import type { LoadSeries } from "../hourly-loads.ts";

/** `values[k]` is the state at the end of hour k; straight lines between, and from the last hour to the first. */
export function joined(values: Float64Array): LoadSeries {
  const n = values.length;
  const start = new Float64Array(n);
  start[0] = values[n - 1]!;
  start.set(values.subarray(0, n - 1), 1);
  return { start, end: values, bulge: new Float64Array(n) };
}

/** `means[k]` holds through hour k. */
export function stepped(means: Float64Array): LoadSeries {
  return { start: means, end: means, bulge: new Float64Array(means.length) };
}

/** The same value always. */
export function constant(value: number, n: number): LoadSeries {
  return stepped(new Float64Array(n).fill(value));
}

/**
 * Hourly means >= 0 as a continuous curve that keeps every mean and never goes below zero.
 *
 * Where two hours meet, the curve takes the mean of their means, but at most twice the smaller one. Within the hour it is a
 * parabola. With both ends at most 2 m the parabola of mean m cannot dip below 0: its lowest form (both ends 2 m) bottoms at m/2.
 */
export function smoothedMeans(means: Float64Array): LoadSeries {
  const n = means.length;
  const start = new Float64Array(n);
  const end = new Float64Array(n);
  const bulge = new Float64Array(n);
  for (let k = 0; k < n; k++) {
    const next = (k + 1) % n;
    const a = means[k]!;
    const b = means[next]!;
    const node = Math.min(0.5 * (a + b), 2 * Math.min(a, b));
    end[k] = node;
    start[next] = node;
  }
  for (let k = 0; k < n; k++) bulge[k] = means[k]! - 0.5 * (start[k]! + end[k]!);
  return { start, end, bulge };
}

/** The series shifted so that hour `first` comes first. */
export function rotated(values: Float64Array, first: number): Float64Array {
  const out = new Float64Array(values.length);
  out.set(values.subarray(first));
  out.set(values.subarray(0, first), values.length - first);
  return out;
}
