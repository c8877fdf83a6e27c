import type { MonthlyAir, Study } from "../../../solver/index.ts";
import type { Ask } from "./asks-store.ts";
import type { KnownMembers } from "./known-members.ts";

/**
 * How the answer stands.
 *
 * empty     nothing is known and nothing is under way
 * running   under way; `answer` is what is known so far
 * paused    another question took the workers; what is done is kept
 * stopped   the user stopped it; `answer` is from the members that were done
 * stale     `answer` belongs to the question before an edit; `staleBecause` names it
 * failed    it could not go on; `failure` says why and what to do
 * finished  every member is known
 */
export interface StudyView<Answer> {
  readonly status: "empty" | "running" | "paused" | "stopped" | "stale" | "failed" | "finished";
  readonly answer: Answer | null;
  readonly done: number;
  readonly of: number;
  readonly startedAt: number | null;
  readonly seconds: number | null;
  readonly staleBecause: string | null;
  readonly failure: Ask["failure"];
  /** Monthly air of the place and the room, from any member that has run. */
  readonly air: MonthlyAir | null;
}

interface Standing<Answer> {
  readonly study: Study<Answer>;
  readonly signature: string;
  readonly known: KnownMembers;
}

/**
 * Sets the question as it stands now beside the question as it was last asked.
 *
 * @param before  the last asking and what is known of it; null: never asked here
 * @param edit    name of the last edit of the project
 * @param edited  the project is not the one that was asked about
 */
export function studyView<Answer>(
  now: Standing<Answer>,
  before: { readonly ask: Ask; readonly known: KnownMembers } | null,
  edit: string | null,
  edited: boolean,
): Omit<StudyView<Answer>, "air"> {
  const { study, known } = now;
  const own = {
    answer: known.done.size > 0 ? study.reduce(known.done) : null,
    done: known.done.size,
    of: known.of,
    staleBecause: null,
    failure: null,
    startedAt: null,
    seconds: null,
  };
  const same = before !== null && before.ask.signature === now.signature;
  if (known.missing.length === 0) return { ...own, status: "finished", seconds: same ? before.ask.seconds : null };
  if (same) {
    const { status, startedAt, seconds, failure } = before.ask;
    // Asked to the end, then asked for more: the members of a changed search are still to come.
    return { ...own, status: status === "finished" ? "paused" : status, startedAt, seconds, failure };
  }
  // A document as opened has no answer before it.
  const opened = edited && edit === null;
  if (before === null || opened || before.known.done.size === 0)
    return { ...own, status: known.done.size > 0 ? "paused" : "empty" };
  return {
    ...own,
    status: "stale",
    answer: before.ask.study.reduce(before.known.done) as Answer,
    done: before.known.done.size,
    of: before.known.of,
    staleBecause: edited ? (edit ?? "the last change") : null,
  };
}
