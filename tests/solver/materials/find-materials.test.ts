import { expect, test } from "vitest";
import { catalogue, findMaterials } from "../../../solver/materials/index.ts";

const first = (words: string): string | undefined => findMaterials(words)[0]?.id;
const ids = (words: string): string[] => findMaterials(words).map((material) => material.id);

test.each([
  ["drywall", "gypsum_board_127"],
  ["OSB", "osb_111"],
  ["oriented strand board", "osb_111"],
  ["xps", "xps"],
  ["extruded polystyrene", "xps"],
  ["fiberglass batt", "glass_fibre_batt"],
  ["dense pack", "cellulose_dense"],
  ["house wrap", "housewrap"],
  ["tar paper", "felt_15"],
  ["6 mil poly", "poly_6mil"],
  ["kraft", "kraft_facing"],
  ["cmu", "cmu_hollow_190"],
  ["hempcrete", "hemp_lime"],
  ["clt", "clt_spruce"],
])("%s finds %s first (words of the trade, common practice, no source)", (words, id) => {
  expect(first(words)).toBe(id);
});

test.each([
  ["polyiso", ["pir_foil", "pir_glass", "pir_core"]],
  ["mineral wool", ["stone_wool_batt", "stone_wool_board"]],
  ["smart retarder", ["smart_pa", "smart_pe_copolymer"]],
  ["2x6", ["spf_framing"]],
  ["insulated sheathing", ["insul_sheath_osb", "insul_sheath_pir"]],
  ["rainscreen", ["vent_cavity_19"]],
  ["vapor barrier", ["poly_6mil", "kraft_facing"]],
  ["latex", ["paint_latex"]],
])("%s finds all that it may mean (words of the trade, common practice, no source)", (words, wanted) => {
  expect(ids(words)).toEqual(expect.arrayContaining(wanted));
});

test("American and British spelling find the same, and every word must fit", () => {
  expect(ids("fiber cement")).toEqual(ids("fibre cement"));
  expect(ids("aluminum")).toEqual(ids("aluminium"));
  expect(ids("brick veneer")).toContain("brick_veneer");
  expect(ids("brick foam")).toEqual([]);
  expect(ids("zzzz")).toEqual([]);
  expect(findMaterials("")).toHaveLength(catalogue.length);
  expect(() => findMaterials("((((*+?".repeat(1000))).not.toThrow();
});
