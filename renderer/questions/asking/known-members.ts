import type { Case, Member, MemberSummary, Study } from "../../../solver/index.ts";

/** What of a study is known already, and which members are to be run next. Nothing missing: the study is complete. */
export interface KnownMembers {
  readonly done: ReadonlyMap<string, MemberSummary>;
  readonly missing: readonly Member[];
  /** Members asked for so far; grows while a search goes on. */
  readonly of: number;
}

/**
 * Looks a study's members up among the runs of the session, search steps included, so that a question that was asked before is
 * answered without a run.
 *
 * @param have  the summary of a case if it was run
 */
export function knownMembers<Answer>(
  study: Study<Answer>,
  have: (aCase: Case) => MemberSummary | undefined,
): KnownMembers {
  const done = new Map<string, MemberSummary>();
  let waiting: readonly Member[] = study.members;
  for (;;) {
    const missing: Member[] = [];
    for (const member of waiting) {
      const summary = have(member.case);
      if (summary) done.set(member.key, summary);
      else missing.push(member);
    }
    if (missing.length > 0) return { done, missing, of: done.size + missing.length };
    waiting = (study.next?.(done) ?? []).filter(({ key }) => !done.has(key));
    if (waiting.length === 0) return { done, missing: [], of: done.size };
  }
}
