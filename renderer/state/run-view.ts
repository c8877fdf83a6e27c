import type { Issue } from "../../climate/index.ts";
import type { Case, RunResult } from "../../solver/index.ts";

/**
 * What a sheet may show for one option and path.
 *
 * empty     nothing was run and nothing is under way; `issues` say what is missing
 * running   under way; `result` is that of the wall before, if there is one, and `staleBecause` names the edit
 * stale     `result` belongs to an earlier wall; `staleBecause` names the edit
 * stopped   the user stopped it; `result` holds what was computed
 * failed    it could not go on; `result` holds what was computed, if anything was
 * finished  `result` belongs to the wall as it stands
 */
export interface RunView {
  readonly status: "empty" | "running" | "stale" | "stopped" | "failed" | "finished";
  readonly progress?: { readonly done: number; readonly of: number; readonly startedAt: number };
  readonly result?: RunResult;
  /** The case that `result` came from. */
  readonly case?: Case;
  readonly staleBecause?: string;
  readonly failure?: { readonly message: string; readonly remedy: string };
  readonly issues: readonly Issue[];
}

/** One case's run. Keyed by the case's hash, so that an edited wall never shows an old result as its own. */
export interface RunEntry {
  readonly case: Case;
  readonly status: "waiting" | "running" | "stopped" | "failed" | "finished";
  readonly progress: { readonly done: number; readonly of: number; readonly startedAt: number } | null;
  readonly result: RunResult | null;
  readonly failure: { readonly message: string; readonly remedy: string } | null;
  readonly issues: readonly Issue[];
}

/** What stands at one option and path now: its case as drawn, and the last whole result. */
export interface RunSlot {
  readonly key: string | null;
  readonly case: Case | null;
  readonly issues: readonly Issue[];
  readonly earlier: { readonly result: RunResult; readonly case: Case } | null;
  /** The first edit since `earlier` was current. */
  readonly editSince: string | null;
}

export function runViewOf(slot: RunSlot | undefined, entry: RunEntry | undefined): RunView {
  if (!slot) return { status: "empty", issues: [] };
  const issues = [...slot.issues, ...(entry?.issues ?? [])];
  const earlier = slot.earlier
    ? { result: slot.earlier.result, case: slot.earlier.case, staleBecause: slot.editSince ?? "Change the wall" }
    : {};
  const own = entry?.result ? { result: entry.result, case: entry.case } : {};
  switch (entry?.status) {
    case "finished":
      return { status: "finished", issues, ...own };
    case "stopped":
      return entry.result
        ? { status: "stopped", issues, ...own }
        : { status: slot.earlier ? "stale" : "empty", issues, ...earlier };
    case "failed":
      return { status: "failed", issues, ...own, ...(entry.failure ? { failure: entry.failure } : {}) };
    case "running":
    case "waiting":
      return { status: "running", issues, ...(entry.progress ? { progress: entry.progress } : {}), ...earlier };
    case undefined:
      return { status: slot.earlier ? "stale" : "empty", issues, ...earlier };
  }
}
