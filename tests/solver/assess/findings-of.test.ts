import { describe, expect, it } from "vitest";
import { saturationPressure_Pa } from "../../../climate/index.ts";
import type { HourlyLoads, LoadSeries } from "../../../climate/index.ts";
import { findingsOf } from "../../../solver/assess/index.ts";
import type { Finding } from "../../../solver/assess/index.ts";
import { caseOf, frameLayers, layer, resultOf, swinging, winter } from "./synthetic.ts";

const wall = caseOf(frameLayers());
const dry = resultOf(wall, swinging(7, 14, 6, 0.72));
const wet = resultOf(wall, swinging(12, 26, -2, 0.99));
const find = (findings: readonly Finding[], id: string): Finding => {
  const found = findings.find((one) => one.id === id);
  if (!found) throw new Error(`no finding ${id} among ${findings.map((one) => one.id).join(", ")}`);
  return found;
};

/** Loads that stay: a room of 21 degC, 35 % against a winter of its own. */
function loads(outside_C: number): HourlyLoads {
  const flat = (value: number): LoadSeries => ({
    start: Float64Array.of(value),
    end: Float64Array.of(value),
    bulge: Float64Array.of(0),
  });
  const face = (temperature_C: number, vapourPressure_Pa: number): HourlyLoads["inside"] => ({
    temperature_K: flat(temperature_C + 273.15),
    vapourPressure_Pa: flat(vapourPressure_Pa),
    heatFilm_Wm2K: flat(8),
    vapourFilm_kgm2sPa: flat(1e-8),
    absorbedRadiation_Wm2: flat(0),
    longwave: null,
    rain_kgm2s: flat(0),
    airPressure_Pa: flat(0),
    heldTemperature: false,
    heldSuction_Pa: null,
  });
  return {
    time_s: Float64Array.of(0, 8760 * 3600),
    repeats: true,
    startDay: 273,
    outside: face(outside_C, 200),
    inside: face(21, 0.35 * saturationPressure_Pa(21)),
    windSpeed_ms: flat(2),
    barometricPressure_Pa: 101325,
  };
}

