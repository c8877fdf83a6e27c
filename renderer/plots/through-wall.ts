import type { ThroughWallMap } from "../../solver/index.ts";
import type { LayerSpan } from "./wall-depths.ts";

/** A field on an even grid: `rows` depths by `days` days, value (row, day) at row * days + day. */
export interface EvenField {
  readonly rows: number;
  readonly days: number;
  readonly values: Float32Array;
}

/**
 * The map's columns read at even depths (row centres). Straight lines between the run's own depths inside a layer,
 * the nearest depth up to its faces: nothing is blended across a face, since water content jumps there.
 */
export function evenField(
  map: ThroughWallMap,
  values: Float32Array,
  spans: readonly LayerSpan[],
  rows: number,
): EvenField {
  const depths = map.depth_m;
  const count = depths.length;
  const out = new Float32Array(rows * map.days);
  const thickness = spans.at(-1)?.to_m ?? depths[count - 1] ?? 0;
  const solid = spans.filter(({ from_m, to_m }) => to_m > from_m);
  for (let row = 0; row < rows; row++) {
    const depth = ((row + 0.5) / rows) * thickness;
    const span = solid.find(({ to_m }) => depth <= to_m) ?? solid.at(-1);
    const slack = 1e-9;
    let first = 0;
    let last = count - 1;
    if (span) {
      while (first < last && depths[first]! < span.from_m - slack) first++;
      while (last > first && depths[last]! > span.to_m + slack) last--;
    }
    let upper = first;
    while (upper < last && depths[upper]! < depth) upper++;
    const lower = Math.max(first, upper - 1);
    const gap = depths[upper]! - depths[lower]!;
    const t = gap > 0 ? Math.min(1, Math.max(0, (depth - depths[lower]!) / gap)) : 0;
    for (let day = 0; day < map.days; day++) {
      const at = day * count;
      out[row * map.days + day] = values[at + lower]! * (1 - t) + values[at + upper]! * t;
    }
  }
  return { rows, days: map.days, values: out };
}

/** Centred running mean over `width` days (odd), shorter at the ends; gaps (NaN) stay gaps. */
export function smoothedInTime(field: EvenField, width: number): EvenField {
  const half = Math.floor(width / 2);
  const out = new Float32Array(field.values.length);
  for (let row = 0; row < field.rows; row++) {
    for (let day = 0; day < field.days; day++) {
      let sum = 0;
      let count = 0;
      for (let near = Math.max(0, day - half); near <= Math.min(field.days - 1, day + half); near++) {
        const value = field.values[row * field.days + near]!;
        if (Number.isFinite(value)) {
          sum += value;
          count++;
        }
      }
      out[row * field.days + day] =
        Number.isFinite(field.values[row * field.days + day]!) && count > 0 ? sum / count : NaN;
    }
  }
  return { ...field, values: out };
}

/** One day's values through the wall, at the run's own depths. */
export function dayProfile(
  map: ThroughWallMap,
  values: Float32Array,
  day: number,
): { depth_m: number; value: number }[] {
  const count = map.depth_m.length;
  const row = Math.min(map.days - 1, Math.max(0, Math.floor(day)));
  return Array.from(map.depth_m, (depth_m, column) => ({ depth_m, value: values[row * count + column]! }));
}
