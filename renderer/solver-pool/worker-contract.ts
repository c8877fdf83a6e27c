import type { Issue } from "../../climate/index.ts";
import type {
  Case,
  MemberSummary,
  MonthlyAir,
  Project,
  PublishedCheckResult,
  RunResult,
  SelfCheck,
} from "../../solver/index.ts";
import type { SurveyOutcome } from "../exposure/survey.ts";
import type { ReportOrder, ReportOutcome } from "../report/gather-report.ts";

/** What came of one run: a result (finished, stopped or failed in mid-run), or the reasons why it could not begin. */
export type RunOutcome =
  | { readonly kind: "result"; readonly result: RunResult }
  | { readonly kind: "issues"; readonly issues: readonly Issue[] };

/** What came of one member of a study. `air`: monthly means of the place and the room; null in a laboratory. */
export type SummaryOutcome =
  | { readonly kind: "summary"; readonly summary: MemberSummary; readonly air: MonthlyAir | null }
  | { readonly kind: "issues"; readonly issues: readonly Issue[] };

/** A rerun on a finer grid beside the run; `check` is null where it was stopped or could not go on. */
export type SelfCheckOutcome =
  | { readonly kind: "checked"; readonly check: SelfCheck | null }
  | { readonly kind: "issues"; readonly issues: readonly Issue[] };

/** Today's figures of a published case, and the time it took [s]. */
export interface PublishedCheckOutcome {
  readonly result: PublishedCheckResult;
  readonly seconds: number;
}

export type OnProgress = (done: number, of: number) => void;

/** The face a solver worker shows to the page, carried by Comlink. */
export interface SolverWorker {
  /** Keeps the text of a weather or logger file for later runs. */
  keepFile(name: string, text: string): void;
  run(id: number, aCase: Case, onProgress: OnProgress): Promise<RunOutcome>;
  /** Runs a case as a member of a study: its series stay here, only a summary leaves. */
  summarise(id: number, aCase: Case): Promise<SummaryOutcome>;
  /** Weather and room of a project, day by day. */
  survey(project: Project): SurveyOutcome;
  /** What a report is made from, of runs that have finished. */
  report(order: ReportOrder): ReportOutcome;
  selfCheck(id: number, aCase: Case, result: RunResult, onProgress: OnProgress): Promise<SelfCheckOutcome>;
  publishedCheck(id: number, checkId: string, onProgress: OnProgress): Promise<PublishedCheckOutcome>;
  /** Ends run `id` at its next pause and keeps what was computed. */
  stop(id: number): void;
}
