import { expect, test } from "vitest";
import { transferablesOf } from "../../../renderer/solver-pool/transferables.ts";
import type { RunResult } from "../../../solver/index.ts";

test("every series of a result is handed over once, even where two share a buffer", () => {
  const shared = new ArrayBuffer(24);
  const probe = {
    T_C: new Float32Array(shared, 0, 2),
    RH: new Float32Array(shared, 8, 2),
    w_kgm3: new Float32Array(2),
  };
  const map = {
    depth_m: new Float32Array(1),
    T_C: new Float32Array(1),
    RH: new Float32Array(1),
    w_kgm3: new Float32Array(1),
  };
  const result = { probes: [probe], map } as unknown as RunResult;
  const buffers = transferablesOf({ kind: "result", result });
  expect(buffers).toHaveLength(6);
  expect(new Set(buffers).size).toBe(6);
  // Handing them over empties the sender's copy: nothing was left out.
  structuredClone(result, { transfer: buffers });
  expect(
    [probe.T_C, probe.RH, probe.w_kgm3, map.depth_m, map.T_C, map.RH, map.w_kgm3].map((array) => array.length),
  ).toEqual([0, 0, 0, 0, 0, 0, 0]);
});

test("a run that could not begin has nothing to hand over", () => {
  expect(transferablesOf({ kind: "issues", issues: [] })).toEqual([]);
});
