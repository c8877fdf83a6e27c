import { describe, expect, it } from "vitest";
import { woodEquilibrium_percent, woodMoisture } from "../../../solver/assess/index.ts";
import { hourly, numberIn, rowsOf, steady } from "./fixtures.ts";

describe("wood moisture", () => {
  it("is in equilibrium with air as the Wood Handbook's formula says", () => {
    // The points come from the Fahrenheit form; the Celsius form used here stays within 0.013 % moisture of it (COMPUTED).
    for (const row of rowsOf("wood_emc_points.csv")) {
      const emc = woodEquilibrium_percent(numberIn(row, "T_C"), numberIn(row, "RH_pct") / 100);
      expect(Math.abs(emc - numberIn(row, "EMC_pct"))).toBeLessThan(0.013 + 0.005);
    }
    expect(woodEquilibrium_percent(21.1, 0.8)).toBeCloseTo(15.99, 2);
  });

  it("counts the hours above each line of the trade and finds the way back", () => {
    // A tent: 10 % rising to 30 % at hour 1000 and back, 0.02 % an hour.
    const course = hourly(2001, (hour) => 30 - Math.abs(hour - 1000) * 0.02);
    const moisture = woodMoisture(course, steady(2, 2001));
    expect(moisture.peak_percent).toBeCloseTo(30, 12);
    expect(moisture.hourOfPeak).toBe(1000);
    expect(moisture.hoursAbove28).toBe(199);
    expect(moisture.hoursAbove20).toBe(999);
    expect(Math.abs(moisture.hoursAbove16 - 1399)).toBeLessThanOrEqual(2);
    expect(Math.abs(moisture.backUnder16! - 1700)).toBeLessThanOrEqual(1);
    expect(moisture.warmHoursAbove20).toBe(0);
    expect(woodMoisture(course, steady(12, 2001)).warmHoursAbove20).toBe(999);
  });

  it("does not clip a peak above fibre saturation", () => {
    expect(woodMoisture([12, 47, 18], [0, 0, 0]).peak_percent).toBe(47);
  });
});
