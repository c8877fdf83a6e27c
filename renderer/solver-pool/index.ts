/** Runs cases in workers, off the page's thread. */
import { SolverPool } from "./pool.ts";
import { Surveyor } from "./surveyor.ts";

export { NeverBegun, SolverPool, WorkerLost, type Job, type RunningJob } from "./pool.ts";
export type { PublishedCheckOutcome, RunOutcome, SelfCheckOutcome, SummaryOutcome } from "./worker-contract.ts";

const makeWorker = (): Worker =>
  new Worker(new URL("../solver.worker.ts", import.meta.url), { type: "module", name: "solver" });

export const solverPool = new SolverPool(makeWorker);
export const surveyor = new Surveyor(makeWorker);
