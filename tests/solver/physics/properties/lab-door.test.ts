import { describe, expect, it } from "vitest";
import type { LabFace, Material, RunResult } from "../../../../solver/index.ts";
import { halfSpaceStep } from "../../../../solver/studies/published-checks/closed-forms/conduction.ts";
import { runOne } from "../../../reference/support/run.ts";
import { wallProject, type WallCase } from "./walls.ts";

// What a laboratory file may say beyond what the published cases use, held against what the same thing said otherwise gives.

const board: Material = {
  id: "board",
  name: "board",
  kind: "bulk",
  density_kgm3: 800,
  heatCapacity_JkgK: 1000,
  conductivity_WmK: 0.12,
  sorption: { slope_kgm3: 50 },
  vapour: { resistanceFactor: 10 },
};
const closed: LabFace = { temperature_C: 20, heatFilm_Wm2K: 0, vapourFilm_kgm2sPa: 0 };
/** Conduction alone; the water that the board holds would add to its heat capacity. */
const dryHeat = { moisture: false, waterHeatCapacity_JkgK: 0 };
const base: WallCase = {
  materials: [board],
  layers: [{ id: "board", material: "board", thickness_m: 0.1 }],
  outside: closed,
  inside: closed,
  hours: 48,
  start_C: 20,
  startHumidity: 0.5,
  depths_m: [0.01, 0.03, 0.06],
};

const depthProbe = (result: RunResult, depth_m: number) =>
  result.probes.find((probe) => probe.kind === "depth" && Math.abs(probe.depth_m - depth_m) < 1e-9)!;

/** Largest difference at the probes over all hours: T [K] and RH [-]. */
function apart(a: RunResult, b: RunResult): { T: number; RH: number } {
  let [T, RH] = [0, 0];
  expect(a.hours).toBe(b.hours);
  for (const probe of a.probes) {
    const other = b.probes.find((one) => one.id === probe.id)!;
    for (let k = 0; k < a.hours; k += 1) {
      T = Math.max(T, Math.abs(probe.T_C[k]! - other.T_C[k]!));
      RH = Math.max(RH, Math.abs(probe.RH[k]! - other.RH[k]!));
    }
  }
  return { T, RH };
}

