import { expect, test } from "vitest";
import { materialIssues, type Material } from "../../../solver/materials/index.ts";

const good: Material = {
  id: "board",
  name: "Board",
  kind: "bulk",
  density_kgm3: 600,
  heatCapacity_JkgK: 1500,
  conductivity_WmK: 0.13,
  porosity: 0.6,
  freeSaturation_kgm3: 400,
  sorption: { relativeHumidity: [[0.5, 40], [0.8, 70], [0.95, 120]] }, // prettier-ignore
  vapour: { resistanceFactor: [[0.25, 200], [0.75, 80]] }, // prettier-ignore
  liquid: { absorption_kgm2s05: 0.002 },
};
const paths = (change: Partial<Material>): string[] =>
  materialIssues({ ...good, ...change }).map((issue) => issue.path);
const without = (field: keyof Material): Material =>
  Object.fromEntries(Object.entries(good).filter(([name]) => name !== field)) as Material;

test("a sound material has no issue", () => {
  expect(materialIssues(good)).toEqual([]);
});

test("sorption that falls with humidity is refused, with the humidity where it falls", () => {
  const [issue] = materialIssues({ ...good, sorption: { relativeHumidity: [[0.5, 40], [0.8, 30]] } }); // prettier-ignore
  expect(issue).toMatchObject({ path: "sorption", severity: "error" });
  expect(issue!.message).toContain("falls from 40 to 30 kg/m3 at 80 % RH");
});

test("free saturation above the pores or below the sorption curve is refused", () => {
  expect(paths({ freeSaturation_kgm3: 700 })).toEqual(["freeSaturation_kgm3"]);
  expect(paths({ freeSaturation_kgm3: 100 })).toEqual(["freeSaturation_kgm3"]);
});

test("a board that is tighter wet than dry is refused, by factor, permeability and permeance", () => {
  expect(paths({ vapour: { resistanceFactor: [[0.25, 80], [0.75, 200]] } })).toEqual(["vapour"]); // prettier-ignore
  expect(paths({ vapour: { permeability_kgmsPa: [[0.25, 2e-12], [0.75, 1e-12]] } })).toEqual(["vapour"]); // prettier-ignore
  expect(paths({ permeance_kgm2sPa: [[0.25, 2e-10], [0.75, 1e-10]] })).toEqual(["permeance_kgm2sPa"]); // prettier-ignore
});

test("unsorted and impossible points are refused", () => {
  expect(paths({ sorption: { relativeHumidity: [[0.8, 70], [0.5, 80]] } })).toEqual(["sorption"]); // prettier-ignore
  expect(paths({ sorption: { relativeHumidity: [[50, 40], [80, 70]] } })).toEqual(["sorption"]); // prettier-ignore
  expect(paths({ sorption: { suction_Pa: [[1e3, 10], [1e6, 50]] } })).toEqual(["sorption"]); // prettier-ignore
  expect(paths({ vapour: { resistanceFactor: [[0.25, 10], [0.75, 0]] } })).toEqual(["vapour"]); // prettier-ignore
});

test("what a run needs must be there, and a laboratory case without moisture needs less", () => {
  expect(materialIssues(without("density_kgm3")).map((issue) => issue.path)).toEqual(["density_kgm3"]);
  expect(materialIssues(without("vapour")).map((issue) => issue.path)).toEqual(["vapour"]);
  expect(materialIssues(without("vapour"), { heat: true, moisture: false })).toEqual([]);
  expect(materialIssues({ id: "film", name: "Film", kind: "membrane" }).map((issue) => issue.path)).toEqual([
    "permeance_kgm2sPa",
  ]);
  expect(materialIssues(without("freeSaturation_kgm3")).map((issue) => issue.path)).toEqual(["freeSaturation_kgm3"]);
});
