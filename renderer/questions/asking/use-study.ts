import { useEffect, useMemo } from "react";
import type { Study } from "../../../solver/index.ts";
import { useProjectStore } from "../../state/index.ts";
import { ask, pauseAsking, signatureOf, stopAsking } from "./ask.ts";
import { useAsksStore } from "./asks-store.ts";
import { knownMembers } from "./known-members.ts";
import { knownRun, useCacheVersion } from "./member-cache.ts";
import { studyView, type StudyView } from "./study-view.ts";

export interface AskedStudy<Answer> extends StudyView<Answer> {
  readonly ask: () => void;
  readonly stop: () => void;
}

/**
 * The answer to a study as far as it is known. A question that was never asked here begins by itself, unless `byItself` is
 * false; one that was edited waits for the word.
 */
export function useStudy<Answer>(
  slot: string,
  study: Study<Answer> | null,
  mark: string,
  byItself = true,
): AskedStudy<Answer> | null {
  const version = useCacheVersion((state) => state.version);
  const before = useAsksStore((state) => state.asks[slot]);
  const project = useProjectStore((state) => state.project);
  const edit = useProjectStore((state) => state.edit);
  const standing = useMemo(() => {
    void version;
    if (study === null) return null;
    const have = (of: string) => (aCase: Parameters<typeof knownRun>[0]) => knownRun(aCase, of)?.summary;
    const now = { study, signature: signatureOf(study, mark), known: knownMembers(study, have(mark)) };
    const last = before ? { ask: before, known: knownMembers(before.study, have(before.mark)) } : null;
    const air = study.members.map((member) => knownRun(member.case, mark)?.air).find((each) => each != null) ?? null;
    return { ...studyView(now, last, edit, before?.project !== project), air };
  }, [study, mark, before, edit, project, version]);

  const begins = byItself && (standing?.status === "empty" || standing?.status === "paused");
  useEffect(() => {
    if (study !== null && begins) ask(slot, study, mark, project);
    // The project is only remembered with the question: a new one alone is no reason to ask.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [slot, study, mark, begins]);

  const overtaken = standing?.status === "stale" && before?.status === "running";
  useEffect(() => {
    if (overtaken) pauseAsking(slot);
  }, [slot, overtaken]);

  if (study === null || standing === null) return null;
  return { ...standing, ask: () => ask(slot, study, mark, project), stop: () => stopAsking(slot) };
}
