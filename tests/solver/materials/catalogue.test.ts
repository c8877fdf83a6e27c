import { readFileSync } from "node:fs";
import papaparse from "papaparse";
import { describe, expect, test } from "vitest";
import {
  airPermeability23_kgmsPa,
  alternativesOf,
  vapourAlternatives,
  catalogue,
  materialById,
  materialIssues,
  materialSchema,
  passportProperties,
  type CatalogueMaterial,
  type PassportProperty,
} from "../../../solver/materials/index.ts";

const rowsOf = (file: string): Record<string, string>[] =>
  papaparse.parse<Record<string, string>>(readFileSync(new URL(`./fixtures/${file}`, import.meta.url), "utf8"), {
    header: true,
    skipEmptyLines: true,
  }).data;
/** The table as it was collected: every figure with its flag; sources and notes stand in the catalogue itself. */
const collected = rowsOf("materials.csv");
const wood = rowsOf("wood_emc_points.csv");
const found = (id: string): CatalogueMaterial => {
  const material = materialById(id);
  if (!material) throw new Error(`no ${id}`);
  return material;
};
const pointsOf = (text: string): [number, number][] =>
  text.split(";").map((pair) => pair.split(":").map(Number) as [number, number]);
const curve = (id: string): Exclude<CatalogueMaterial["conductivity_WmK"], number | undefined> =>
  found(id).conductivity_WmK as never;

test("every row that was collected stands in the catalogue, once, under its own id", () => {
  expect(collected).toHaveLength(94);
  expect(catalogue.map((material) => material.id).sort()).toEqual(collected.map((row) => row["id"]!).sort());
});

describe("figures and flags are those of the collected table", () => {
  for (const row of collected)
    test(row["id"]!, () => {
      const material = found(row["id"]!);
      const { passport } = material;
      if (material.kind === "bulk") {
        expect(material.density_kgm3).toBe(Number(row["rho_kg_m3"]));
        expect(material.heatCapacity_JkgK).toBe(Number(row["c_J_kgK"]));
        expect(curve(material.id).dry_WmK).toBe(Number(row["k_W_mK"]));
        expect(curve(material.id).reference_C).toBe(Number(row["k_Tref_C"]));
        expect([passport.density!.flag, passport.heatCapacity!.flag, passport.conductivity!.flag]).toEqual([
          row["rho_flag"],
          row["c_flag"],
          row["k_flag"],
        ]);
        expect(passport.density!.range ?? "").toBe(row["rho_range"]);
        if (row["w_rh30"] && row["w_rh98"] !== "0") {
          const at = [30, 50, 65, 80, 90, 95, 98];
          expect(material.sorption).toEqual({ relativeHumidity: at.map((rh) => [rh / 100, Number(row[`w_rh${rh}`])]) });
          expect(passport.sorption!.flag).toBe(row["sorption_flag"]);
        }
        if (row["w_f_kg_m3"]) expect(material.freeSaturation_kgm3).toBe(Number(row["w_f_kg_m3"]));
        else expect(passport.freeSaturation!.flag).toBe("ASSUMED");
        expect(material.liquid).toEqual({ absorption_kgm2s05: Number(row["A_kg_m2s05"] || 0) });
        expect(passport.liquid!.flag).toBe(row["A_flag"] || "ASSUMED");
      }
      if (row["mu_points"]) {
        expect(material.vapour).toEqual({ resistanceFactor: pointsOf(row["mu_points"]) });
        expect(passport.vapour!.flag).toBe(row["mu_flag"]);
      }
      if (row["permeance_points_ng"]) {
        const permeance = material.permeance_kgm2sPa as [number, number][];
        pointsOf(row["permeance_points_ng"]).forEach(([humidity, ng], i) => {
          expect(permeance[i]![0]).toBe(humidity);
          expect(permeance[i]![1]).toBeCloseTo(ng * 1e-12, 18);
        });
        expect(passport.vapour!.flag).toBe(row["permeance_flag"]);
      }
    });
});

test("every material passes the schema and its own checks: sorption rises, free saturation fits the pores, wet is not tighter than dry", () => {
  for (const material of catalogue) {
    expect(materialSchema.safeParse(material).success, material.id).toBe(true);
    expect(materialIssues(material), material.id).toEqual([]);
  }
});

