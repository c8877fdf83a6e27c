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
const slowSwing = (mean: number, size: number) => ({
  table: Array.from({ length: hours + 1 }, (_, k): [number, number] => [k * 3600, mean - (size * k) / hours]),
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

/** Root of the mean squared difference of T [K] and of w [kg/m3] at all depths over the second day. */
function distance(a: RunResult, b: RunResult): { T: number; w: number } {
  let [T, w, count] = [0, 0, 0];
  for (const probe of a.probes.filter((one) => one.kind === "depth")) {
    const other = b.probes.find((one) => one.id === probe.id)!;
    for (let k = 24; k < hours; k += 1) {
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
    const [one, two, four, sixteen] = [at(1), at(2), at(4), at(16)];
    const [e1, e2, e4] = [distance(one, sixteen), distance(two, sixteen), distance(four, sixteen)];
    // Against a grid of 16 a second-order error falls by 255/63 and 63/15: between 3 and 6 leaves room for the graded slices.
    for (const ratio of [e1.T / e2.T, e2.T / e4.T, e1.w / e2.w, e2.w / e4.w]) {
      expect(ratio).toBeGreaterThan(3);
      expect(ratio).toBeLessThan(6);
    }
  });

  it("is second in time: error falls with the square of the number of steps", () => {
    const at = (tolerance: number): RunResult => runOne(wallProject({ ...wall(slowSwing(20, 15)), tolerance }));
    const exact = at(1e-10);
    const loose = at(1e-3);
    const tight = at(1e-6);
    const [eLoose, eTight] = [distance(loose, exact), distance(tight, exact)];
    const steps = Math.log(tight.log.steps / loose.log.steps);
    expect(tight.log.steps).toBeGreaterThan(2 * loose.log.steps);
    expect(Math.log(eLoose.T / eTight.T) / steps).toBeGreaterThan(1.7);
    expect(Math.log(eLoose.w / eTight.w) / steps).toBeGreaterThan(1.7);
  });
});
