import { NeverBegun, solverPool, type RunningJob } from "../solver-pool/index.ts";
import type { Case } from "../../solver/index.ts";
import { planCases, type PlannedCase } from "./cases.ts";
import { filesMark } from "./files-store.ts";
import { useProjectStore } from "./project-store.ts";
import type { RunEntry, RunSlot } from "./run-view.ts";
import { dropEntries, dropOldResults, putEntry, putProgress, putSlots, slotName, useRunsStore } from "./runs-store.ts";
import { useViewStore } from "./view-store.ts";

/** Time for a second keystroke or a dragged value to settle before a run begins. */
const settle_ms = 250;
const progressEvery_ms = 100;

const underWay = new Map<string, RunningJob>();
let timer: ReturnType<typeof setTimeout> | undefined;

/** Redraws the plan for the project as it stands: marks results stale at once, runs what is missing a moment later. */
export function replan(edit: string | null, wait_ms = settle_ms): void {
  const { project } = useProjectStore.getState();
  const plan = planCases(project, filesMark(project));
  const before = useRunsStore.getState();
  putSlots(
    Object.fromEntries(
      plan.map((planned) => {
        const name = slotName(planned.option, planned.path);
        return [name, nextSlot(planned, before.slots[name], before.entries, edit)];
      }),
    ),
  );
  letGo(new Set(plan.map((planned) => planned.key)));
  clearTimeout(timer);
  timer = setTimeout(() => runMissing(inOrder(plan)), wait_ms);
}

function nextSlot(
  planned: PlannedCase,
  before: RunSlot | undefined,
  entries: Readonly<Record<string, RunEntry>>,
  edit: string | null,
): RunSlot {
  const kept = { key: planned.key, case: planned.case, issues: planned.issues };
  if (!before) return { ...kept, earlier: null, editSince: null };
  const entry = before.key === null ? undefined : entries[before.key];
  const wasWhole = entry?.status === "finished" && entry.result !== null;
  if (before.key === planned.key) return { ...before, ...kept };
  return wasWhole
    ? { ...kept, earlier: { result: entry.result, case: entry.case }, editSince: edit }
    : { ...kept, earlier: before.earlier, editSince: before.editSince ?? edit };
}

/** The path in view of every option first, the option in view before the others; then all other paths. */
function inOrder(plan: readonly PlannedCase[]): readonly PlannedCase[] {
  const { option, path } = useViewStore.getState();
  const rank = (planned: PlannedCase): number => (planned.path === path ? 0 : 2) + (planned.option === option ? 0 : 1);
  return [...plan].sort((one, other) => rank(one) - rank(other));
}

function letGo(wanted: ReadonlySet<string | null>): void {
  const gone = new Set<string>();
  for (const [key, job] of underWay) {
    if (wanted.has(key)) continue;
    job.stop();
    underWay.delete(key);
    gone.add(key);
  }
  if (gone.size > 0) dropEntries(gone);
}

function runMissing(plan: readonly PlannedCase[]): void {
  const { entries } = useRunsStore.getState();
  for (const { key, case: aCase } of plan) {
    if (key === null || aCase === null || underWay.has(key)) continue;
    if (entries[key]) continue;
    begin(key, aCase);
  }
  dropOldResults();
}

function begin(key: string, aCase: Case): void {
  putEntry(key, { case: aCase, status: "waiting", progress: null, result: null, failure: null, issues: [] });
  const job = solverPool.run({
    case: aCase,
    onStart: () =>
      putEntry(key, { case: aCase, status: "running", progress: { done: 0, of: 1, startedAt: Date.now() } }),
    onProgress: (done, of) => noteProgress(key, done, of),
  });
  underWay.set(key, job);
  void settle(key, aCase, job);
}

async function settle(key: string, aCase: Case, job: RunningJob): Promise<void> {
  try {
    const outcome = await job.outcome;
    if (underWay.get(key) !== job) return;
    underWay.delete(key);
    if (outcome.kind === "issues") {
      const first = outcome.issues.find((issue) => issue.severity === "error") ?? outcome.issues[0];
      const failure = first
        ? { message: first.message, remedy: first.remedy }
        : { message: "The run could not begin.", remedy: "Check the Exposure sheet." };
      putEntry(key, { case: aCase, status: "failed", progress: null, failure, issues: outcome.issues });
      return;
    }
    const { result } = outcome;
    const failure = result.failure
      ? {
          message: `The step could not be solved on ${result.failure.date}, in ${result.failure.layer}: ${result.failure.cause}`,
          remedy: result.failure.remedy,
        }
      : null;
    putEntry(key, { case: aCase, status: result.status, progress: null, result, failure, issues: [] });
  } catch (error) {
    if (underWay.get(key) !== job) return;
    underWay.delete(key);
    if (error instanceof NeverBegun) {
      putEntry(key, { case: aCase, status: "stopped", progress: null });
      return;
    }
    const message = error instanceof Error ? error.message : String(error);
    const failure = {
      message: `The run broke off: ${message}.`,
      remedy: "Run again; if it breaks off again, undo the last change.",
    };
    putEntry(key, { case: aCase, status: "failed", progress: null, failure });
  }
}

const news = new Map<string, NonNullable<RunEntry["progress"]>>();
let newsTimer: ReturnType<typeof setTimeout> | undefined;

function noteProgress(key: string, done: number, of: number): void {
  const startedAt = useRunsStore.getState().entries[key]?.progress?.startedAt ?? Date.now();
  news.set(key, { done, of, startedAt });
  newsTimer ??= setTimeout(() => {
    newsTimer = undefined;
    putProgress(Object.fromEntries(news));
    news.clear();
  }, progressEvery_ms);
}

/** Stops all runs and keeps what they have computed. Results of an earlier wall stay in view, marked as such. */
export function stopRuns(): void {
  clearTimeout(timer);
  for (const job of underWay.values()) job.stop();
}

/** Runs again whatever was stopped or failed. */
export function runAgain(): void {
  const { entries, slots } = useRunsStore.getState();
  const unfinished = Object.values(slots)
    .map((slot) => slot.key)
    .filter((key): key is string => key !== null)
    .filter((key) => entries[key]?.status === "stopped" || entries[key]?.status === "failed");
  dropEntries(new Set(unfinished));
  replan(null, 0);
}

export const isRunning = (): boolean => underWay.size > 0;