describe("findings of a run", () => {
  it("gives each criterion a sentence with measured, unit, when and source", () => {
    const findings = findingsOf(wall, wet);
    const ids = findings.map((one) => one.id);
    for (const id of [
      "woodMoisture",
      "woodMoistureInnerFace",
      "decay",
      "mouldIndex",
      "thirtyDayHumidity",
      "dewPointMargin",
      "dewPointWorstDay",
      "condensationHours",
      "uptake",
      "condensate",
      "frostDays",
      "corrosionHours",
      "corrosion",
      "yearOnYear",
      "roomFaceHumidity",
      "surfaceFactor",
    ]) {
      expect(ids).toContain(id);
    }
    expect(new Set(ids).size).toBe(ids.length);
    for (const finding of findings) {
      expect(finding.statement).toMatch(/^[A-Z].*\.$/);
      expect(finding.statement).not.toMatch(/passed|safe|NaN|undefined|null|Infinity/);
      expect(Number.isFinite(finding.measured)).toBe(true);
      expect(finding.source.length).toBeGreaterThan(20);
      expect(finding.when).not.toBe("");
      if (finding.limit !== null && finding.margin !== null && finding.holds !== null) {
        expect(finding.holds).toBe(finding.margin >= 0 && !(finding.unit === "% RH" && finding.margin === 0));
      }
    }
  });

  it("never says moisture to two decimals, in either system", () => {
    for (const units of ["si", "ip"] as const) {
      for (const finding of findingsOf(wall, wet, { units })) expect(finding.statement).not.toMatch(/\d[.,]\d\d/);
    }
  });

  it("measures the peak of the strand board and dates it", () => {
    const moisture = find(findingsOf(wall, wet), "woodMoisture");
    expect(moisture.measured).toBeCloseTo(26, 3);
    expect(moisture.margin).toBeCloseTo(-6, 3);
    expect(moisture.holds).toBe(false);
    // Deepest 30 days after 15 January.
    expect(moisture.when).toBe("14 February");
    expect(moisture.statement).toContain("peaks at 26 % in February");
    expect(moisture.probe).toBe("osb-mean");
  });

  it("judges the last year and not the ones before it", () => {
    const firstYearWet = resultOf(wall, (one, place, hour) =>
      swinging(7, hour < 8760 ? 40 : 14, 6, hour < 8760 ? 1 : 0.72)(one, place, hour),
    );
    const findings = findingsOf(wall, firstYearWet);
    expect(find(findings, "woodMoisture").measured).toBeCloseTo(14, 3);
    expect(find(findings, "thirtyDayHumidity").measured).toBeLessThan(73);
  });

  it("lets two criteria disagree and shows both", () => {
    // Damp for a month, warm enough to count, too short for mould.
    const damp = resultOf(wall, (one, place, hour) => {
      const state = swinging(7, 14, 6, 0.7)(one, place, hour);
      const inYear = hour % 8760;
      return inYear > 4000 && inYear < 4800 ? { ...state, T_C: 8, RH: 0.9 } : state;
    });
    const findings = findingsOf(wall, damp);
    expect(find(findings, "thirtyDayHumidity").holds).toBe(false);
    expect(find(findings, "mouldIndex").holds).toBe(true);
  });

  it("reads the room's dew point at the room face, or from the loads where they are given", () => {
    // 21 degC, 35 %: dew point 4.95 degC; the inner face of the board averages 6 degC at its coldest.
    const byFace = find(findingsOf(wall, dry), "dewPointMargin");
    const byLoads = find(findingsOf(wall, dry, { loads: loads(-5) }), "dewPointMargin");
    expect(byFace.when).toBe("January");
    expect(byFace.measured).toBeCloseTo(byLoads.measured, 2);
    expect(byFace.measured).toBeGreaterThan(1);
    expect(byFace.measured).toBeLessThan(1.2);
    expect(byFace.holds).toBe(true);
    expect(find(findingsOf(wall, wet), "dewPointMargin").holds).toBe(false);
  });

  it("asks for a surface factor only where the weather is known", () => {
    const without = find(findingsOf(wall, dry), "surfaceFactor");
    expect([without.limit, without.holds]).toEqual([null, null]);
    const withLoads = find(findingsOf(wall, dry, { loads: loads(-5) }), "surfaceFactor");
    // ISO 13788: psat >= 870.70/0.8 = 1088.4 Pa; 237.3 x 0.57816/(17.269 - 0.57816) = 8.220 degC at the face, (8.22 + 5)/26 of the step.
    expect(withLoads.limit).toBeCloseTo((8.22 + 5) / 26, 4);
    expect(withLoads.holds).toBe(true);
  });

  it("speaks inch-pound on request and keeps its measured values SI", () => {
    const si = find(findingsOf(wall, wet), "dewPointMargin");
    const ip = find(findingsOf(wall, wet, { units: "ip" }), "dewPointMargin");
    expect(si.statement).toMatch(/\u22122 °C/);
    expect(ip.statement).toMatch(/29 °F/);
    expect(ip.measured).toBe(si.measured);
    expect(find(findingsOf(wall, wet, { units: "ip" }), "uptake").statement).toMatch(/\d+ cups on a 4 by 8 ft sheet/);
  });

  it("counts uptake in kg/m2: 14 points of a 650 kg/m3 board of 11.1 mm", () => {
    expect(find(findingsOf(wall, wet), "uptake").measured).toBeCloseTo(0.14 * 650 * 0.0111, 3);
  });

  it("tells growth that the start moisture left behind apart from the judged year", () => {
    const started = resultOf(wall, (one, place, hour) =>
      one.id === "osb" && hour < 4000 ? { T_C: 20, RH: 0.98, water: 24 } : swinging(7, 13, 8, 0.7)(one, place, hour),
    );
    const findings = findingsOf(wall, started);
    expect(find(findings, "mouldIndex").holds).toBe(true);
    const whole = find(findings, "mouldIndexFromStart");
    expect(whole.measured).toBeGreaterThan(3);
    expect(whole.holds).toBe(false);
    expect(whole.when).toMatch(/year 1$/);
  });

  it("names the weakly known inputs that sway a finding", () => {
    const moisture = find(findingsOf(wall, wet), "woodMoisture");
    expect(moisture.swayedBy.join("; ")).toMatch(/OSB sheathing: vapour permeability \(recalled/);
    expect(moisture.swayedBy.length).toBeLessThanOrEqual(4);
  });

  it("names none for a material of the user's own", () => {
    const own = caseOf(
      frameLayers().map((one) => ({ ...one, material: { ...one.material, passport: {} }, name: `own ${one.name}` })),
    );
    for (const finding of findingsOf(own, resultOf(own, swinging(7, 14, 6, 0.72))))
      expect(finding.swayedBy).toEqual([]);
  });

  it("says which way the board dries", () => {
    const months = (value: (month: number) => number): number[] => Array.from({ length: 12 }, (_, m) => value(m));
    const monthly = {
      interfaces: [
        { probe: "osb-outside", vapour: months((m) => (m >= 6 ? -0.02 : 0.01)), liquid: months(() => 0) },
        { probe: "osb-inside", vapour: months((m) => (m >= 6 ? 0.08 : -0.1)), liquid: months(() => 0) },
      ],
      sources: [{ layer: "osb", cause: "air leak", gain: months((m) => (m < 4 ? 0.3 : 0)) }],
      stored: [],
      heatFromRoom_MJm2: months(() => 0),
    };
    const split = find(findingsOf(wall, { ...wet, monthly }), "dryingSplit");
    expect(split.measured).toBeCloseTo(80, 9);
    expect(split.statement).toMatch(/four fifths of what leaves goes to the room/);
    expect(split.statement).toMatch(/Keep that side open/);
    const wetting = find(findingsOf(wall, { ...wet, monthly }), "wettingSplit");
    expect(wetting.measured).toBeCloseTo((1.2 / (1.2 + 0.6 + 0.06)) * 100, 6);
    expect(wetting.statement).toMatch(
      /takes in 1.2 kg\/m² with leaking air, 600 g\/m² through the layers from the room/,
    );
  });

  it("asks whether the wall ratchets only after two years", () => {
    expect(find(findingsOf(wall, { ...dry, yearEndWater_kgm2: [5, 5.5, 6] }), "yearOnYear").holds).toBe(false);
    expect(find(findingsOf(wall, { ...dry, yearEndWater_kgm2: [5, 6] }), "yearOnYear").holds).toBeNull();
    expect(find(findingsOf(wall, dry), "yearOnYear").holds).toBe(true);
  });

  it("counts freeze-thaw of wet brick and says when the critical saturation is assumed", () => {
    const solid = caseOf([
      layer("brick", "brick_historic", 0.215),
      layer("board", "wood_fibre_board", 0.06),
      layer("plaster", "lime_plaster", 0.015),
    ]);
    const porosity = solid.layers[0]!.material.porosity!;
    const course = (one: { readonly id: string }, place: string, hour: number) =>
      one.id === "brick"
        ? {
            T_C: -4 * winter(hour) - 4 * Math.sin((2 * Math.PI * hour) / 24),
            RH: 1,
            water: (place === "outside" ? 0.9 : 0.4) * porosity * 1000,
          }
        : { T_C: 18, RH: 0.5, water: 5 };
    const frost = find(findingsOf(solid, resultOf(solid, course)), "freezeThaw");
    expect(frost.probe).toBe("brick-outside");
    expect(frost.measured).toBeGreaterThan(50);
    expect(frost.holds).toBe(false);
    expect(frost.source).toMatch(/assumed 0.8/);
    const tested = findingsOf(solid, resultOf(solid, course), { criticalSaturation: { brick: 0.95 } });
    expect(find(tested, "freezeThaw").holds).toBe(true);
  });

  it("speaks of hours, not of dates and rooms, in a laboratory", () => {
    const face = { temperature_C: 20, relativeHumidity: 0.8, heatFilm_Wm2K: 8, vapourFilm_kgm2sPa: 1e-8 };
    const lab = caseOf(frameLayers(), {
      exposure: {
        kind: "lab",
        lab: { outside: face, inside: face, duration_h: 1000, initialTemperature_C: 20 },
        air: null,
      },
    });
    const run = resultOf(lab, swinging(7, 14, 6, 0.72), { judgedFrom: 0, judgedHours: 1000, hours: 1000 });
    const findings = findingsOf(lab, run);
    expect(find(findings, "woodMoisture").when).toMatch(/^hour \d+$/);
    expect(findings.map((one) => one.id)).not.toContain("yearOnYear");
    expect(findings.map((one) => one.id)).not.toContain("dewPointMargin");
  });

  it("follows water to the fill where foam lines the board", () => {
    const lined = caseOf([
      layer("osb", "insul_sheath_osb", 0.0111),
      layer("foam", "insul_sheath_pir", 0.025),
      layer("batt", "glass_fibre_batt", 0.14),
      layer("gypsum", "gypsum_board_127", 0.0127),
    ]);
    const months = (value: number): number[] => Array.from({ length: 12 }, () => value);
    const monthly = {
      interfaces: [
        { probe: "osb-outside", vapour: months(-0.01), liquid: months(0) },
        { probe: "osb-inside", vapour: months(5), liquid: months(0) },
        { probe: "batt-inside", vapour: months(0.03), liquid: months(0) },
      ],
      sources: [],
      stored: [],
      heatFromRoom_MJm2: months(0),
    };
    const findings = findingsOf(lined, resultOf(lined, swinging(7, 14, 6, 0.72), { monthly }));
    expect(find(findings, "dryingSplit").measured).toBeCloseTo(75, 9);
    expect(find(findings, "dewPointMargin").probe).toBe("foam-inside");
  });

  it("vouches for nothing that a run did not reach", () => {
    const failure = {
      hour: 9000,
      date: "11 October",
      layer: "osb",
      cause: "no convergence",
      remedy: "Look at the curve.",
    };
    const broken = { ...wet, status: "failed" as const, failure, judgedFrom: 8760, judgedHours: 6000 };
    const findings = findingsOf(wall, broken);
    expect(findings.filter((one) => one.holds === true)).toEqual([]);
    expect(find(findings, "woodMoisture").holds).toBe(false);
    expect(find(findings, "woodMoisture").when).toMatch(/of 6000 h computed$/);
  });

  it("finds nothing in a run without judged hours", () => {
    expect(findingsOf(wall, { ...dry, judgedHours: 0 })).toEqual([]);
  });
});
