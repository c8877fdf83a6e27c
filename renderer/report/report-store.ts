import { create } from "zustand";
import type { Paper, Reader, Report, ReportInput } from "../../solver/index.ts";

/** A page of the report, or the sheet of published cases that lies behind it. */
export type PageId = Reader | "proof";

/** A rerun on a finer grid, of the drawn path of each option. */
export interface SelfCheckState {
  /** Runs that it belongs to. */
  readonly signature: string;
  readonly status: "running" | "stopped" | "failed" | "finished";
  /** Share done of what is under way, 0..1. */
  readonly share: number;
  readonly rows: NonNullable<ReportInput["selfCheck"]>;
  readonly failure: string | null;
}

interface ReportState {
  readonly page: PageId;
  readonly paper: Paper;
  /** What the client asks, in the client's words; "": a question is made from the options. */
  readonly question: string;
  /** Options that are left out. */
  readonly without: readonly string[];
  /** What was made last, and of which runs. */
  readonly made: { readonly signature: string; readonly input: ReportInput } | null;
  readonly failure: { readonly signature: string; readonly message: string; readonly remedy: string } | null;
  readonly selfCheck: SelfCheckState | null;
  /** The report as it may be saved now; null: there is none, or the runs are of an earlier wall. */
  readonly current: Report | null;
}

export const useReportStore = create<ReportState>()(() => ({
  page: "client",
  paper: "letter",
  question: "",
  without: [],
  made: null,
  failure: null,
  selfCheck: null,
  current: null,
}));

export const setReport = (change: Partial<ReportState>): void => useReportStore.setState(change);
