import { parentPort } from "node:worker_threads";
import * as Comlink from "comlink";
import nodeEndpoint from "comlink/dist/esm/node-adapter.mjs";
import { summarise, type RunResult } from "../../solver/index.ts";
import { march } from "./march.ts";
import type { RunWorker } from "./run-contract.ts";

if (parentPort === null) throw new Error("worker.ts must be started as a worker thread");

/** The buffers of a result, each once, so that they are handed over instead of copied. */
function buffersOf({ probes, map }: RunResult): ArrayBuffer[] {
  const series = probes.flatMap((probe) => [probe.T_C, probe.RH, probe.w_kgm3]);
  const arrays = [...series, map.depth_m, map.T_C, map.RH, map.w_kgm3];
  return [...new Set(arrays.map((array) => array.buffer))].filter((buffer) => buffer instanceof ArrayBuffer);
}

const worker: RunWorker = {
  run(aCase, files, onProgress) {
    const outcome = march(aCase, files, onProgress);
    return Promise.resolve(
      outcome.kind === "done" ? Comlink.transfer(outcome, buffersOf(outcome.value.result)) : outcome,
    );
  },
  summarise(aCase, files, onProgress) {
    const outcome = march(aCase, files, onProgress);
    if (outcome.kind === "issues") return Promise.resolve(outcome);
    const { result, findings } = outcome.value;
    return Promise.resolve({ kind: "done", value: summarise(aCase, result, findings) });
  },
};

Comlink.expose(worker, nodeEndpoint(parentPort));
