export type Paper = "letter" | "a4";

/** A sheet of paper, lying: its size in CSS px of 96 to the inch, and in the words of CSS. */
export interface PaperSize {
  readonly width: number;
  readonly height: number;
  readonly page: string;
  readonly cssWidth: string;
  readonly cssHeight: string;
  readonly words: string;
}

export const papers: Readonly<Record<Paper, PaperSize>> = {
  letter: {
    width: 1056,
    height: 816,
    page: "letter landscape",
    cssWidth: "11in",
    cssHeight: "8.5in",
    words: "Letter, landscape",
  },
  a4: {
    width: 1122.5,
    height: 793.7,
    page: "A4 landscape",
    cssWidth: "297mm",
    cssHeight: "210mm",
    words: "A4, landscape",
  },
};

/** Measures that the style and the setting of sheets share [px]. */
export const setting = {
  /** Paper outside of the border; printers reach no further. */
  margin: 30,
  border: 1.5,
  /** From the border to what is written. */
  side: 30,
  top: 22,
  /** More of it where the sheet's name stands above and no question beside it. */
  laterTop: 20,
  footGap: 12,
  titleBlockWidth: 396,
  footColumnGap: 30,
  labelColumn: 112,
  labelGap: 16,
  cellGap: 14,
  /** Sizes and lines of type. */
  question: { size: 18, line: 23 },
  answer: { size: 30, line: 36 },
  answerRest: { size: 17, line: 23 },
  body: { size: 14.5, line: 20 },
  heading: { size: 15, line: 20 },
  note: { size: 13.2, line: 17 },
  caution: { size: 13.2, line: 16 },
  blockLabel: { size: 13.2, line: 15 },
  blockValue: { size: 14.2, line: 18 },
} as const;

/** Width that is written on [px]. */
export const writtenWidth = (paper: Paper): number =>
  papers[paper].width - 2 * (setting.margin + setting.border + setting.side);