test("no figure stands without a passport: flag, source or rule, confidence", () => {
  const propertyOf: Partial<Record<string, PassportProperty>> = {
    density_kgm3: "density",
    heatCapacity_JkgK: "heatCapacity",
    conductivity_WmK: "conductivity",
    porosity: "porosity",
    freeSaturation_kgm3: "freeSaturation",
    vapour: "vapour",
    permeance_kgm2sPa: "vapour",
    liquid: "liquid",
    thermalResistance_m2KW: "thermalResistance",
    sorption: "sorption",
  };
  for (const material of catalogue)
    for (const [field, property] of Object.entries(propertyOf)) {
      if (material[field] === undefined) continue;
      const passport = material.passport[property!];
      expect(passport, `${material.id} ${field}`).toBeDefined();
      if (passport!.flag !== "ASSUMED") expect(passport!.sources.length, `${material.id} ${field}`).toBeGreaterThan(0);
      else expect(passport!.note.length, `${material.id} ${field}`).toBeGreaterThan(10);
    }
  expect(passportProperties).toContain("vapour");
});

test("solid wood conducts by the Wood Handbook's equation 4-15: G (0.1941 + 0.004064 MC) + 0.01864 (SEEN)", () => {
  for (const id of [
    "spf_framing",
    "spruce",
    "douglas_fir",
    "southern_pine",
    "eastern_white_pine",
    "western_redcedar",
    "clt_spruce",
  ]) {
    const material = found(id);
    const G = material.density_kgm3! / 1000;
    const { dry_WmK, perWater } = curve(id);
    // Four printed digits.
    expect(dry_WmK).toBeCloseTo(G * 0.1941 + 0.01864, 4);
    expect(dry_WmK + perWater! * 0.12 * material.density_kgm3!).toBeCloseTo(G * (0.1941 + 0.004064 * 12) + 0.01864, 4);
  }
});

test("solid wood takes up what the Wood Handbook's sorption equation gives at 21.1 degC (formula SEEN second-hand)", () => {
  for (const id of ["spf_framing", "douglas_fir", "western_redcedar", "southern_pine"]) {
    const material = found(id);
    const points = new Map((material.sorption as { relativeHumidity: [number, number][] }).relativeHumidity);
    for (const row of wood.filter((one) => one["T_C"] === "21.1")) {
      const water = points.get(Number(row["RH_pct"]) / 100);
      // The table holds kg/m3 to one decimal.
      if (water !== undefined)
        expect(Math.abs((100 * water) / material.density_kgm3! - Number(row["EMC_pct"]))).toBeLessThan(0.1);
    }
  }
});

test("concrete has the vapour permeability of the IEA Annex 24 data: 1.26, 1.4, 2.5 and 6.3e-12 kg/(m s Pa) at 25, 50, 75 and 95 % RH (SEEN)", () => {
  const factors = (found("concrete").vapour as { resistanceFactor: [number, number][] }).resistanceFactor;
  [1.26e-12, 1.4e-12, 2.5e-12, 6.3e-12].forEach((permeability, i) =>
    expect(factors[i]![1] / (airPermeability23_kgmsPa / permeability)).toBeCloseTo(1, 2),
  );
});

test("coated-glass-faced polyisocyanurate has R-5.6, 5.0 and 4.5 per inch at 24, 4.4 and -3.9 degC mean (trade-body tests, SEEN)", () => {
  const table = new Map(curve("pir_glass").temperature_C);
  const perInch = (k: number): number => 0.1442279 / k;
  expect([24, 4.4, -3.9].map((t) => Number(perInch(table.get(t)!).toFixed(1)))).toEqual([5.6, 5, 4.5]);
});

test("still air spaces have the resistances of ISO 6946 for vertical spaces, 0.18 m2 K/W from 25 mm (table from MEMORY)", () => {
  expect(found("air_25").thermalResistance_m2KW).toBeCloseTo(0.183, 3);
  expect(found("air_89").thermalResistance_m2KW).toBeCloseTo(0.183, 3);
  expect(found("air_10").thermalResistance_m2KW).toBeCloseTo(0.149, 3);
  expect(found("air_25_foil").thermalResistance_m2KW).toBeCloseTo(0.664, 2);
});

