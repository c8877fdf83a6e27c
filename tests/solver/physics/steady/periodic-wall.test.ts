import { describe, expect, it } from "vitest";
import { periodicWall } from "../../../../solver/physics/steady/index.ts";
import type { PeriodicLayer } from "../../../../solver/physics/steady/index.ts";
import { numberIn, rowsOf } from "./fixtures.ts";

const slab = (mm: number, conductivity: number, density: number, heatCapacity: number): PeriodicLayer => ({
  thickness_m: mm / 1000,
  conductivity_WmK: conductivity,
  density_kgm3: density,
  heatCapacity_JkgK: heatCapacity,
});
const concrete = slab(200, 1.8, 2400, 1000);
const frame = [slab(11, 0.13, 650, 1600), slab(140, 0.036, 30, 850), slab(12.5, 0.25, 900, 1000)];

/** Outside first. */
const walls: Readonly<Record<string, readonly PeriodicLayer[]>> = {
  "13786-S1": [concrete],
  "13786-S2": [slab(5, 1.0, 1200, 1500), slab(100, 0.04, 30, 1400), concrete],
  "13786-S3": [slab(11, 0.13, 650, 1700), slab(140, 0.04, 15, 840), slab(12.7, 0.16, 800, 1090)],
  concrete200: [concrete],
  frame_int_to_ext: frame,
};

describe("the periodic wall of ISO 13786", () => {
  it("gives transmittance, decrement, lag, admittances and capacities to the printed digits", () => {
    for (const row of rowsOf("iso13786_examples.csv")) {
      const wall = periodicWall(walls[row["case"]!]!);
      expect(wall.uValue_Wm2K).toBeCloseTo(numberIn(row, "U"), 5);
      expect(wall.transmittance_Wm2K).toBeCloseTo(numberIn(row, "Y12_W_m2K"), 6);
      expect(wall.decrementFactor).toBeCloseTo(numberIn(row, "decrement_f"), 5);
      expect(wall.lag_h).toBeCloseTo(numberIn(row, "lag_h"), 4);
      expect(wall.insideAdmittance_Wm2K.amplitude).toBeCloseTo(numberIn(row, "Y11"), 4);
      expect(wall.insideAdmittance_Wm2K.lead_h).toBeCloseTo(numberIn(row, "Y11_lead_h"), 4);
      expect(wall.outsideAdmittance_Wm2K.amplitude).toBeCloseTo(numberIn(row, "Y22"), 4);
      expect(wall.outsideAdmittance_Wm2K.lead_h).toBeCloseTo(numberIn(row, "Y22_lead_h"), 4);
      expect(wall.insideCapacity_kJm2K).toBeCloseTo(numberIn(row, "kappa1_kJ_m2K"), 3);
      expect(wall.outsideCapacity_kJm2K).toBeCloseTo(numberIn(row, "kappa2_kJ_m2K"), 3);
    }
  });

  it("answers a day and a year of swing alike", () => {
    for (const row of rowsOf("a4_periodic.csv")) {
      const wall = periodicWall(walls[row["wall"]!]!, row["period"] === "1y" ? 8760 : 24);
      expect(wall.transmittance_Wm2K).toBeCloseTo(numberIn(row, "Yie_W_m2K"), 6);
      expect(wall.lag_h).toBeCloseTo(-numberIn(row, "time_shift_f_h"), 4);
      expect(wall.insideAdmittance_Wm2K.lead_h).toBeCloseTo(numberIn(row, "time_shift_ii_h"), 4);
      expect(wall.outsideCapacity_kJm2K).toBeCloseTo(numberIn(row, "kappa_e_kJ_m2K"), 4);
    }
  });

  it("does not care how a slab is cut", () => {
    const whole = periodicWall([concrete]);
    const cut = periodicWall(Array.from({ length: 10 }, () => slab(20, 1.8, 2400, 1000)));
    expect(cut.transmittance_Wm2K).toBeCloseTo(whole.transmittance_Wm2K, 10);
    expect(cut.lag_h).toBeCloseTo(whole.lag_h, 8);
  });

  it("tends to U without any lag when the wall stores nothing", () => {
    const wall = periodicWall([{ resistance_m2KW: 3 }]);
    expect(wall.decrementFactor).toBeCloseTo(1, 12);
    expect(wall.lag_h).toBeCloseTo(0, 9);
  });

  it("refuses a swing without length", () => {
    expect(() => periodicWall([concrete], 0)).toThrow(/must be > 0, got 0/);
  });
});
