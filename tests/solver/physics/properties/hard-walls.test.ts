import { describe, expect, it } from "vitest";
import type { Course, LabFace, Layer, Material, RunResult } from "../../../../solver/index.ts";
import { runOne } from "../../../reference/support/run.ts";
import { wallProject } from "./walls.ts";

const steps = (values: readonly number[], hoursEach = 1): Course => ({
  table: values.map((value, k): [number, number] => [k * hoursEach * 3600, value]),
  between: "step",
});
const face = (temperature_C: Course, relativeHumidity: Course, more: Partial<LabFace> = {}): LabFace => ({
  temperature_C,
  relativeHumidity,
  heatFilm_Wm2K: 17,
  vapourFilm_kgm2sPa: 1e-7,
  ...more,
});
const room = (relativeHumidity = 0.5): LabFace => ({
  temperature_C: 21,
  relativeHumidity,
  heatFilm_Wm2K: 8,
  vapourFilm_kgm2sPa: 2.5e-8,
});

/** Goes to the end, conserves, and records nothing but numbers that a wall can have. */
function expectSound(result: RunResult): void {
  expect(result.failure).toBeNull();
  expect(result.status).toBe("finished");
  expect(result.water.closure).toBeLessThanOrEqual(1e-6);
  expect(result.heat.closure).toBeLessThanOrEqual(1e-6);
  for (const probe of result.probes)
    for (let k = 0; k < result.hours; k += 1) {
      expect(probe.T_C[k]!, `${probe.id} hour ${k}`).toSatisfy((T: number) => T > -80 && T < 120);
      expect(probe.RH[k]!, `${probe.id} hour ${k}`).toSatisfy((RH: number) => RH >= 0 && RH <= 1);
      expect(probe.w_kgm3[k]!, `${probe.id} hour ${k}`).toSatisfy((w: number) => w >= 0 && Number.isFinite(w));
    }
}

const run = (
  layers: Layer[],
  outside: LabFace,
  inside: LabFace,
  hours: number,
  startHumidity = 0.6,
  materials: Material[] = [],
  start_C = 15,
): RunResult => runOne(wallProject({ materials, layers, outside, inside, hours, start_C, startHumidity }));

const day = Array.from({ length: 24 }, (_, h) => h);
const winterDays = (count: number): number[] =>
  Array.from({ length: count }, () => day.map((h) => -8 + 6 * Math.sin(((h - 8) / 12) * Math.PI))).flat();

