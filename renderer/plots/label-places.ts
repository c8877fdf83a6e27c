/** Finds places for the words on lines, in pixels, so that words touch neither each other nor foreign lines. */
export interface Track {
  /** Height of the line at each pixel step along x; NaN where it is not drawn. */
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly width: number;
}

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface LabelPlace {
  /** Middle of the words. */
  readonly x: number;
  readonly y: number;
}

/** Area that two boxes share [px2]. */
export const overlap = (a: Box, b: Box): number =>
  Math.max(0, Math.min(a.right, b.right) - Math.max(a.left, b.left)) *
  Math.max(0, Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top));

/**
 * A place for each track's words above or below its own line. Chosen one by one, in order, by what the words would cover.
 *
 * @param taken boxes already in use, such as the words on limits
 */
export function placeLabels(
  tracks: readonly Track[],
  area: Box,
  height: number,
  taken: readonly Box[] = [],
): LabelPlace[] {
  const boxes = [...taken];
  return tracks.map((track, own) => {
    let best: { place: LabelPlace; box: Box; cost: number } | null = null;
    for (let x = area.left + track.width / 2 + 6; x <= area.right - track.width / 2 - 6; x += 8) {
      for (const side of [-1, 1]) {
        for (const gap of [2, 7]) {
          const span = bounds(track, x - track.width / 2, x + track.width / 2);
          if (!span) continue;
          const y = side < 0 ? span.low - height / 2 - gap : span.high + height / 2 + gap;
          const box = {
            left: x - track.width / 2,
            right: x + track.width / 2,
            top: y - height / 2,
            bottom: y + height / 2,
          };
          let cost = (span.high - span.low) * 1.5 + gap * 0.5;
          if (box.top < area.top || box.bottom > area.bottom) cost += 400;
          for (const other of boxes) cost += 4 * overlap(box, grown(other, 3));
          tracks.forEach((other, index) => {
            if (index === own) return;
            const near = bounds(other, box.left - 4, box.right + 4);
            if (!near) return;
            const hidden = Math.min(box.bottom + 2, near.high) - Math.max(box.top - 2, near.low);
            if (hidden >= 0) cost += 120 + 10 * hidden;
            else cost += Math.max(0, 16 + hidden);
          });
          if (!best || cost < best.cost) best = { place: { x, y }, box, cost };
        }
      }
    }
    if (!best) return { x: (area.left + area.right) / 2, y: area.top + height / 2 };
    boxes.push(best.box);
    return best.place;
  });
}

/** A box for words that stand on a level line: as far left as no track runs through them; at the left end if all is full. */
export function clearBox(tracks: readonly Track[], line: number, wide: number, width: number): Box {
  const at = (left: number): Box => ({ left, right: left + wide, top: line - 16, bottom: line - 1 });
  for (let left = 0; left <= width - wide; left += 12) {
    const free = tracks.every((track) => {
      const near = bounds(track, left - 4, left + wide + 4);
      return !near || near.low > line + 1 || near.high < line - 17;
    });
    if (free) return at(left);
  }
  return at(0);
}

const grown = (box: Box, by: number): Box => ({
  left: box.left - by,
  right: box.right + by,
  top: box.top - by,
  bottom: box.bottom + by,
});

function bounds(track: Track, from: number, to: number): { low: number; high: number } | null {
  let low = Infinity;
  let high = -Infinity;
  for (let i = 0; i < track.x.length; i++) {
    if (track.x[i]! < from || track.x[i]! > to || !Number.isFinite(track.y[i]!)) continue;
    low = Math.min(low, track.y[i]!);
    high = Math.max(high, track.y[i]!);
  }
  return low <= high ? { low, high } : null;
}

/** Width of words in the chart's family, near enough to keep them apart [px]. */
export const wordsWidth = (text: string, size_px: number, bold = true): number =>
  text.length * size_px * (bold ? 0.53 : 0.5);
