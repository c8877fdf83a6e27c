import { expect, it } from "vitest";
import { standardDewPoint_C, standardSaturationPressure_Pa } from "../../../../solver/physics/steady/index.ts";
import { numberIn, rowsOf } from "./fixtures.ts";

it("gives the saturation pressures of the standard's form to the printed digits", () => {
  for (const row of rowsOf("psat_points.csv")) {
    expect(standardSaturationPressure_Pa(numberIn(row, "theta_C"))).toBeCloseTo(numberIn(row, "psat_Pa"), 3);
  }
});

it("gives the dew points of room and outdoor air on both sides of freezing", () => {
  for (const row of rowsOf("dewpoint_points.csv")) {
    const pressure_Pa = (numberIn(row, "rh_pct") / 100) * standardSaturationPressure_Pa(numberIn(row, "theta_air_C"));
    expect(pressure_Pa).toBeCloseTo(numberIn(row, "p_v_Pa"), 3);
    expect(standardDewPoint_C(pressure_Pa)).toBeCloseTo(numberIn(row, "dewpoint_C"), 4);
  }
});

it("inverts itself from deep frost to a hot roof", () => {
  for (let t = -60; t <= 80; t += 0.5) expect(standardDewPoint_C(standardSaturationPressure_Pa(t))).toBeCloseTo(t, 9);
});

it("refuses air without any vapour", () => {
  expect(() => standardDewPoint_C(0)).toThrow(/must be > 0, got 0/);
});
