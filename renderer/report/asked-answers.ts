import { useMemo } from "react";
import type { Project, ReportInput, Study } from "../../solver/index.ts";
import { useAsksStore, type Ask } from "../questions/asking/asks-store.ts";
import { knownMembers } from "../questions/asking/known-members.ts";
import { knownRun, useCacheVersion } from "../questions/asking/member-cache.ts";

type Answers = ReportInput["answers"];

const kinds: Readonly<Record<string, keyof Answers>> = {
  "side-by-side": "sideBySide",
  "how-thick": "howThick",
  drying: "drying",
  "what-if": "whatIf",
  humidity: "humidity",
  swaps: "swaps",
};

/** Answers to the questions that were asked of this very project and run to their end; of two of a kind, the later. */
export function answersOf(asks: readonly Ask[], project: Project): Answers {
  const answers: Record<string, unknown> = {};
  const asked = asks
    .filter((ask) => ask.project === project && ask.status === "finished")
    .sort((one, other) => one.startedAt - other.startedAt);
  for (const { study, mark } of asked) {
    const kind = kinds[study.id.split(":")[0]!];
    if (kind === undefined) continue;
    const { done, missing } = knownMembers(study as Study<object>, (aCase) => knownRun(aCase, mark)?.summary);
    if (missing.length === 0) answers[kind] = study.reduce(done);
  }
  return answers;
}

export function useAskedAnswers(project: Project): Answers {
  const asks = useAsksStore((state) => state.asks);
  const version = useCacheVersion((state) => state.version);
  return useMemo(() => {
    void version;
    return answersOf(Object.values(asks), project);
  }, [asks, project, version]);
}
