import type { Issue } from "../issue.ts";
import { columnRules } from "./columns.ts";

/** Fewer rainy hours than this say nothing about the unit. */
const leastHours = 20;

/**
 * Rain headed "mm" that is in fact in tenths of a millimetre: gauges tip at hundredths of an inch, so values run
 * 3, 5, 8, 10, 13, 15 ... and never 1, 2, 4, 6. Inferred from typical-year files, whose sums are then ten times too big; nowhere documented.
 */
export function looksLikeTenths(rain: ArrayLike<number>): boolean {
  let wet = 0;
  let steps = 0;
  for (let k = 0; k < rain.length; k++) {
    const value = rain[k]!;
    if (!(value > 0)) continue;
    wet++;
    if (Number.isInteger(value) && Math.round(Math.round(value / 2.54) * 2.54) === value) steps++;
  }
  return wet >= leastHours && steps >= 0.98 * wet;
}

/** Divides such rain by ten, in place, and says so; then drops amounts that no hour can have. */
export function mendRainUnit(rain: Float64Array, path: string): Issue[] {
  const issues: Issue[] = [];
  if (looksLikeTenths(rain)) {
    let sum = 0;
    for (let k = 0; k < rain.length; k++) {
      rain[k]! /= 10;
      if (rain[k]! > 0) sum += rain[k]!;
    }
    issues.push({
      path,
      severity: "warning",
      message: `The rain column steps in hundredths of an inch written as tenths of a millimetre; it was divided by 10 and sums to ${Math.round(sum)} mm.`,
      remedy: "Compare with the place's normal; lay monthly rain over the year if it is far off.",
    });
  }
  for (let k = 0; k < rain.length; k++) if (rain[k]! > columnRules.rain_mm.high) rain[k] = NaN;
  return issues;
}
