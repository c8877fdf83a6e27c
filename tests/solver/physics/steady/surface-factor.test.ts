import { expect, it } from "vitest";
import { surfaceFactor, surfaceFactorNeeded } from "../../../../solver/physics/steady/index.ts";
import { climate, numberIn, rowsOf } from "./fixtures.ts";

it("asks each month for the listed surface temperature and factor, December most of all", () => {
  const months = climate("TEST-COLD");
  const needed = rowsOf("frsi_test_cold_540.csv").map((row, index) => {
    const month = months[index]!;
    const need = surfaceFactorNeeded(month.outside_C, month.inside_C, month.insideVapourPressure_Pa);
    expect(need.leastSurface_C).toBeCloseTo(numberIn(row, "theta_si_min_C"), 3);
    if (row["fRsi_min"]!.startsWith("n/a")) expect(need.factor).toBeNull();
    else expect(need.factor).toBeCloseTo(numberIn(row, "fRsi_min"), 4);
    return need.factor ?? -Infinity;
  });
  expect(Math.max(...needed)).toBeCloseTo(0.5223, 4);
  expect(months[needed.indexOf(Math.max(...needed))]!.month).toBe("Dec");
});

it("is one less the share of the inner film", () => {
  expect(surfaceFactor(3.5)).toBeCloseTo(1 - 0.25 / (3.5 + 0.04 + 0.25), 12);
  expect(surfaceFactor(0, { outside_m2KW: 0.04, inside_m2KW: 0.13 })).toBeCloseTo(0.04 / 0.17, 12);
});
