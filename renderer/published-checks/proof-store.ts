import { create } from "zustand";
import { publishedChecks } from "../../solver/index.ts";
import { NeverBegun, solverPool, type PublishedCheckOutcome, type RunningJob } from "../solver-pool/index.ts";

/** One published case on this machine, today. */
export interface Proof {
  readonly status: "waiting" | "running" | "stopped" | "failed" | "finished";
  /** Share done, 0..1. */
  readonly share: number;
  readonly outcome: PublishedCheckOutcome | null;
  readonly failure: string | null;
}

interface Proofs {
  readonly proofs: Readonly<Record<string, Proof>>;
}

export const useProofStore = create<Proofs>()(() => ({ proofs: {} }));

const underWay = new Map<string, RunningJob<PublishedCheckOutcome>>();

function note(id: string, change: Partial<Proof>): void {
  useProofStore.setState(({ proofs }) => {
    const before: Proof = proofs[id] ?? { status: "waiting", share: 0, outcome: null, failure: null };
    return { proofs: { ...proofs, [id]: { ...before, ...change } } };
  });
}

/** Runs these cases in the pool, behind the walls on the board; those under way go on. */
export function prove(ids: readonly string[]): void {
  for (const id of ids) if (!underWay.has(id)) void proveOne(id);
}

async function proveOne(id: string): Promise<void> {
  let told = 0;
  note(id, { status: "waiting", share: 0, outcome: null, failure: null });
  const job = solverPool.publishedCheck(id, {
    onStart: () => note(id, { status: "running" }),
    onProgress: (done, of) => {
      const share = done / of;
      if (Math.abs(share - told) < 0.02) return;
      told = share;
      note(id, { share });
    },
  });
  underWay.set(id, job);
  try {
    const outcome = await job.outcome;
    const stopped = outcome.result.failures.some((failure) => failure.startsWith("stopped"));
    note(id, stopped ? { status: "stopped" } : { status: "finished", share: 1, outcome });
  } catch (error) {
    if (error instanceof NeverBegun) note(id, { status: "stopped" });
    else note(id, { status: "failed", failure: error instanceof Error ? error.message : String(error) });
  } finally {
    underWay.delete(id);
  }
}

/** Stops what is under way; figures that are there stay. */
export function stopProving(): void {
  for (const job of underWay.values()) job.stop();
}

export const allChecks = publishedChecks.map(({ id }) => id);
export const quickChecks = publishedChecks.filter(({ slow }) => !slow).map(({ id }) => id);
