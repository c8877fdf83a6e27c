/**
 * Advance widths of the program's typeface at 91 % width, in thousandths of its size, space to tilde.
 * COMPUTED: measured in a browser from the font file that ships with the program.
 */
const regular = [
  232, 241, 280, 560, 560, 560, 715, 280, 315, 315, 452, 560, 280, 394, 280, 560, 560, 560, 560, 560, 560, 560, 560,
  560, 560, 560, 280, 280, 560, 560, 560, 433, 912, 643, 606, 544, 665, 552, 531, 638, 689, 240, 240, 592, 510, 847,
  701, 681, 592, 681, 627, 505, 562, 676, 627, 1008, 613, 562, 548, 315, 289, 315, 560, 560, 499, 490, 535, 413, 535,
  489, 339, 535, 539, 221, 221, 494, 221, 812, 539, 527, 535, 535, 343, 425, 355, 534, 502, 810, 477, 502, 434, 335,
  560, 335, 560,
] as const;
const semiBold = [
  237, 270, 295, 590, 590, 590, 751, 295, 334, 334, 479, 590, 295, 413, 295, 590, 590, 590, 590, 590, 590, 590, 590,
  590, 590, 590, 295, 295, 590, 590, 590, 459, 971, 674, 629, 571, 694, 580, 558, 664, 713, 267, 267, 622, 533, 882,
  723, 718, 618, 718, 650, 533, 596, 699, 661, 1055, 644, 596, 574, 334, 341, 334, 590, 590, 538, 517, 566, 439, 566,
  514, 366, 566, 566, 250, 250, 537, 250, 844, 566, 555, 566, 566, 372, 447, 385, 561, 535, 845, 515, 535, 460, 354,
  590, 354, 590,
] as const;
/** Marks outside of that range that reports use; letters of other scripts count as the widest usual ones. */
const others: Readonly<Record<string, number>> = { "·": 295, "’": 250, "½": 961, "¼": 961, "¾": 961, "—": 864 };
const unknownMark = 640;

export interface Type {
  readonly size: number;
  readonly bold?: boolean;
  /** More than 1 where the typeface may be another: the host's own sans is wider. */
  readonly room: number;
}

/** Width of a text on one line [px]. */
export function textWidth(text: string, { size, bold, room }: Type): number {
  const widths: readonly number[] = bold === true ? semiBold : regular;
  let sum = 0;
  for (const mark of text) sum += widths[mark.codePointAt(0)! - 32] ?? others[mark] ?? unknownMark;
  return (sum / 1000) * size * room;
}

/** Lines that a text takes in a column of `width` px, broken at spaces and hyphens, and within a word only where it is wider than the column. */
export function lineCount(text: string, width: number, type: Type): number {
  const space = textWidth(" ", type);
  let lines = 1;
  let used = 0;
  let spaced = false;
  for (const piece of text.split(/(\s+|(?<=[-–]))/)) {
    if (piece === "") continue;
    if (/^\s+$/.test(piece)) {
      spaced = used > 0;
      continue;
    }
    const needed = textWidth(piece, type);
    const lead = spaced ? space : 0;
    spaced = false;
    if (used + lead + needed <= width) {
      used += lead + needed;
      continue;
    }
    if (used > 0) lines += 1;
    const broken = Math.max(0, Math.ceil(needed / width) - 1);
    lines += broken;
    used = needed - broken * width;
  }
  return lines;
}

/** The widest word of a text [px]. */
export const widestWord = (text: string, type: Type): number =>
  text.split(/\s+|(?<=[-–])/).reduce((widest, word) => Math.max(widest, textWidth(word, type)), 0);
