import type { Book, RunLog, ThroughWallMap } from "../run/index.ts";
import type { Case, Project } from "../model/index.ts";
import type {
  DryingAnswer,
  HowThickAnswer,
  HumidityAnswer,
  MemberSummary,
  SideBySideAnswer,
  SwapsAnswer,
  UnitSystem,
  WhatIfAnswer,
} from "../studies/index.ts";

/** One row of a code check: energy and vapour stand on separate lines. */
export interface CodeLine {
  readonly option: string;
  readonly subject: string;
  readonly says: string;
  readonly edition: string;
  readonly where: string;
  readonly sentence: string;
}

/** The books of one run, for the appendix. */
export interface ReportedBooks {
  readonly option: string;
  readonly path: string;
  readonly water: Book;
  readonly heat: Book;
  readonly log: RunLog;
}

export interface ReportedOption {
  readonly id: string;
  readonly name: string;
  /** Path that is drawn and spoken of. */
  readonly shown: Case;
  readonly summary: MemberSummary;
  /** All paths that were run, the shown one included. */
  readonly paths: readonly { readonly case: Case; readonly summary: MemberSummary }[];
  readonly map: ThroughWallMap | null;
  readonly wholeWall: { readonly U_Wm2K: number; readonly method: string } | null;
  /** Breaks in the control layers, as sentences. */
  readonly breaks: readonly string[];
}

/** What a report is made from. Nothing is run here: no result, no line. */
export interface ReportInput {
  readonly project: Project;
  /** What the client asked. */
  readonly question?: string;
  /** The first two are drawn on the client's page. */
  readonly options: readonly ReportedOption[];
  readonly codeLines: readonly CodeLine[];
  readonly answers: {
    readonly sideBySide?: SideBySideAnswer;
    readonly howThick?: HowThickAnswer;
    readonly drying?: DryingAnswer;
    readonly whatIf?: WhatIfAnswer;
    readonly humidity?: HumidityAnswer;
    readonly swaps?: SwapsAnswer;
  };
  /** Air of the coldest month, outdoors and in the room. */
  readonly winter: {
    readonly month: number;
    readonly outdoor_C: number;
    readonly room_C: number;
    readonly roomHumidity: number;
  };
  readonly weather: { readonly label: string; readonly kind: string; readonly sha256: string };
  readonly books: readonly ReportedBooks[];
  /** Rerun on a finer grid: largest difference by quantity; null: not asked for. */
  readonly selfCheck: readonly { readonly what: string; readonly difference: string }[] | null;
  readonly versions: Readonly<Record<string, string>>;
  /** Date in words, from the host; null: a draft. */
  readonly issued: string | null;
  readonly units: UnitSystem;
}

export interface DrawnLayer {
  readonly name: string;
  readonly thickness_m: number;
  readonly hatch: Hatch;
  /** Humidity shown as a stain, 0..1; null: not stained. */
  readonly stain: number | null;
}

export const hatches = [
  "lumberThrough",
  "lumberAcross",
  "strandBoard",
  "plywood",
  "woodBoard",
  "fibreFill",
  "fibreBoard",
  "rigidFoam",
  "sprayedFoam",
  "gypsum",
  "fibreCement",
  "brick",
  "concrete",
  "metal",
  "air",
  "membrane",
  "plain",
] as const;
export type Hatch = (typeof hatches)[number];

export type Block =
  | { readonly kind: "heading"; readonly text: string }
  | { readonly kind: "paragraph"; readonly text: string; readonly tone?: "note" }
  | { readonly kind: "list"; readonly ordered: boolean; readonly items: readonly string[] }
  | {
      readonly kind: "table";
      readonly id: string;
      readonly caption: string;
      readonly columns: readonly { readonly label: string; readonly numeric?: boolean }[];
      readonly rows: readonly (readonly string[])[];
      readonly note?: string;
    }
  | { readonly kind: "walls"; readonly scale: number; readonly walls: readonly DrawnWall[] };

/** A wall as the client sees it: section, one temperature, cups, a year. */
export interface DrawnWall {
  readonly title: string;
  /** Outside first. */
  readonly layers: readonly DrawnLayer[];
  readonly outside: string;
  readonly inside: string;
  /** Index of the layer whose inner face is marked. */
  readonly marked: number;
  readonly mark: string;
  readonly markNote: string;
  /** Cups of water in each sheet, rounded to the half; null where the wall has no wooden sheathing. */
  readonly cups: number | null;
  readonly cupsNote: string;
  readonly year: {
    readonly days: number;
    readonly columns: number;
    readonly humidity: readonly number[];
    readonly firstMonth: number;
  } | null;
  readonly yearNote: string;
}

export const readers = ["client", "official", "builder", "appendix", "books"] as const;
/** Whom a page is for; the last two are for whoever checks. */
export type Reader = (typeof readers)[number];

export interface ReportPage {
  readonly reader: Reader;
  readonly title: string;
  readonly question: string;
  readonly answer: string;
  readonly blocks: readonly Block[];
}

export interface TitleBlock {
  readonly project: string;
  readonly site: string;
  readonly weather: string;
  readonly run: string;
  readonly issued: string;
  readonly options: string;
}

/** A report as data; the window, the printed page and the command line dress it. */
export interface Report {
  readonly format: "wallyear-report";
  readonly formatVersion: 1;
  readonly units: UnitSystem;
  readonly titleBlock: TitleBlock;
  /** All that bear on this wall. */
  readonly cautions: readonly string[];
  /** Those that stand on every sheet, in few words. */
  readonly standing: readonly string[];
  readonly pages: Readonly<Record<Reader, ReportPage>>;
}
