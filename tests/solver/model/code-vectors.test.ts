import { describe, expect, test } from "vitest";
import {
  retarderVerdict,
  retarderClass,
  energyVerdict,
  type Edition,
  type RetarderQuestion,
  editions,
} from "../../../solver/model/index.ts";
import { class3Row, noRetarderRows, withFoamRows, permission } from "../../../solver/model/codes/retarder-tables.ts";
import { airTightnessLimit, canadianRow, energyRow, wordsOfWallR } from "../../../solver/model/codes/energy-tables.ts";
import { zoneOf } from "../../../solver/model/codes/edition.ts";
import { csvRows } from "./csv-rows.ts";

const verdictWords = {
  accept: "accept",
  reject: "reject",
  approvedDesign: "approved design needed",
  offTable: "off-table",
  notRequired: "accept",
};
const backings = { "wood panel": "woodPanel", fibreboard: "fibreboard", gypsum: "gypsum", "": "woodPanel" } as const;

function question(row: Record<string, string>): RetarderQuestion {
  const kind = row["ci_type"] ?? (Number(row["ci_R"]) > 0 ? "foam" : "none");
  const spray = /R-(\d+) closed-cell/.exec(kind);
  const retarder = row["interior_retarder"]!.split(" ")[0]!;
  return {
    edition: row["edition"] as Edition,
    zone: row["zone"]!,
    stud: row["stud"] as "2x4" | "2x6",
    cavity_R: Number(row["cavity_R"]),
    ci_R: Number(row["ci_R"]),
    ciKind: kind.startsWith("foam") ? "foam" : kind === "none" ? "none" : "other",
    ciClass: ((row["ci_class"] ?? "").split(" ")[0] || "none") as RetarderQuestion["ciClass"],
    sprayFoam_R: spray ? Number(spray[1]) : 0,
    backing: backings[(row["cladding_backing"] ?? row["vented_cladding_backing"] ?? "") as keyof typeof backings],
    ventedCladding: row["vented_cladding"] === "yes" || Boolean(row["vented_cladding_backing"]),
    retarder: retarder as RetarderQuestion["retarder"],
    wetCup_perm: row["wet_cup_perm"] ? Number(row["wet_cup_perm"]) : null,
  };
}

describe("vapour-retarder tables, worked cases (rules SEEN in adopted code texts)", () => {
  for (const file of ["code_check_vectors.csv", "code_check_vectors_class1_2.csv"])
    for (const row of csvRows(file))
      test(`${row["case"]}: ${row["edition"]}, zone ${row["zone"]}, R-${row["ci_R"]} outside ${row["stud"]}, Class ${row["interior_retarder"]} inside: ${row["expected"]}`, () => {
        const answer = retarderVerdict(question(row));
        expect(verdictWords[answer.verdict], answer.reason).toBe(row["expected"]);
      });
});

test("every row of the Class III table is held as printed, Marine 4 and the shared row of 2018 included (SEEN)", () => {
  for (const row of csvRows("class3_minimum_ci.csv")) {
    for (const edition of editions.filter((one) => row["code"]!.includes(one))) {
      const zones =
        row["zone"] === "7 and 8 (one row)" ? ["7", "8"] : row["zone"]!.startsWith("4C") ? ["4C"] : [row["zone"]!];
      for (const zone of zones) {
        const held = class3Row(edition, zoneOf(zone)!)!;
        expect([held.over2x4, held.over2x6], `${edition} zone ${zone}`).toEqual([
          Number(row["min_ci_R_2x4"]),
          Number(row["min_ci_R_2x6"]),
        ]);
        expect(held.ventedOver.includes("woodPanel")).toBe(row["vented_cladding_over_wood_panel"] === "yes");
        expect(held.ventedOver.includes("fibreboard")).toBe(row["vented_over_fibreboard"] === "yes");
        expect(held.ventedOver.includes("gypsum")).toBe(row["vented_over_gypsum"] === "yes");
      }
    }
  }
  expect(class3Row("IRC 2021", zoneOf("4A")!)).toBeNull();
  expect(class3Row("IBC 2021", zoneOf("4A")!)!.over2x6).toBe(3.75);
});

test("the tables for foam outside and for no retarder at all are held as printed (SEEN)", () => {
  for (const row of csvRows("class2_with_foam_minimum_ci.csv")) {
    const held = withFoamRows.find((one) => one.words === row["zone"])!;
    expect([held.over2x4, held.over2x6]).toEqual([Number(row["min_ci_R_2x4"]), Number(row["min_ci_R_2x6"])]);
  }
  for (const row of csvRows("no_retarder_minimum_ci_2024.csv"))
    expect(noRetarderRows[Number(row["zone"])]).toBe(Number(row["min_ci_R"]));
});

test("classes end at 0.1, 1 and 10 perm by dry cup (IRC 2021 Table R702.7(1), SEEN)", () => {
  expect([0.06, 0.1, 0.11, 1, 1.01, 10, 10.1].map(retarderClass)).toEqual(["I", "I", "II", "II", "III", "III", "none"]);
});

