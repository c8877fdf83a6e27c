import type { Issue } from "../../climate/index.ts";
import type { Case, Finding, MemberSummary, NamedTexts, RunResult } from "../../solver/index.ts";

export interface Ran {
  readonly case: Case;
  readonly result: RunResult;
  readonly findings: readonly Finding[];
}

/** What came of a case: what was asked for, or the reasons why it could not begin. */
export type Outcome<T> =
  { readonly kind: "done"; readonly value: T } | { readonly kind: "issues"; readonly issues: readonly Issue[] };

export type OnProgress = (done: number, of: number) => void;

/** The face a worker thread shows to the command line, carried by Comlink. */
export interface RunWorker {
  run(aCase: Case, files: NamedTexts, onProgress: OnProgress): Promise<Outcome<Omit<Ran, "case">>>;
  /** The same run, of which only the summary is kept: studies make dozens. */
  summarise(aCase: Case, files: NamedTexts, onProgress: OnProgress): Promise<Outcome<MemberSummary>>;
}
