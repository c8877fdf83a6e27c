import { parentPort } from "node:worker_threads";
import * as Comlink from "comlink";
import nodeEndpoint from "comlink/dist/esm/node-adapter.mjs";
import { march } from "./march.ts";
import type { RunWorker } from "./run-contract.ts";

if (parentPort === null) throw new Error("worker.ts must be started as a worker thread");

const worker: RunWorker = {
  run(aCase, files, onProgress) {
    const outcome = march(aCase, files, onProgress);
    if (outcome.kind === "issues") return Promise.resolve(outcome);
    const { probes, map } = outcome.result;
    const arrays = [
      ...probes.flatMap((probe) => [probe.T_C, probe.RH, probe.w_kgm3]),
      map.depth_m,
      map.T_C,
      map.RH,
      map.w_kgm3,
    ];
    return Promise.resolve(Comlink.transfer(outcome, [...new Set(arrays.map((array) => array.buffer as ArrayBuffer))]));
  },
};

Comlink.expose(worker, nodeEndpoint(parentPort));
