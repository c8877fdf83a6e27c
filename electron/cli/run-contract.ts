import type { Issue } from "../../climate/index.ts";
import type { Case, NamedTexts, RunResult } from "../../solver/index.ts";

export type RunOutcome =
  | { readonly kind: "result"; readonly result: RunResult }
  | { readonly kind: "issues"; readonly issues: readonly Issue[] };

/** The face a worker thread shows to the command line, carried by Comlink. */
export interface RunWorker {
  run(aCase: Case, files: NamedTexts, onProgress: (done: number, of: number) => void): Promise<RunOutcome>;
}
