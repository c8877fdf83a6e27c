import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import * as Comlink from "comlink";
import nodeEndpoint from "comlink/dist/esm/node-adapter.mjs";
import type { Case, NamedTexts } from "../../solver/index.ts";
import type { RunOutcome, RunWorker } from "./run-contract.ts";

// In a variable: the bundler would look for a worker of its own kind otherwise.
const workerFile = "./worker.js";

/**
 * Runs cases in worker threads, at most four at a time, and gives the outcomes in the order of the cases.
 * Rejects if a worker dies, which is a fault of the program and not of the wall.
 */
export async function runAll(
  cases: readonly Case[],
  files: NamedTexts,
  onProgress: (aCase: Case, done: number, of: number) => void,
): Promise<RunOutcome[]> {
  const outcomes = new Array<RunOutcome>(cases.length);
  let next = 0;
  const runSome = async (): Promise<void> => {
    const thread = new Worker(new URL(workerFile, import.meta.url));
    const died = new Promise<never>((_, reject) => {
      thread.once("error", reject);
      thread.once("exit", (code) => reject(new Error(`a worker thread ended with code ${code}`)));
    });
    died.catch(() => undefined);
    const worker = Comlink.wrap<RunWorker>(nodeEndpoint(thread));
    try {
      while (next < cases.length) {
        const place = next++;
        const aCase = cases[place]!;
        const report = Comlink.proxy((done: number, of: number) => onProgress(aCase, done, of));
        outcomes[place] = await Promise.race([worker.run(aCase, files, report), died]);
      }
    } finally {
      await thread.terminate();
    }
  };
  const threads = Math.max(1, Math.min(4, availableParallelism(), cases.length));
  await Promise.all(Array.from({ length: threads }, runSome));
  return outcomes;
}
