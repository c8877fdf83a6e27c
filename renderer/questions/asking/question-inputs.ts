import { create } from "zustand";

/** What must hold for an answer to count. */
export type Criterion = "deciding" | "every" | "moisture" | "mould" | "thirtyDays";

/**
 * What a question asks that differs from what is drawn; null: as drawn. The project stays as it is: a question may stand at
 * another place or with another paint than the wall on the board.
 */
export interface QuestionInputs {
  /** "layer:ID", or "board:MATERIAL" for a board of it in place of what lies outside. */
  readonly insulation: string | null;
  readonly place: string | null;
  /** Winter humidity, 0..1. */
  readonly humidity: number | null;
  readonly paint_perm: number | null;
  readonly criterion: Criterion;
  /** Wetting test: ready-made id, layer, date, which options. */
  readonly wetting: string;
  readonly wettedLayer: string | null;
  readonly wettingDate: string;
  readonly dryingOptions: "all" | "this";
  /** What if: how many inputs, size of the sample, inputs that nobody knows, ranges changed by hand. */
  readonly most: number;
  readonly sampleRuns: number;
  readonly notKnown: readonly string[];
  readonly ranges: Readonly<Record<string, readonly [number, number]>>;
}

export const asDrawn: QuestionInputs = {
  insulation: null,
  place: null,
  humidity: null,
  paint_perm: null,
  criterion: "deciding",
  wetting: "rainedOn",
  wettedLayer: null,
  wettingDate: "10-01",
  dryingOptions: "all",
  most: 8,
  sampleRuns: 0,
  notKnown: [],
  ranges: {},
};

export const useQuestionInputs = create<QuestionInputs>()(() => asDrawn);

export const askWith = (change: Partial<QuestionInputs>): void => useQuestionInputs.setState(change);
