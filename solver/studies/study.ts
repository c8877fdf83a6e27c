import type { Case } from "../model/index.ts";
import type { MemberSummary } from "./summary.ts";

/** One run of a study. The key is unique within the study; the case's hash is the key of its result, so a re-asked question costs nothing. */
export interface Member {
  readonly key: string;
  readonly label: string;
  readonly case: Case;
}

/** What is known so far, by member key. */
export type Done = ReadonlyMap<string, MemberSummary>;

/**
 * A question that runs answer. Pure: the host runs members in any order, in a pool if it has one, and may reduce at any
 * time; members that were stopped or failed are simply not in `done` or carry their status.
 */
export interface Study<Answer> {
  readonly id: string;
  readonly members: readonly Member[];
  /** Members still wanted, once all that are known have been tried; none: the study is complete. */
  next?(done: Done): readonly Member[];
  reduce(done: Done): Answer;
}

export interface StudyProgress<Answer> {
  readonly done: number;
  /** Grows when a search asks for more members. */
  readonly of: number;
  readonly label: string;
  readonly answer: Answer;
}

/**
 * Runs a study one member after the other. Each yield reports the answer so far; send "stop" to end with what is there.
 *
 * @param runMember  gives the summary of a member; called once for each distinct key
 */
export function* runStudy<Answer>(
  study: Study<Answer>,
  runMember: (member: Member) => MemberSummary,
): Generator<StudyProgress<Answer>, Answer, "stop" | undefined> {
  const done = new Map<string, MemberSummary>();
  let waiting: readonly Member[] = study.members;
  let of = waiting.length;
  while (waiting.length > 0) {
    for (const member of waiting) {
      done.set(member.key, runMember(member));
      const word = yield { done: done.size, of, label: member.label, answer: study.reduce(done) };
      if (word === "stop") return study.reduce(done);
    }
    waiting = (study.next?.(done) ?? []).filter((member) => !done.has(member.key));
    of += waiting.length;
  }
  return study.reduce(done);
}

/** Runs a study to its end and gives the answer. */
export function answerOf<Answer>(study: Study<Answer>, runMember: (member: Member) => MemberSummary): Answer {
  const run = runStudy(study, runMember);
  for (;;) {
    const step = run.next();
    if (step.done === true) return step.value;
  }
}

/** Several studies as one, their members prefixed "0:", "1:" ...; the answer is the list of answers. */
export function together<Answer>(id: string, studies: readonly Study<Answer>[]): Study<readonly Answer[]> {
  const prefixed = (index: number, members: readonly Member[]): Member[] =>
    members.map((member) => ({ ...member, key: `${index}:${member.key}` }));
  const part = (done: Done, index: number): Done => {
    const prefix = `${index}:`;
    return new Map(
      [...done].filter(([key]) => key.startsWith(prefix)).map(([key, summary]) => [key.slice(prefix.length), summary]),
    );
  };
  return {
    id,
    members: studies.flatMap((study, index) => prefixed(index, study.members)),
    next: (done) =>
      studies
        .flatMap((study, index) => prefixed(index, study.next?.(part(done, index)) ?? []))
        .filter((member) => !done.has(member.key)),
    reduce: (done) => studies.map((study, index) => study.reduce(part(done, index))),
  };
}
