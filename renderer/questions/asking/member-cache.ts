import { create } from "zustand";
import { caseHash, type Case, type MemberSummary, type MonthlyAir } from "../../../solver/index.ts";

export interface KnownRun {
  readonly summary: MemberSummary;
  readonly air: MonthlyAir | null;
}

/** Runs kept for the session; the oldest go first. A summary is some ten kilobytes. */
const keptRuns = 1200;

const runs = new Map<string, KnownRun>();
const keys = new WeakMap<Case, { readonly mark: string; readonly key: string }>();

/** Counts the runs that came in, so that pages draw anew. */
export const useCacheVersion = create<{ readonly version: number }>()(() => ({ version: 0 }));
const changed = (): void => useCacheVersion.setState(({ version }) => ({ version: version + 1 }));

/** Key of a case's result; `mark` changes with the text of the files that the case names. */
export function memberKey(aCase: Case, mark: string): string {
  const known = keys.get(aCase);
  if (known?.mark === mark) return known.key;
  const key = caseHash(aCase, mark);
  keys.set(aCase, { mark, key });
  return key;
}

export const knownRun = (aCase: Case, mark: string): KnownRun | undefined => runs.get(memberKey(aCase, mark));

export function keepRun(aCase: Case, mark: string, run: KnownRun): void {
  runs.set(memberKey(aCase, mark), run);
  for (const key of runs.keys()) {
    if (runs.size <= keptRuns) break;
    runs.delete(key);
  }
  changed();
}

/** Lets go of a run that failed, so that asking again runs it again. */
export function forgetRun(aCase: Case, mark: string): void {
  if (runs.delete(memberKey(aCase, mark))) changed();
}
