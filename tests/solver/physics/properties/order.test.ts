import { describe, expect, it } from "vitest";
import type { Course, Material, RunResult } from "../../../../solver/index.ts";
import { runOne } from "../../../reference/support/run.ts";
import { wallProject, type WallCase } from "./walls.ts";

const damp: Material = {
  id: "damp",
  name: "Board that sorbs, conducts and draws water",
  kind: "bulk",
  density_kgm3: 600,
  heatCapacity_JkgK: 1500,
  conductivity_WmK: { dry_WmK: 0.12, perWater: 3e-4 },
  freeSaturation_kgm3: 300,
  sorption: { saturation_kgm3: 300, suctionTerms: [{ share: 1, scale_perPa: 1e-7, n: 1.6, m: 0.375 }] },
  vapour: { resistanceFactor: 20 },
  liquid: { diffusivity_m2s: 1e-10 },
};
const hours = 48;
/** Smooth in time, tabled every five minutes, from rest: no jump spoils the order. */
const swing = (mean: number, size: number) => ({
  table: Array.from({ length: hours * 12 + 1 }, (_, k): [number, number] => {
    const t = k * 300;
    return [t, mean - size * Math.sin((Math.PI * t) / 86400) ** 2];
  }),
  between: "line" as const,
});
const wall = (outsideTemperature: Course): WallCase => ({
  materials: [damp],
  layers: [{ id: "board", material: "damp", thickness_m: 0.06 }],
  outside: { temperature_C: outsideTemperature, relativeHumidity: 0.8, heatFilm_Wm2K: 15, vapourFilm_kgm2sPa: 5e-8 },
  inside: { temperature_C: 20, relativeHumidity: 0.5, heatFilm_Wm2K: 8, vapourFilm_kgm2sPa: 3e-8 },
  hours,
  start_C: 20,
  startHumidity: 0.5,
  depths_m: [0.01, 0.02, 0.03, 0.04, 0.05],
});

/** Root of the mean squared difference of T [K] and of w [kg/m3] at all depths and hours. */
function distance(a: RunResult, b: RunResult): { T: number; w: number } {
  let [T, w, count] = [0, 0, 0];
  for (const probe of a.probes.filter((one) => one.kind === "depth")) {
    const other = b.probes.find((one) => one.id === probe.id)!;
    for (let k = 1; k < hours; k += 1) {
      T += (probe.T_C[k]! - other.T_C[k]!) ** 2;
      w += (probe.w_kgm3[k]! - other.w_kgm3[k]!) ** 2;
      count += 1;
    }
  }
  return { T: Math.sqrt(T / count), w: Math.sqrt(w / count) };
}

describe("order of the scheme", () => {
  it("is second in space: halving every slice takes the difference down by about four", () => {
    const at = (gridFineness: number): RunResult =>
      runOne(wallProject({ ...wall(swing(20, 15)), gridFineness, tolerance: 1e-7 }));
    const [one, two, four, eight] = [at(1), at(2), at(4), at(8)];
    const [e1, e2, e4] = [distance(one, eight), distance(two, eight), distance(four, eight)];
    // Against a grid of 8 a second-order error falls by 63/15 and 15/3: 3 to 6.5 leaves room for the graded slices.
    for (const ratio of [e1.T / e2.T, e2.T / e4.T, e1.w / e2.w, e2.w / e4.w]) {
      expect(ratio).toBeGreaterThan(3);
      expect(ratio).toBeLessThan(6.5);
    }
  });

  it("is second in time: halving every step takes the difference down by about four", () => {
    // The air cools and turns damp along straight lines, so more rows say the same; no step crosses a row, and the loose tolerance
    // lets each span one. From rest: no jump spoils the order.
    const at = (rowsPerHour: number, tolerance: number): RunResult => {
      const line = (from: number, to: number): Course => ({
        table: Array.from({ length: hours * rowsPerHour + 1 }, (_, k): [number, number] => [
          (k * 3600) / rowsPerHour,
          from + ((to - from) * k) / (hours * rowsPerHour),
        ]),
        between: "line",
      });
      const atRest = wall(20);
      const { relativeHumidity, ...face } = atRest.outside;
      expect(relativeHumidity).toBeDefined();
      return runOne(
        wallProject({
          ...atRest,
          outside: { ...face, temperature_C: line(20, -10), vapourPressure_Pa: line(1168, 300) },
          tolerance,
        }),
      );
    };
    const exact = at(1, 1e-9);
    const [hour, half, quarter] = [at(1, 0.1), at(2, 0.1), at(4, 0.1)];
    expect(hour.log.steps).toBeLessThan(1.4 * hours);
    expect(quarter.log.steps).toBeLessThan(1.2 * 4 * hours);
    const [e1, e2, e4] = [distance(hour, exact), distance(half, exact), distance(quarter, exact)];
    for (const ratio of [e1.T / e2.T, e2.T / e4.T, e1.w / e2.w, e2.w / e4.w]) {
      expect(ratio).toBeGreaterThan(3.2);
      expect(ratio).toBeLessThan(5);
    }
  });

  it("comes closer to the exact answer the tighter the tolerance", () => {
    const at = (tolerance: number): RunResult => runOne(wallProject({ ...wall(5), tolerance }));
    const exact = at(1e-9);
    const errors = [1e-3, 1e-5, 1e-7].map((tolerance) => distance(at(tolerance), exact));
    for (let k = 1; k < errors.length; k += 1) {
      expect(errors[k]!.T).toBeLessThan(errors[k - 1]!.T / 3);
      expect(errors[k]!.w).toBeLessThan(errors[k - 1]!.w);
    }
  });
});
