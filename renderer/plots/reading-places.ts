import { overlap, type Box } from "./label-places.ts";

export interface Reading {
  /** Of the mark, in the plot's pixels. */
  readonly y: number;
  readonly width: number;
}

export interface ReadingPlace {
  readonly x: number;
  /** Baseline. */
  readonly y: number;
  readonly anchor: "start" | "end";
}

const height = 14;
const aside = 8;
const above = -7;
const below = 15;

/**
 * Where the cursor's readings are written: below or above their marks, right or left of the cursor, where they cover least of the
 * words on the chart and of each other. Below and to the right where nothing stands in the way.
 *
 * @param area inner size of the plot [px]
 * @param taken words that already stand on it
 */
export function placeReadings(
  readings: readonly Reading[],
  x: number,
  area: { readonly width: number; readonly height: number },
  taken: readonly Box[],
): ReadingPlace[] {
  const boxes = [...taken];
  return readings.map(({ y, width }) => {
    let best: { place: ReadingPlace; box: Box; cost: number } | null = null;
    for (const anchor of ["start", "end"] as const)
      for (const shift of [below, above]) {
        const left = anchor === "start" ? x + aside : x - aside - width;
        const box: Box = { left, right: left + width, top: y + shift - height + 3, bottom: y + shift + 3 };
        const outside =
          Math.max(0, -left) + Math.max(0, box.right - area.width) + Math.max(0, box.bottom - area.height);
        const cost = boxes.reduce((sum, other) => sum + overlap(box, other), 0) + 100 * outside;
        if (best === null || cost < best.cost)
          best = { place: { x: anchor === "start" ? x + aside : x - aside, y: y + shift, anchor }, box, cost };
      }
    boxes.push(best!.box);
    return best!.place;
  });
}
