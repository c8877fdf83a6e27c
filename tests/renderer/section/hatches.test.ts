import { expect, test } from "vitest";
import { hatchOf, hatchPaths } from "../../../renderer/section/index.ts";
import { catalogue, materialById } from "../../../solver/index.ts";

const kindOf = (id: string, path: "studBay" | "stud" | "header" = "studBay"): string =>
  hatchOf(materialById(id)!, path);

test("materials are hatched the way they are drafted", () => {
  expect(
    ["osb_111", "plywood_softwood_127", "xps", "ccspf", "glass_fibre_batt", "stone_wool_board", "gypsum_board_127"].map(
      (id) => kindOf(id),
    ),
  ).toEqual(["strandBoard", "plywood", "rigidFoam", "sprayedFoam", "fibreFill", "fibreBoard", "gypsum"]);
  expect(
    ["brick_veneer", "concrete", "fibre_cement", "vent_cavity_19", "housewrap", "paint_latex"].map((id) => kindOf(id)),
  ).toEqual(["brick", "concrete", "fibreCement", "air", "membrane", "membrane"]);
});

test("a stud runs through the section, a header is cut across", () => {
  expect(kindOf("spf_framing", "stud")).toBe("lumberThrough");
  expect(kindOf("spf_framing", "header")).toBe("lumberAcross");
});

test("every material of the catalogue has a hatch of its own, and it can be drawn at any size", () => {
  for (const material of catalogue) {
    const kind = hatchOf(material, "studBay");
    expect([material.id, kind]).not.toEqual([material.id, "plain"]);
    for (const height of [0, 2, 40, 400]) {
      const { stroke, solid } = hatchPaths(kind, { x: 0, y: 0, width: 120, height, unit: 0.7 });
      expect(stroke + solid).not.toMatch(/NaN|Infinity/);
    }
  }
});

test("the same cut is drawn the same way each time", () => {
  const rect = { x: 3, y: 5, width: 90, height: 60, unit: 1 };
  expect(hatchPaths("sprayedFoam", rect)).toEqual(hatchPaths("sprayedFoam", rect));
});
