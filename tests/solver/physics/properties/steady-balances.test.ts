import { describe, expect, it } from "vitest";
import type { LabFace, Layer, Material, Path, Project, RunResult } from "../../../../solver/index.ts";
import { runOne } from "../../../reference/support/run.ts";
import { wallProject, type WallCase } from "./walls.ts";

// Terms that no published case isolates, held against a network of resistances solved by hand. Latent heat and the heat of moving water are
// off, so that heat and vapour part; storage is small, so that the run is steady at its end. Closed forms; no table needed.

const psat = (t: number): number => 610.5 * Math.exp((17.269 * t) / (237.3 + t));
const air_kgmsPa = 2e-10;
const physics: NonNullable<WallCase["physics"]> = {
  saturationPressure: "iso13788",
  airPermeability: air_kgmsPa,
  latentHeat_Jkg: 0,
  waterHeatCapacity_JkgK: 0,
  sensibleHeatOfMovingWater: false,
};
const board = (id: string, conductivity_WmK: Material["conductivity_WmK"], mu: number): Material => ({
  id,
  name: id,
  kind: "bulk",
  density_kgm3: 50,
  heatCapacity_JkgK: 1000,
  conductivity_WmK,
  sorption: { slope_kgm3: 0.1 },
  vapour: { resistanceFactor: mu },
});
const out = { T: -10, p: 0.8 * psat(-10) };
const room = { T: 20, p: 0.3 * psat(20) };
const film_Wm2K = 10;
const vapourFilm = 1e-7;
const face = (side: { T: number; p: number }): LabFace => ({
  temperature_C: side.T,
  vapourPressure_Pa: side.p,
  heatFilm_Wm2K: film_Wm2K,
  vapourFilm_kgm2sPa: vapourFilm,
});
const hours = 40 * 24;

function steady(materials: Material[], layers: Layer[], leaks: Path["leaks"] = []): RunResult {
  const project: Project = wallProject({
    materials,
    layers,
    outside: face(out),
    inside: face(room),
    hours,
    start_C: 5,
    startHumidity: 0.4,
    physics,
  });
  const [option] = project.options;
  const [path] = option!.paths;
  return runOne({ ...project, options: [{ ...option!, paths: [{ ...path!, leaks }] }] });
}

/** Temperature and vapour pressure at a layer's face at the end. */
function at(result: RunResult, layer: string, side: "outside" | "inside"): { T: number; p: number } {
  const probe = result.probes.find((one) => one.kind === "interface" && one.layer === layer && one.side === side)!;
  const T = probe.T_C.at(-1)!;
  return { T, p: probe.RH.at(-1)! * psat(T) };
}

const outer: Layer = { id: "outer", material: "outer", thickness_m: 0.05 };
const inner: Layer = { id: "inner", material: "inner", thickness_m: 0.1 };
const materials = [board("outer", 0.05, 20), board("inner", 0.04, 5)];
const R = { outer: 0.05 / 0.05 + 1 / film_Wm2K, inner: 0.1 / 0.04 + 1 / film_Wm2K };
const Z = {
  outer: (0.05 * 20) / air_kgmsPa + 1 / vapourFilm,
  inner: (0.1 * 5) / air_kgmsPa + 1 / vapourFilm,
};

