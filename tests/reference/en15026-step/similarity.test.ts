import { describe, expect, it } from "vitest";
import type { LabFace, Project } from "../../../solver/index.ts";
import { en15026Physics, loadBearing } from "../../../solver/studies/published-checks/benchmark-materials.ts";
import { closedFace, labProject } from "../../../solver/studies/published-checks/lab-project.ts";
import { profiles } from "../../../solver/studies/published-checks/points/en15026-step.ts";
import { probeAt, stateAt } from "../../../solver/studies/published-checks/published-check.ts";
import { runOne } from "../support/run.ts";
import { similaritySolution } from "./similarity.ts";

interface Air {
  readonly T_C: number;
  readonly RH: number;
}
const solve = (face: Air, start: Air) =>
  similaritySolution(face, start, (eta) => ({
    T_C: start.T_C + (face.T_C - start.T_C) * Math.exp(-((eta / 1.6e-3) ** 1.3)),
    RH: start.RH + (face.RH - start.RH) * Math.exp(-((eta / 8e-6) ** 1.5)),
  }));

/** Days, and what may differ there: a fifth of the standard's 2.5 % from its first output on; its own 2.5 % before, when the profile is 5 mm thin. */
const shares = [
  [2, 0.025],
  [10, 0.005],
  [20, 0.005],
  [100, 0.005],
] as const;
/** Depths on which the moisture profile has something to say after t days, and two that only heat reaches [m]. */
const depths_m = [0.001, 0.003, 0.006, 0.01, 0.015, 0.025, 0.04, 0.06, 0.09, 0.12, 0.7, 4];
const thickness_m = 30;

function project(face: Air, start: Air, side: "outside" | "inside"): Project {
  const held: LabFace = {
    temperature_C: face.T_C,
    relativeHumidity: face.RH,
    heatFilm_Wm2K: "held",
    vapourFilm_kgm2sPa: "held",
  };
  const far = closedFace(start.T_C);
  return labProject({
    name: "Half-space",
    materials: [loadBearing],
    layers: [{ id: "half-space", material: loadBearing.id, thickness_m }],
    outside: side === "outside" ? held : far,
    inside: side === "outside" ? far : held,
    physics: en15026Physics,
    duration_h: Math.max(...shares.map(([day]) => day)) * 24,
    initialTemperature_C: start.T_C,
    initialRelativeHumidity: start.RH,
    depths_m: depths_m.map((depth) => (side === "outside" ? depth : thickness_m - depth)),
  });
}

describe("an independent similarity solution", () => {
  it("gives the tabled figures of the benchmark", () => {
    const solution = solve({ T_C: 30, RH: 0.95 }, { T_C: 20, RH: 0.5 });
    for (const [day, x_m, T_C, RH, w_kgm3] of profiles) {
      const got = solution(x_m, day * 86400);
      expect(got.T_C).toBeCloseTo(T_C, 5);
      expect(100 * got.RH).toBeCloseTo(RH, 4);
      expect(got.w_kgm3).toBeCloseTo(w_kgm3, 4);
    }
  });

  // Of the value for RH and water, of the step (at least 10 K) for temperature.
  it.each([
    ["the benchmark's step at other depths and days", { T_C: 30, RH: 0.95 }, { T_C: 20, RH: 0.5 }, "outside"],
    ["a step to cold and dry", { T_C: 5, RH: 0.4 }, { T_C: 25, RH: 0.9 }, "outside"],
    ["a step to warm and dry, from the inner side", { T_C: 35, RH: 0.3 }, { T_C: 10, RH: 0.85 }, "inside"],
    ["a step in humidity alone", { T_C: 20, RH: 0.97 }, { T_C: 20, RH: 0.6 }, "outside"],
  ] as const)("is met on the default grid by %s", (_, face, start, side) => {
    const solution = solve(face, start);
    const result = runOne(project(face, start, side));
    const step_K = Math.max(Math.abs(face.T_C - start.T_C), 10);
    const misses: string[] = [];
    for (const [day, share] of shares)
      for (const depth_m of depths_m) {
        const expected = solution(depth_m, day * 86400);
        const got = stateAt(result, { depth_m: side === "outside" ? depth_m : thickness_m - depth_m }, day * 24);
        const where = `day ${day}, ${depth_m} m`;
        if (Math.abs(got.T_C - expected.T_C) > share * step_K)
          misses.push(`${where}: T ${got.T_C} for ${expected.T_C}`);
        if (Math.abs(got.RH / expected.RH - 1) > share) misses.push(`${where}: RH ${got.RH} for ${expected.RH}`);
        if (Math.abs(got.w_kgm3 / expected.w_kgm3 - 1) > share)
          misses.push(`${where}: w ${got.w_kgm3} for ${expected.w_kgm3}`);
      }
    expect(misses).toEqual([]);
    expect(result.water.closure).toBeLessThanOrEqual(1e-6);
    expect(result.heat.closure).toBeLessThanOrEqual(1e-6);
    expect(probeAt(result, { layer: "half-space", side }).RH.at(-1)!).toBeCloseTo(face.RH, 5);
  });
});