/** Flow through a panel between two humidities, local permeability read ln-linear, ends held; gives the cup's resistance factor. */
function cupMean(points: [number, number][], from: number, to: number): number {
  const local = (h: number): number => {
    if (h <= points[0]![0]) return points[0]![1];
    for (let i = 1; i < points.length; i++) {
      const [x0, y0] = points[i - 1]!;
      const [x1, y1] = points[i]!;
      if (h <= x1) return y0 * (y1 / y0) ** ((h - x0) / (x1 - x0));
    }
    return points.at(-1)![1];
  };
  const n = 4000;
  let sum = 0;
  for (let i = 0; i < n; i++) sum += 1 / local(from + ((i + 0.5) / n) * (to - from));
  return n / sum;
}

test("strand board and plywood give back the cup tests of their rows: 423 and 111, 378 and 45 (COMPUTED by integration)", () => {
  const factors = (id: string): [number, number][] =>
    (found(id).vapour as { resistanceFactor: [number, number][] }).resistanceFactor;
  expect(Math.abs(cupMean(factors("osb_111"), 0, 0.5) - 423)).toBeLessThan(1.5);
  expect(Math.abs(cupMean(factors("osb_111"), 0.5, 1) - 111)).toBeLessThan(1.5);
  expect(Math.abs(cupMean(factors("plywood_softwood_127"), 0, 0.5) - 378)).toBeLessThan(1.5);
  expect(Math.abs(cupMean(factors("plywood_softwood_127"), 0.5, 1) - 45)).toBeLessThan(1.5);
});

test("foams stay inside the product standards: permeance at 25.4 mm at most 86 ng for XPS, 201 for EPS II, 287 for EPS I, 60 at 50 mm for closed-cell foam (ASTM C578, CAN/ULC S705.1, SEEN)", () => {
  const ng = (id: string, thickness_m: number): number =>
    (airPermeability23_kgmsPa /
      (found(id).vapour as { resistanceFactor: [number, number][] }).resistanceFactor[0]![1] /
      thickness_m) *
    1e12;
  expect(ng("xps", 0.0254)).toBeLessThanOrEqual(86);
  expect(ng("eps_ii", 0.0254)).toBeLessThanOrEqual(201);
  expect(ng("eps_i", 0.0254)).toBeLessThanOrEqual(287);
  expect(ng("ccspf", 0.05)).toBeLessThanOrEqual(60);
});

test("the polyamide retarder passes the variable class of DIN 4108-3: sd 2 to 10 m at 25 %, at most 0.5 m at 90 % (SEEN in German texts)", () => {
  const points = found("smart_pa").permeance_kgm2sPa as [number, number][];
  const sd = (permeance: number): number => airPermeability23_kgmsPa / permeance;
  const dry = sd(points.find(([h]) => h === 0.25)![1]);
  expect(dry).toBeGreaterThanOrEqual(2);
  expect(dry).toBeLessThanOrEqual(10);
  expect(sd(points.find(([h]) => h === 0.85)![1])).toBeLessThanOrEqual(0.5);
});

test("stock thicknesses rise from the sheet list in metres, and membranes have none", () => {
  expect(found("xps").stock_m).toEqual([0.025, 0.038, 0.051, 0.076]);
  expect(found("housewrap").stock_m).toEqual([]);
});

test("a tight alternative is tighter and an open one more open than the catalogue's own curve where both are read, wet", () => {
  const wet = (points: readonly (readonly [number, number])[]): number =>
    points.find(([humidity]) => humidity === 0.75)?.[1] ?? points.at(-1)![1];
  for (const other of vapourAlternatives) {
    const own = found(other.id);
    const openness = other.permeance_kgm2sPa
      ? wet(other.permeance_kgm2sPa) / wet(own.permeance_kgm2sPa as [number, number][])
      : wet((own.vapour as { resistanceFactor: [number, number][] }).resistanceFactor) / wet(other.resistanceFactor!);
    if (other.side === "open") expect(openness, other.id).toBeGreaterThan(1);
    else expect(openness, other.id).toBeLessThan(1);
  }
  expect(alternativesOf("osb_111").map((one) => one.side)).toEqual(["tight", "open"]);
});
