import { create } from "zustand";
import type { RunEntry, RunSlot } from "./run-view.ts";

export const slotName = (option: string, path: string): string => `${option}/${path}`;

interface RunsState {
  /** By case hash. */
  readonly entries: Readonly<Record<string, RunEntry>>;
  /** By option and path. */
  readonly slots: Readonly<Record<string, RunSlot>>;
}

/** Results kept beyond those on the board, so that undo finds its year again without a run. */
const keptResults = 16;

export const useRunsStore = create<RunsState>()(() => ({ entries: {}, slots: {} }));

export function putEntry(key: string, change: Partial<RunEntry> & Pick<RunEntry, "case">): void {
  useRunsStore.setState(({ entries }) => {
    const before: RunEntry = entries[key] ?? {
      case: change.case,
      status: "waiting",
      progress: null,
      result: null,
      failure: null,
      issues: [],
    };
    // Written last, so that the oldest stand first when results are dropped.
    const rest = Object.fromEntries(Object.entries(entries).filter(([other]) => other !== key));
    return { entries: { ...rest, [key]: { ...before, ...change } } };
  });
}

/** Progress alone: the order of entries stays. */
export function putProgress(progress: Readonly<Record<string, NonNullable<RunEntry["progress"]>>>): void {
  useRunsStore.setState(({ entries }) => ({
    entries: Object.fromEntries(
      Object.entries(entries).map(([key, entry]) => {
        const news = progress[key];
        return [key, news && entry.status === "running" ? { ...entry, progress: news } : entry];
      }),
    ),
  }));
}

export function dropEntries(keys: ReadonlySet<string>): void {
  useRunsStore.setState(({ entries }) => ({
    entries: Object.fromEntries(Object.entries(entries).filter(([key]) => !keys.has(key))),
  }));
}

export function putSlots(slots: Readonly<Record<string, RunSlot>>): void {
  useRunsStore.setState({ slots });
}

/** Lets go of the oldest results that no slot shows. */
export function dropOldResults(): void {
  const { entries, slots } = useRunsStore.getState();
  const shown = new Set(Object.values(slots).map((slot) => slot.key));
  const spare = Object.entries(entries)
    .filter(([key, entry]) => !shown.has(key) && entry.status !== "running" && entry.status !== "waiting")
    .map(([key]) => key);
  if (spare.length > keptResults) dropEntries(new Set(spare.slice(0, spare.length - keptResults)));
}
