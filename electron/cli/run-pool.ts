import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import * as Comlink from "comlink";
import nodeEndpoint from "comlink/dist/esm/node-adapter.mjs";
import type { RunWorker } from "./run-contract.ts";

// In a variable: the bundler would look for a worker of its own kind otherwise.
const workerFile = "./worker.js";

interface Thread {
  readonly remote: Comlink.Remote<RunWorker>;
  /** Rejects when the thread dies, which is a fault of the program and not of the wall. */
  readonly died: Promise<never>;
  end(): Promise<unknown>;
}

function startThread(): Thread {
  const thread = new Worker(new URL(workerFile, import.meta.url));
  const died = new Promise<never>((_, reject) => {
    thread.once("error", reject);
    thread.once("exit", (code) => reject(new Error(`a worker thread ended with code ${code}`)));
  });
  // It is raced against each job; between jobs nobody listens.
  died.catch(() => undefined);
  return { remote: Comlink.wrap<RunWorker>(nodeEndpoint(thread)), died, end: () => thread.terminate() };
}

/** A few worker threads, at most four, made when first needed. */
export class RunPool {
  readonly #threads: Thread[] = [];
  readonly #size = Math.max(1, Math.min(4, availableParallelism()));

  /** Does `work` for each item, as many at a time as there are threads; the answers come in the order of the items. */
  async map<Item, Answer>(
    items: readonly Item[],
    work: (worker: Comlink.Remote<RunWorker>, item: Item) => Promise<Answer>,
  ): Promise<Answer[]> {
    const answers = new Array<Answer>(items.length);
    let next = 0;
    const share = async (index: number): Promise<void> => {
      this.#threads[index] ??= startThread();
      const { remote, died } = this.#threads[index];
      while (next < items.length) {
        const place = next++;
        answers[place] = await Promise.race([work(remote, items[place]!), died]);
      }
    };
    await Promise.all(Array.from({ length: Math.min(this.#size, items.length) }, (_, index) => share(index)));
    return answers;
  }

  async end(): Promise<void> {
    await Promise.all(this.#threads.splice(0).map((thread) => thread.end()));
  }
}
