import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { RunResult } from "../../../../solver/index.ts";
import { runOne } from "../../../reference/support/run.ts";
import { between, porous, wallProject, dailyFace, type WallCase } from "./walls.ts";

const hours = 36;
const thickness_m = 0.12;

/** Largest difference in T [K] and RH [-] at the depths both walls record, over all hours. */
function largestDifference(a: RunResult, b: RunResult): { T_K: number; RH: number } {
  let [T_K, RH] = [0, 0];
  const depths = a.probes.filter((probe) => probe.kind === "depth");
  expect(depths.length).toBeGreaterThan(0);
  for (const probe of depths) {
    const other = b.probes.find((one) => one.kind === "depth" && Math.abs(one.depth_m - probe.depth_m) < 1e-9)!;
    for (let k = 0; k < hours; k += 1) {
      T_K = Math.max(T_K, Math.abs(probe.T_C[k]! - other.T_C[k]!));
      RH = Math.max(RH, Math.abs(probe.RH[k]! - other.RH[k]!));
    }
  }
  return { T_K, RH };
}

describe("a layer drawn as two of the same material", () => {
  it("gives the same answer to the error of the grid, and that shrinks as the grid gets finer", () => {
    fc.assert(
      fc.property(
        porous("stuff"),
        dailyFace(hours),
        dailyFace(hours),
        between(0.2, 0.8),
        (material, outside, inside, share) => {
          const whole: WallCase = {
            materials: [material],
            layers: [{ id: "whole", material: "stuff", thickness_m }],
            outside,
            inside,
            hours,
            start_C: 12,
            startHumidity: 0.6,
            depths_m: [0.02, 0.055, 0.1],
          };
          const split: WallCase = {
            ...whole,
            layers: [
              { id: "one", material: "stuff", thickness_m: share * thickness_m },
              { id: "two", material: "stuff", thickness_m: (1 - share) * thickness_m },
            ],
          };
          const at = (gridFineness: number, tolerance: number) =>
            largestDifference(
              runOne(wallProject({ ...whole, gridFineness, tolerance })),
              runOne(wallProject({ ...split, gridFineness, tolerance })),
            );
          // 0.05 K and half a point: what the default grid promises at interfaces.
          const coarse = at(1, 1e-5);
          expect(coarse.T_K).toBeLessThanOrEqual(0.05);
          expect(coarse.RH).toBeLessThanOrEqual(0.005);
          const fine = at(4, 1e-6);
          expect(fine.T_K).toBeLessThanOrEqual(Math.max(coarse.T_K / 3, 1e-3));
          expect(fine.RH).toBeLessThanOrEqual(Math.max(coarse.RH / 3, 1e-4));
        },
      ),
      { numRuns: 8, seed: 9, endOnFailure: true },
    );
  });
});
