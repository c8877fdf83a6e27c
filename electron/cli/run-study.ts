import * as Comlink from "comlink";
import type { Issue } from "../../climate/index.ts";
import type { Member, MemberSummary, NamedTexts, Study } from "../../solver/index.ts";
import { ProgressLine } from "./progress.ts";
import type { Outcome } from "./run-contract.ts";
import { RunPool } from "./run-pool.ts";

export type StudyOutcome<Answer> =
  | { readonly ok: true; readonly answer: Answer; readonly unfinished: number }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** Runs the members of a study in worker threads, then those it asks for next, until it asks for none. */
export async function runStudyInThreads<Answer>(
  study: Study<Answer>,
  files: NamedTexts,
): Promise<StudyOutcome<Answer>> {
  const done = new Map<string, MemberSummary>();
  const pool = new RunPool();
  try {
    let waiting: readonly Member[] = study.members;
    while (waiting.length > 0) {
      const progress = new ProgressLine(process.stderr, () => performance.now());
      for (const member of waiting) progress.expect(member.label);
      const outcomes = await pool.map<Member, Outcome<MemberSummary>>(waiting, (worker, member) => {
        const report = Comlink.proxy((hours: number, of: number) => progress.report(member.label, hours, of));
        return worker.summarise(member.case, files, report);
      });
      progress.finish();
      for (const [place, outcome] of outcomes.entries()) {
        if (outcome.kind === "issues") return { ok: false, issues: outcome.issues };
        done.set(waiting[place]!.key, outcome.value);
      }
      waiting = (study.next?.(done) ?? []).filter((member) => !done.has(member.key));
    }
    const unfinished = [...done.values()].filter((summary) => summary.status !== "finished").length;
    return { ok: true, answer: study.reduce(done), unfinished };
  } finally {
    await pool.end();
  }
}
