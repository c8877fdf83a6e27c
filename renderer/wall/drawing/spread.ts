/**
 * Moves labels apart until each has `room`, as little as possible and in order; they stay at or below `top`.
 * Labels of one place keep their order.
 */
export function spread(wanted: readonly number[], room: number, top: number): number[] {
  // Labels that touch are moved as one block about the mean of where they want to be.
  const blocks: { sum: number; count: number }[] = [];
  const startOf = (block: { sum: number; count: number }): number =>
    Math.max(top, block.sum / block.count - ((block.count - 1) * room) / 2);
  for (const place of wanted) {
    blocks.push({ sum: place, count: 1 });
    while (blocks.length > 1) {
      const last = blocks.at(-1)!;
      const before = blocks.at(-2)!;
      if (startOf(before) + before.count * room <= startOf(last)) break;
      blocks.splice(-2, 2, { sum: before.sum + last.sum, count: before.count + last.count });
    }
  }
  return blocks.flatMap((block) => Array.from({ length: block.count }, (_, index) => startOf(block) + index * room));
}
