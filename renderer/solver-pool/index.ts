/** Runs cases in workers, off the page's thread. */
import { SolverPool } from "./pool.ts";

export { NeverBegun, SolverPool, WorkerLost, type Job, type RunningJob } from "./pool.ts";
export type { RunOutcome } from "./worker-contract.ts";

export const solverPool = new SolverPool(
  () => new Worker(new URL("../solver.worker.ts", import.meta.url), { type: "module", name: "solver" }),
);
