import { textWidth, widestWord, type Type } from "./text-width.ts";

export interface ColumnText {
  readonly label: string;
  readonly numeric?: boolean | undefined;
  readonly cells: readonly string[];
}

/** No word is so long that its column takes more than this share of the table. */
const largestWordShare = 0.3;
/** Below 1: a column with little to say is not squeezed by one with much. */
const lackPower = 0.75;

/**
 * Widths of a table's columns, filling `width` px: each as wide as its longest text where there is room; else figures keep their
 * line, and what is left is shared among the columns of words by what they lack.
 *
 * @param gap  space after each column
 */
export function columnWidths(
  columns: readonly ColumnText[],
  width: number,
  gap: number,
  type: Type,
  headType: Type,
): number[] {
  const cap = width * largestWordShare;
  const natural = columns.map(
    ({ label, cells }) =>
      gap + Math.max(textWidth(label, headType), ...cells.map((cell) => textWidth(cell, type)), 8) + 1,
  );
  const least = columns.map(({ label, cells, numeric }, index) => {
    const words = gap + Math.max(widestWord(label, headType), ...cells.map((cell) => widestWord(cell, type)), 8) + 1;
    if (numeric !== true) return Math.min(words, cap);
    const figures = gap + Math.max(...cells.map((cell) => textWidth(cell, type)), widestWord(label, headType), 8) + 1;
    return Math.min(figures, natural[index]!);
  });
  const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
  const spare = width - sum(natural);
  if (spare >= 0) {
    const words = columns.filter((column) => column.numeric !== true).length;
    return natural.map((value, index) =>
      words === 0 ? value + spare / columns.length : columns[index]!.numeric === true ? value : value + spare / words,
    );
  }
  const left = width - sum(least);
  if (left < 0) return least.map((value) => (value * width) / sum(least));
  const lacking = natural.map((value, index) => Math.max(0, value - least[index]!) ** lackPower);
  const allLacking = sum(lacking);
  return least.map((value, index) => value + (allLacking === 0 ? 0 : (left * lacking[index]!) / allLacking));
}