test("what each edition permits by class and zone is held as the tables print it (SEEN)", () => {
  const words = {
    allowed: /permitted(?! only)|allowed|meets the requirement|no condition/,
    notPermitted: /^not permitted/,
    byTable: /only under/,
    noRequirement: /no requirement|allowed/,
  };
  const zonesOf: Record<string, string[]> = {
    "1, 2": ["1A", "2B"],
    "3": ["3A"],
    "3, 4 (not Marine)": ["3A", "4A"],
    "4 (not Marine)": ["4B"],
    "1, 2, 3, 4 (not Marine)": ["1A", "2A", "3A", "4A"],
    "Marine 4, 5, 6, 7, 8": ["4C", "5A", "6A", "7", "8"],
  };
  let checked = 0;
  for (const row of csvRows("vapour_retarder_permitted.csv")) {
    const edition =
      editions.find((one) => row["edition"]!.startsWith(one)) ??
      (row["edition"] === "IRC 2015, 2018" ? "IRC 2018" : undefined);
    for (const zone of (edition && zonesOf[row["zone"]!]) ?? [])
      for (const retarder of ["I", "II", "III"] as const) {
        const held = permission(edition!, zoneOf(zone)!, retarder);
        expect(row[`class_${retarder}`], `${edition} zone ${zone} Class ${retarder}: ${held}`).toMatch(words[held]);
        if (held === "allowed") expect(row[`class_${retarder}`]).not.toMatch(/^not permitted|^only under/);
        checked++;
      }
  }
  expect(checked).toBeGreaterThan(80);
});

test("wood-frame wall rows of the energy chapter are held as printed, with 13+5 for the row that IRC 2021 misprints", () => {
  const zones: Record<string, string[]> = {
    "1, 2": ["1A", "2A"],
    "3": ["3A"],
    "4 (not Marine)": ["4A"],
    "5 and Marine 4": ["5A", "4C"],
    "6": ["6A"],
    "7, 8": ["7", "8"],
    "0, 1, 2": ["0", "1A", "2A"],
    "4 to 8": ["4A", "4C", "5A", "6A", "7", "8"],
  };
  for (const row of csvRows("iecc_wood_wall_R.csv"))
    for (const zone of zones[row["zone"]!]!) {
      const held = energyRow(`IRC ${row["edition"]}` as Edition, zoneOf(zone)!)!;
      expect(held.U_IP).toBe(Number(row["assembly_U_IP"]));
      const printed = row["options (cavity + ci, IP R)"]!.split("(IECC)")[0]!.trim();
      expect(held.options.map(wordsOfWallR).join(" | "), `${row["edition"]} zone ${zone}`).toBe(printed);
    }
  expect(energyRow("IRC 2021", zoneOf("3A")!)!.note).toContain("13+10");
});

test("blower-door limits and Canadian effective RSI are held as printed (SEEN; to 2018 second-hand)", () => {
  for (const row of csvRows("blower_door_limits.csv")) {
    const edition: Edition = row["edition"]!.startsWith("2012") ? "IRC 2018" : (`IRC ${row["edition"]}` as Edition);
    const zones =
      row["zone"] === "3 to 8"
        ? ["3A", "5A", "8"]
        : row["zone"]!.split(", ").filter((zone) => edition !== "IRC 2018" || zone !== "0");
    for (const zone of zones) expect(airTightnessLimit(edition, zoneOf(zone)!).ach50).toBe(Number(row["ACH50"]));
  }
  const hdd = [2500, 3500, 4500, 5500, 6500, 7500];
  csvRows("canada_wall_rsi.csv").forEach((row, i) =>
    expect(canadianRow(hdd[i]!).rsi_m2KW).toBe(Number(row["min_effective_RSI_wall_no_HRV_m2K_W"])),
  );
});

test("the refused 20+5 wall in zone 6 meets the energy table and not the Class III table: two answers", () => {
  const energy = energyVerdict({ edition: "IRC 2021", zone: "6A", cavity_R: 20, ci_R: 5, U_Wm2K: null });
  const vapour = retarderVerdict({
    edition: "IRC 2021",
    zone: "6A",
    stud: "2x6",
    cavity_R: 20,
    ci_R: 5,
    ciKind: "foam",
    ciClass: "III",
    sprayFoam_R: 0,
    backing: "woodPanel",
    ventedCladding: true,
    retarder: "III",
    wetCup_perm: 10,
  });
  expect(energy.verdict).toBe("accept");
  expect(vapour.verdict).toBe("reject");
  expect(vapour.reason).toContain("R-11.25");
});

test("a stud that the tables do not know is off-table, not judged", () => {
  const answer = retarderVerdict({
    edition: "IRC 2021",
    zone: "6A",
    stud: "other",
    cavity_R: 30,
    ci_R: 5,
    ciKind: "foam",
    ciClass: "III",
    sprayFoam_R: 0,
    backing: "woodPanel",
    ventedCladding: false,
    retarder: "III",
    wetCup_perm: 10,
  });
  expect(answer.verdict).toBe("offTable");
});

test("a local amendment replaces the value of the book and says so", () => {
  const answer = retarderVerdict({
    edition: "IRC 2021",
    zone: "6A",
    stud: "2x6",
    cavity_R: 20,
    ci_R: 7.5,
    ciKind: "other",
    ciClass: "none",
    sprayFoam_R: 0,
    backing: "woodPanel",
    ventedCladding: false,
    retarder: "III",
    wetCup_perm: 10,
    amendments: { class3: { "6": { over2x4: 5, over2x6: 7.5 } } },
  });
  expect(answer).toMatchObject({ verdict: "accept", amended: true, limit_R: 7.5 });
});