describe("a laboratory face", () => {
  it("that is held and steps by a table gives the same as one held there from the start, later", () => {
    const delay_h = 6;
    const result = runOne(
      wallProject({
        ...base,
        layers: [{ id: "board", material: "board", thickness_m: 1 }],
        outside: {
          temperature_C: {
            table: [
              [0, 20],
              [delay_h * 3600, 0],
            ],
            between: "step",
          },
          heatFilm_Wm2K: "held",
          vapourFilm_kgm2sPa: 0,
        },
        physics: dryHeat,
      }),
    );
    const a = 0.12 / 8e5;
    for (const depth_m of base.depths_m!)
      for (const hour of [1, 6, 24]) {
        const got = depthProbe(result, depth_m).T_C[delay_h + hour - 1]!;
        expect(Math.abs(got - halfSpaceStep(depth_m, hour * 3600, a, 20, 0))).toBeLessThan(0.1);
      }
    expect(depthProbe(result, 0.01).T_C[delay_h - 2]).toBeCloseTo(20, 4);
  });

  it("may give its humidity as RH, vapour pressure or suction", () => {
    const psat = 610.5 * Math.exp((17.269 * 20) / (237.3 + 20));
    const said: Partial<LabFace>[] = [
      { relativeHumidity: 0.8 },
      { vapourPressure_Pa: 0.8 * psat },
      { suction_Pa: -1000 * 462 * 293.15 * Math.log(0.8) },
    ];
    for (const vapourFilm_kgm2sPa of ["held", 2e-8] as const) {
      const results = said.map((humidity) =>
        runOne(
          wallProject({
            ...base,
            outside: { temperature_C: 20, heatFilm_Wm2K: 10, vapourFilm_kgm2sPa, ...humidity },
            physics: { saturationPressure: "iso13788", gasConstantVapour_JkgK: 462, heat: false },
          }),
        ),
      );
      for (const other of results.slice(1)) {
        const { T, RH } = apart(results[0]!, other);
        expect(T).toBeLessThan(1e-6);
        expect(RH).toBeLessThan(2e-5);
      }
      expect(depthProbe(results[0]!, 0.01).RH.at(-1)!).toBeGreaterThan(0.6);
    }
  });

  it("may start from a temperature profile: a steady one stays", () => {
    const result = runOne(
      wallProject({
        ...base,
        outside: { temperature_C: 0, heatFilm_Wm2K: "held", vapourFilm_kgm2sPa: 0 },
        inside: { temperature_C: 20, heatFilm_Wm2K: "held", vapourFilm_kgm2sPa: 0 },
        physics: dryHeat,
      }),
    );
    const project = wallProject({
      ...base,
      outside: { temperature_C: 0, heatFilm_Wm2K: "held", vapourFilm_kgm2sPa: 0 },
      inside: { temperature_C: 20, heatFilm_Wm2K: "held", vapourFilm_kgm2sPa: 0 },
      physics: dryHeat,
    });
    const profiled = runOne({
      ...project,
      lab: {
        ...project.lab!,
        initialTemperature_C: [
          [0, 0],
          [0.1, 20],
        ],
      },
    });
    for (const depth_m of base.depths_m!) {
      const steady = depthProbe(profiled, depth_m).T_C;
      for (const T of steady) expect(T).toBeCloseTo(200 * depth_m, 3);
      expect(Math.abs(depthProbe(result, depth_m).T_C[0]! - 200 * depth_m)).toBeGreaterThan(0.1);
    }
  });

  it("reads rows between the hours: a pulse of sun of ten minutes brings its energy", () => {
    const pulse = (start_s: number): LabFace => ({
      temperature_C: 20,
      heatFilm_Wm2K: 0,
      vapourFilm_kgm2sPa: 0,
      absorbedRadiation_Wm2: {
        table: [
          [0, 0],
          [start_s, 500],
          [start_s + 600, 0],
        ],
        between: "step",
      },
    });
    for (const start_s of [3600, 5000]) {
      const result = runOne(wallProject({ ...base, outside: pulse(start_s), physics: dryHeat }));
      expect(result.heat.in).toBeCloseTo(500 * 600, 0);
      const mean = result.probes.find((probe) => probe.kind === "layerMean")!.T_C.at(-1)!;
      expect(mean).toBeCloseTo(20 + (500 * 600) / (8e5 * 0.1), 3);
    }
  });

  it("may change its films over time", () => {
    const result = runOne(
      wallProject({
        ...base,
        outside: {
          temperature_C: 0,
          heatFilm_Wm2K: {
            table: [
              [0, 0],
              [24 * 3600, 25],
            ],
            between: "step",
          },
          vapourFilm_kgm2sPa: 0,
        },
        physics: dryHeat,
      }),
    );
    const first = depthProbe(result, 0.01).T_C;
    expect(first[22]).toBeCloseTo(20, 5);
    expect(first[30]).toBeLessThan(15);
  });

  it("that stands in free water wets the layer to its saturation and no further", () => {
    const stone: Material = {
      ...board,
      id: "stone",
      freeSaturation_kgm3: 200,
      sorption: { saturation_kgm3: 200, suctionTerms: [{ share: 1, scale_perPa: 1e-5, n: 2, m: 0.5 }] },
      liquid: { absorption_kgm2s05: 0.1 },
    };
    const result = runOne(
      wallProject({
        ...base,
        materials: [stone],
        layers: [{ id: "board", material: "stone", thickness_m: 0.05 }],
        outside: { temperature_C: 20, suction_Pa: 0, heatFilm_Wm2K: 10, vapourFilm_kgm2sPa: "held" },
        hours: 240,
        depths_m: [],
      }),
    );
    const mean = result.probes.find((probe) => probe.kind === "layerMean")!.w_kgm3.at(-1)!;
    expect(mean).toBeGreaterThan(0.99 * 200);
    expect(mean).toBeLessThan(1.01 * 200);
    expect(result.water.closure).toBeLessThanOrEqual(1e-6);
  });
});
