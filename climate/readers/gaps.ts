/** A run of hours without a value. */
export interface Gap {
  readonly first: number;
  readonly length: number;
}

/** Longest gap that is filled by a straight line [h]. */
export const longestFilledGap_h = 6;

/** Runs of NaN in a year that repeats; one run of the whole length if there is no value at all. */
export function gapsOf(values: Float64Array): Gap[] {
  const n = values.length;
  let anchor = 0;
  while (anchor < n && Number.isNaN(values[anchor]!)) anchor++;
  if (anchor === n) return [{ first: 0, length: n }];
  const gaps: Gap[] = [];
  let run = 0;
  for (let step = 1; step <= n; step++) {
    const k = (anchor + step) % n;
    if (Number.isNaN(values[k]!)) run++;
    else if (run > 0) {
      gaps.push({ first: (k - run + n) % n, length: run });
      run = 0;
    }
  }
  return gaps.sort((a, b) => a.first - b.first);
}

/** Fills gaps of at most `longest_h` by straight lines (directions turn the short way); returns the filled and the others. */
export function fillGaps(
  values: Float64Array,
  longest_h: number = longestFilledGap_h,
  circular = false,
): { readonly filled: readonly Gap[]; readonly open: readonly Gap[] } {
  const n = values.length;
  const filled: Gap[] = [];
  const open: Gap[] = [];
  for (const gap of gapsOf(values)) {
    if (gap.length > longest_h || gap.length >= n) {
      open.push(gap);
      continue;
    }
    const before = values[(gap.first - 1 + n) % n]!;
    const after = values[(gap.first + gap.length) % n]!;
    const rise = circular ? ((((after - before) % 360) + 540) % 360) - 180 : after - before;
    for (let k = 0; k < gap.length; k++) {
      const value = before + (rise * (k + 1)) / (gap.length + 1);
      values[(gap.first + k) % n] = circular ? (value + 360) % 360 : value;
    }
    filled.push(gap);
  }
  return { filled, open };
}