describe("in a steady state", () => {
  it("room air that leaks to a plane warms and dampens it as a network of resistances says", () => {
    const flow_m3hm2 = 3;
    const result = steady(materials, [outer, inner], [{ to: "outer", at: "inside", flow_m3hm2 }]);
    const heat = (1206 * flow_m3hm2) / 3600;
    // Water that a cubic metre of the room's air brings per pascal: 1/(R_v T), near 290 K.
    const vapour = flow_m3hm2 / 3600 / (461.5 * 290);
    const T = (out.T / R.outer + room.T / R.inner + heat * room.T) / (1 / R.outer + 1 / R.inner + heat);
    const p = (out.p / Z.outer + room.p / Z.inner + vapour * room.p) / (1 / Z.outer + 1 / Z.inner + vapour);
    const got = at(result, "outer", "inside");
    // A tenth of a percent of the drop in temperature; 2 % of that in pressure, for the density of the air at 290 K.
    expect(Math.abs(got.T - T)).toBeLessThan(0.03);
    expect(Math.abs(got.p - p)).toBeLessThan(0.02 * (room.p - out.p));
    // Without the leak the plane is far from there: the test can fail.
    const without = (out.T / R.outer + room.T / R.inner) / (1 / R.outer + 1 / R.inner);
    expect(Math.abs(T - without)).toBeGreaterThan(1);
  });

  it("a ventilated space takes a temperature between its own and outdoors by its air changes", () => {
    const space: Material = { id: "space", name: "space", kind: "air", thermalResistance_m2KW: 0.18 };
    for (const airChangesPerHour of [0, 20, 400]) {
      const result = steady(
        [...materials, space],
        [outer, { id: "space", material: "space", thickness_m: 0.025, ventilation: { airChangesPerHour } }, inner],
      );
      // Outdoor air of 101325 Pa weighs P/(R T), 287.055 J/(kg K) (ideal gas, dry air), and holds 1006 J/(kg K).
      const heat = ((101325 / (287.055 * (out.T + 273.15))) * 1006 * airChangesPerHour * 0.025) / 3600;
      const [toOut, toRoom] = [1 / (R.outer + 0.09), 1 / (R.inner + 0.09)];
      const middle = (out.T * (toOut + heat) + room.T * toRoom) / (toOut + toRoom + heat);
      const outerFace = out.T + ((middle - out.T) * R.outer) / (R.outer + 0.09);
      expect(Math.abs(at(result, "outer", "inside").T - outerFace), `${airChangesPerHour} 1/h`).toBeLessThan(0.03);
    }
  });

  it.each([undefined, false])(
    "a joint that resists lets temperature and vapour pressure jump by flow times resistance (liquid: %s)",
    (liquid) => {
      // Neither material draws water, so capillary contact, which a joint has unless it says no, must not matter.
      const contact = { thermal_m2KW: 0.5, vapour_m2sPakg: 4e9, ...(liquid === undefined ? {} : { liquid }) };
      const result = steady(materials, [{ ...outer, contact }, inner]);
      const q = (room.T - out.T) / (R.outer + 0.5 + R.inner);
      const g = (room.p - out.p) / (Z.outer + 4e9 + Z.inner);
      const [before, after] = [at(result, "outer", "inside"), at(result, "inner", "outside")];
      expect(Math.abs(before.T - (out.T + q * R.outer))).toBeLessThan(0.03);
      expect(Math.abs(after.T - before.T - q * 0.5)).toBeLessThan(0.03);
      expect(Math.abs(before.p - (out.p + g * Z.outer))).toBeLessThan(0.005 * (room.p - out.p));
      expect(Math.abs(after.p - before.p - g * 4e9)).toBeLessThan(0.005 * (room.p - out.p));
    },
  );

  it("a membrane that opens with humidity passes vapour by its permeance at the mean humidity of its faces", () => {
    const permeance = (RH: number): number =>
      1e-11 * Math.exp((Math.log(100) * (Math.min(Math.max(RH, 0.2), 0.8) - 0.2)) / 0.6);
    const smart: Material = {
      id: "smart",
      name: "smart",
      kind: "membrane",
      permeance_kgm2sPa: [
        [0.2, 1e-11],
        [0.8, 1e-9],
      ],
    };
    const result = steady([...materials, smart], [outer, { id: "smart", material: "smart" }, inner]);
    const [before, after] = [at(result, "smart", "outside"), at(result, "smart", "inside")];
    const q = (room.T - out.T) / (R.outer + R.inner);
    const T = out.T + q * R.outer;
    expect(Math.abs(before.T - T)).toBeLessThan(0.03);
    expect(Math.abs(after.T - T)).toBeLessThan(0.03);
    // One unknown, the flow: bisection on what the membrane passes less what the layers bring.
    let [low, high] = [0, (room.p - out.p) / (Z.outer + Z.inner)];
    for (let k = 0; k < 100; k += 1) {
      const g = (low + high) / 2;
      const [p1, p2] = [out.p + g * Z.outer, room.p - g * Z.inner];
      const passes = permeance((p1 + p2) / 2 / psat(T)) * (p2 - p1);
      if (passes > g) low = g;
      else high = g;
    }
    const g = (low + high) / 2;
    // The membrane's table reads an exponential curve by 256 straight lines: 2e-4 of it.
    expect(Math.abs(before.p - (out.p + g * Z.outer))).toBeLessThan(0.002 * (room.p - out.p));
    expect(Math.abs(after.p - (room.p - g * Z.inner))).toBeLessThan(0.002 * (room.p - out.p));
    expect(after.p - before.p).toBeGreaterThan(0.1 * (room.p - out.p));
  });

  it("conductivity that depends on temperature bends the profile as Kirchhoff's transform says", () => {
    const lambda: [number, number][] = [
      [-20, 0.03],
      [0, 0.026],
      [10, 0.02],
      [30, 0.024],
    ];
    const foam = board("foam", { dry_WmK: 0.02, temperature_C: lambda }, 50);
    const integral = (T: number): number => {
      let sum = 0;
      for (let k = 1; k < lambda.length; k += 1) {
        const [[t0, l0], [t1, l1]] = [lambda[k - 1]!, lambda[k]!];
        const end = Math.min(T, t1);
        if (end <= t0) break;
        const lEnd = l0 + ((l1 - l0) * (end - t0)) / (t1 - t0);
        sum += ((l0 + lEnd) / 2) * (end - t0);
      }
      return sum;
    };
    // Half a percent of the driving difference on the default grid, a tenth on a fine one, as for the other conduction problems.
    for (const [gridFineness, tolerance_K] of [
      [1, 0.25],
      [4, 0.05],
    ] as const) {
      const result = runOne(
        wallProject({
          materials: [foam],
          layers: [{ id: "foam", material: "foam", thickness_m: 0.1 }],
          outside: { temperature_C: -20, heatFilm_Wm2K: "held", vapourFilm_kgm2sPa: 0 },
          inside: { temperature_C: 30, heatFilm_Wm2K: "held", vapourFilm_kgm2sPa: 0 },
          hours: 120,
          start_C: 5,
          startHumidity: 0.5,
          depths_m: [0.025, 0.05, 0.075],
          gridFineness,
          physics: { moisture: false },
        }),
      );
      for (const probe of result.probes.filter((one) => one.kind === "depth")) {
        const wanted = (integral(30) * probe.depth_m) / 0.1;
        let [low, high] = [-20, 30];
        for (let k = 0; k < 60; k += 1) {
          const T = (low + high) / 2;
          if (integral(T) < wanted) low = T;
          else high = T;
        }
        expect(Math.abs(probe.T_C.at(-1)! - low)).toBeLessThan(tolerance_K);
      }
    }
  });
});
