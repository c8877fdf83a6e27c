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
    // Hourly values of a daily swing joined by straight lines, and more rows on the same lines: no step spans more than half
    // a row, and the loose tolerance lets each span that. From rest: no jump spoils the order.
    const at = (rowsPerHour: number, tolerance: number): RunResult => {
      const swung = (mean: number, size: number): Course => {
        const hourValue = (k: number): number => mean - size * Math.sin((Math.PI * k) / 24) ** 2;
        return {
          table: Array.from({ length: hours * rowsPerHour + 1 }, (_, row): [number, number] => {
            const k = Math.floor(row / rowsPerHour);
            const part = row / rowsPerHour - k;
            return [(row * 3600) / rowsPerHour, (1 - part) * hourValue(k) + part * hourValue(k + 1)];
          }),
          between: "line",
        };
      };
      const { relativeHumidity, ...face } = wall(20).outside;
      expect(relativeHumidity).toBeDefined();
      return runOne(
        wallProject({
          ...wall(20),
          outside: { ...face, temperature_C: swung(20, 25), vapourPressure_Pa: swung(1168, 900) },
          tolerance,
        }),
      );
    };
    const exact = at(1, 1e-8);
    const [hour, half, quarter] = [at(1, 0.1), at(2, 0.1), at(4, 0.1)];
    expect(hour.log.steps).toBeLessThan(1.4 * 2 * hours);
    expect(quarter.log.steps).toBeLessThan(1.2 * 2 * 4 * hours);
    const [e1, e2, e4] = [distance(hour, exact), distance(half, exact), distance(quarter, exact)];
    // Temperature shows the order. The error of water, 2e-3 of some 60 kg/m3 with steps of half an hour, is soon no larger than what the
    // iterations leave; it is only asked not to grow.
    for (const ratio of [e1.T / e2.T, e2.T / e4.T]) {
      expect(ratio).toBeGreaterThan(3.2);
      expect(ratio).toBeLessThan(5.5);
    }
    expect(e4.w).toBeLessThan(e1.w);
    expect(e1.w).toBeLessThan(0.005);
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