describe("walls that are hard to solve", () => {
  it("runs a strand board that starts saturated behind foil", () => {
    const result = run(
      [
        { id: "foil", material: "alu_foil" },
        { id: "board", material: "osb_111", thickness_m: 0.0111, initial: { relativeHumidity: 1 } },
        { id: "wool", material: "glass_fibre_batt", thickness_m: 0.14 },
        { id: "gypsum", material: "gypsum_board_127", thickness_m: 0.0127 },
      ],
      face(steps(winterDays(10)), 0.8),
      room(),
      240,
    );
    expectSound(result);
    // In winter the room's vapour finds the cold board: it does not dry, it gets wetter.
    expect(result.water.stored).toBeGreaterThan(0);
  });

  it("runs brick through a week of rain while its conductivity for water rises eight orders of magnitude", () => {
    const brick: Material = {
      id: "thirsty-brick",
      name: "Brick",
      kind: "bulk",
      density_kgm3: 1700,
      heatCapacity_JkgK: 850,
      conductivity_WmK: { dry_WmK: 0.6, perWater: 0.003 },
      freeSaturation_kgm3: 220,
      sorption: { saturation_kgm3: 220, suctionTerms: [{ share: 1, scale_perPa: 1e-5, n: 1.8, m: 0.444 }] },
      vapour: { resistanceFactor: 12, fillsWithWater_kgm3: 220 },
      liquid: {
        conductivity_s: {
          suction_Pa: [
            [1e2, 1e-8],
            [1e4, 3e-9],
            [1e5, 1e-10],
            [1e6, 3e-13],
            [1e7, 1e-15],
            [1e8, 1e-17],
          ],
        },
      },
    };
    const result = run(
      [{ id: "brick", material: "thirsty-brick", thickness_m: 0.215 }],
      face(10, 0.9, { rain_kgm2s: steps(Array.from({ length: 168 }, (_, h) => (h % 5 === 4 ? 0 : 6e-4))) }),
      room(),
      240,
      0.4,
      [brick],
    );
    expectSound(result);
    expect(result.water.byFaceAndSource["outside rain taken up"]).toBeGreaterThan(10);
  });

  it("runs a skin of 0.1 mm between layers of 300 mm, meshed or as a membrane", () => {
    const skin: Material = {
      id: "skin",
      name: "Skin",
      kind: "bulk",
      density_kgm3: 950,
      heatCapacity_JkgK: 1500,
      conductivity_WmK: 0.3,
      sorption: { slope_kgm3: 1 },
      vapour: { resistanceFactor: 50_000 },
    };
    for (const middle of [
      { id: "skin", material: "skin", thickness_m: 0.0001 },
      { id: "skin", material: "poly_6mil" },
    ] satisfies Layer[])
      expectSound(
        run(
          [
            { id: "outer", material: "wood_fibre_batt", thickness_m: 0.3 },
            middle,
            { id: "inner", material: "wood_fibre_batt", thickness_m: 0.3 },
          ],
          face(steps(winterDays(5)), 0.85),
          room(0.6),
          120,
          0.6,
          [skin],
        ),
      );
  });

  it.each([0.001, 0.9999])("runs a frame wall that starts at a relative humidity of %d", (start) => {
    expectSound(
      run(
        [
          { id: "stucco", material: "stucco_cement_lime", thickness_m: 0.022 },
          { id: "board", material: "osb_111", thickness_m: 0.0111 },
          { id: "wool", material: "cellulose_dense", thickness_m: 0.14 },
          { id: "gypsum", material: "gypsum_board_127", thickness_m: 0.0127 },
        ],
        face(steps(winterDays(5)), 0.8),
        room(),
        120,
        start,
      ),
    );
  });

  it("runs from -45 to +35 degC within an hour and back", () => {
    expectSound(
      run(
        [
          { id: "stucco", material: "stucco_cement_lime", thickness_m: 0.022 },
          { id: "board", material: "osb_111", thickness_m: 0.0111 },
          { id: "wool", material: "glass_fibre_batt", thickness_m: 0.14 },
          { id: "gypsum", material: "gypsum_board_127", thickness_m: 0.0127 },
        ],
        face(
          {
            table: [
              [0, -45],
              [24 * 3600, -45],
              [25 * 3600, 35],
              [48 * 3600, 35],
              [49 * 3600, -45],
              [72 * 3600, -45],
            ],
            between: "line",
          },
          0.9,
        ),
        room(),
        72,
      ),
    );
  });

  it.each([
    ["a single board of 1 mm", "osb_111", 0.001],
    ["concrete of 2 m", "concrete", 2],
  ])("runs %s", (_, material, thickness_m) => {
    const result = run([{ id: "only", material, thickness_m }], face(steps(winterDays(10)), 0.8), room(), 240);
    expectSound(result);
  });

  it("runs a wall that dew soaks behind steel, where no pore takes the water", () => {
    expectSound(
      run(
        [
          { id: "steel", material: "metal_siding", thickness_m: 0.001 },
          { id: "wool", material: "glass_fibre_batt", thickness_m: 0.14 },
        ],
        face(steps(winterDays(10)), 0.8),
        room(0.6),
        240,
      ),
    );
  });

  it("runs a wall whose air flows out through cold layers and condenses", () => {
    const result = runOne(
      wallProject({
        materials: [],
        layers: [
          { id: "board", material: "osb_111", thickness_m: 0.0111 },
          { id: "wool", material: "glass_fibre_batt", thickness_m: 0.14 },
          { id: "gypsum", material: "gypsum_board_127", thickness_m: 0.0127 },
        ],
        outside: face(-20, 0.8),
        inside: room(0.6),
        hours: 240,
        start_C: 15,
        startHumidity: 0.6,
        physics: { airVelocity_ms: -1e-3 },
      }),
    );
    expectSound(result);
    expect(result.water.stored).toBeGreaterThan(0);
  });
});
