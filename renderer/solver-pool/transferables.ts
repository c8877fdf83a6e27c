import type { RunOutcome } from "./worker-contract.ts";

/** The buffers of an outcome, each once, so that they can be handed over instead of copied. */
export function transferablesOf(outcome: RunOutcome): ArrayBuffer[] {
  if (outcome.kind === "issues") return [];
  const { probes, map } = outcome.result;
  const arrays = [
    ...probes.flatMap((probe) => [probe.T_C, probe.RH, probe.w_kgm3]),
    map.depth_m,
    map.T_C,
    map.RH,
    map.w_kgm3,
  ];
  return [...new Set(arrays.map((array) => array.buffer))].filter((buffer) => buffer instanceof ArrayBuffer);
}
