import { create } from "zustand";
import type { Project, Study } from "../../../solver/index.ts";

export type AskStatus = "running" | "paused" | "stopped" | "failed" | "finished";

/** A question as it was last asked, kept so that its answer stays in view, marked, after an edit. */
export interface Ask {
  readonly study: Study<unknown>;
  readonly mark: string;
  readonly signature: string;
  readonly project: Project;
  readonly status: AskStatus;
  readonly startedAt: number;
  /** Time it took, once it ended [s]. */
  readonly seconds: number | null;
  readonly failure: { readonly message: string; readonly remedy: string } | null;
}

interface Asks {
  /** By question, option and path. */
  readonly asks: Readonly<Record<string, Ask>>;
}

export const useAsksStore = create<Asks>()(() => ({ asks: {} }));

export const askAt = (slot: string): Ask | undefined => useAsksStore.getState().asks[slot];

export const putAsk = (slot: string, ask: Ask): void =>
  useAsksStore.setState(({ asks }) => ({ asks: { ...asks, [slot]: ask } }));

export function changeAsk(slot: string, change: Partial<Ask>): void {
  const before = askAt(slot);
  if (before) putAsk(slot, { ...before, ...change });
}
