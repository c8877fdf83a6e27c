import type { Issue } from "../../../climate/index.ts";
import type { Member, Project, Study } from "../../../solver/index.ts";
import { NeverBegun, solverPool, type RunningJob, type SummaryOutcome } from "../../solver-pool/index.ts";
import { askAt, changeAsk, putAsk, type Ask } from "./asks-store.ts";
import { knownMembers } from "./known-members.ts";
import { forgetRun, keepRun, knownRun, memberKey } from "./member-cache.ts";

/** Members under way, by slot. One question runs at a time: starting one pauses the others. */
const underWay = new Map<string, Set<RunningJob<SummaryOutcome>>>();

export const signatureOf = (study: Study<unknown>, mark: string): string =>
  `${study.id}|${study.members.map((member) => memberKey(member.case, mark)).join()}`;

/** Runs what is not known of a study, as many members at once as there are workers, and keeps each as it ends. */
export function ask(slot: string, study: Study<unknown>, mark: string, project: Project): void {
  for (const other of underWay.keys()) halt(other, "paused");
  for (const member of study.members)
    if (knownRun(member.case, mark)?.summary.status === "failed") forgetRun(member.case, mark);
  putAsk(slot, {
    study,
    mark,
    signature: signatureOf(study, mark),
    project,
    status: "running",
    startedAt: Date.now(),
    seconds: null,
    failure: null,
  });
  underWay.set(slot, new Set());
  feed(slot, new Set());
}

/** Ends a question's runs and keeps the members that are done. */
export const stopAsking = (slot: string): void => halt(slot, "stopped");

/** The same for a question that was edited while it ran. */
export const pauseAsking = (slot: string): void => halt(slot, "paused");

function halt(slot: string, status: "paused" | "stopped"): void {
  const jobs = underWay.get(slot);
  if (!jobs) return;
  underWay.delete(slot);
  for (const job of jobs) job.stop();
  end(slot, { status });
}

const end = (slot: string, change: Pick<Ask, "status"> & Partial<Ask>): void => {
  const before = askAt(slot);
  if (before) changeAsk(slot, { ...change, seconds: (Date.now() - before.startedAt) / 1000 });
};

/** @param begun  keys of the members handed in since the question was asked */
function feed(slot: string, begun: Set<string>): void {
  const jobs = underWay.get(slot);
  const asked = askAt(slot);
  if (!jobs || !asked) return;
  const { missing } = knownMembers(asked.study, (aCase) => knownRun(aCase, asked.mark)?.summary);
  if (missing.length === 0) {
    underWay.delete(slot);
    end(slot, { status: "finished" });
    return;
  }
  for (const member of missing) {
    if (jobs.size >= solverPool.size) return;
    const key = memberKey(member.case, asked.mark);
    if (begun.has(key)) continue;
    begun.add(key);
    const job = solverPool.summarise({ case: member.case });
    jobs.add(job);
    void settle(slot, jobs, begun, member, job);
  }
}

async function settle(
  slot: string,
  jobs: Set<RunningJob<SummaryOutcome>>,
  begun: Set<string>,
  member: Member,
  job: RunningJob<SummaryOutcome>,
): Promise<void> {
  const mark = askAt(slot)!.mark;
  const isCurrent = (): boolean => underWay.get(slot) === jobs;
  try {
    const outcome = await job.outcome;
    jobs.delete(job);
    if (outcome.kind === "issues") {
      if (isCurrent()) fail(slot, jobs, issueWords(outcome.issues));
      return;
    }
    // A stopped member is no member: it is run again when the question is.
    if (outcome.summary.status !== "stopped") keepRun(member.case, mark, outcome);
    if (isCurrent()) feed(slot, begun);
  } catch (error) {
    jobs.delete(job);
    if (!isCurrent() || error instanceof NeverBegun) return;
    fail(slot, jobs, {
      message: `${member.label}: the run broke off, ${error instanceof Error ? error.message : String(error)}.`,
      remedy: "Ask again; if it breaks off again, undo the last change.",
    });
  }
}

function fail(slot: string, jobs: Set<RunningJob<SummaryOutcome>>, failure: NonNullable<Ask["failure"]>): void {
  underWay.delete(slot);
  for (const job of jobs) job.stop();
  end(slot, { status: "failed", failure });
}

function issueWords(issues: readonly Issue[]): NonNullable<Ask["failure"]> {
  const first = issues.find(({ severity }) => severity === "error") ?? issues[0];
  return first
    ? { message: first.message, remedy: first.remedy }
    : { message: "The runs could not begin.", remedy: "Look at the Exposure sheet." };
}
