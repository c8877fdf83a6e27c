import { describe, expect, it } from "vitest";
import { mouldCoefficients, mouldIndex } from "../../../solver/assess/index.ts";
import type { MouldClass } from "../../../solver/assess/index.ts";
import {
  criticalHumidity_percent,
  weeksToFirstGrowth,
  weeksToVisibleGrowth,
} from "../../../solver/assess/mould-index.ts";
import { hourly, numberIn, rowsOf, steady } from "./fixtures.ts";

const classOf: Readonly<Record<string, MouldClass>> = {
  very_sensitive: "verySensitive",
  sensitive: "sensitive",
  medium_resistant: "mediumResistant",
  resistant: "resistant",
};
const year = 365 * 24;

describe("the mould index", () => {
  it("carries the published coefficients of the four classes", () => {
    for (const row of rowsOf("mould_coefficients.csv")) {
      const own = mouldCoefficients[classOf[row["class"]!]!];
      expect([own.k1Below1, own.k1From1, own.a, own.b, own.c, own.leastHumidity_percent, own.w]).toEqual(
        ["k1_M<1", "k1_M>=1", "A", "B", "C", "RHmin_pct", "W"].map((column) => numberIn(row, column)),
      );
    }
  });

  it("finds the humidity at which growth begins at each temperature", () => {
    for (const row of rowsOf("mould_rhcrit_points.csv")) {
      const t = numberIn(row, "T_C");
      // The file prints four digits; one point lies on the tie between two of them.
      expect(Math.abs(criticalHumidity_percent(t, 80) - numberIn(row, "RHcrit_RHmin80"))).toBeLessThan(5.1e-5);
      expect(Math.abs(criticalHumidity_percent(t, 85) - numberIn(row, "RHcrit_RHmin85"))).toBeLessThan(5.1e-5);
    }
    expect(criticalHumidity_percent(0, 80)).toBe(100);
  });

  it("needs the listed weeks to first and to visible growth", () => {
    for (const row of rowsOf("mould_response_times.csv")) {
      const at = [numberIn(row, "T_C"), numberIn(row, "RH_pct")] as const;
      expect(weeksToFirstGrowth(...at)).toBeCloseTo(numberIn(row, "weeks_to_M1_pine_sawn"), 4);
      expect(weeksToVisibleGrowth(...at)).toBeCloseTo(numberIn(row, "weeks_to_visual_pine"), 4);
      expect(weeksToFirstGrowth(...at, 1)).toBeCloseTo(numberIn(row, "weeks_to_M1_W1"), 4);
      expect(weeksToFirstGrowth(...at, 0, 1)).toBeCloseTo(numberIn(row, "weeks_to_M1_pine_SQ1"), 4);
    }
  });

  it("grows under constant air as listed for every class", () => {
    for (const row of rowsOf("mould_constant_conditions.csv")) {
      const course = mouldIndex(
        steady(numberIn(row, "T_C"), year),
        steady(numberIn(row, "RH_pct") / 100, year),
        mouldCoefficients[classOf[row["class"]!]!],
      );
      for (const days of [28, 91, 182, 365]) {
        expect(course.index[days * 24 - 1]).toBeCloseTo(numberIn(row, `M_${days}d`), 4);
      }
      for (const [level, hours] of [
        ["1", course.hoursTo1],
        ["3", course.hoursTo3],
      ] as const) {
        const listed = row[`days_to_M${level}`]!;
        if (listed === "") expect(hours).toBeNull();
        else expect(hours! / 24).toBeCloseTo(Number(listed), 3);
      }
      expect(course.max).toBeLessThanOrEqual(numberIn(row, "Mmax") + 1e-4);
    }
  });

  it("declines through dry spells of half a day, a day and a season as listed", () => {
    for (const row of rowsOf("mould_cycles.csv")) {
      const [, wet, wetUnit, , dry, dryUnit, dryRH] = /^(\d+) (h|d) 20C\/(97) % then (\d+) (h|d) 20C\/(\d+) %$/.exec(
        row["schedule"]!,
      )!;
      const hoursOf = (count: string, unit: string): number => Number(count) * (unit === "d" ? 24 : 1);
      const wetHours = hoursOf(wet!, wetUnit!);
      const cycle = wetHours + hoursOf(dry!, dryUnit!);
      const hours = numberIn(row, "hours");
      const course = mouldIndex(
        steady(20, hours),
        hourly(hours, (hour) => (hour % cycle < wetHours ? 0.97 : Number(dryRH) / 100)),
        mouldCoefficients[classOf[row["class"]!]!],
        numberIn(row, "decline_coefficient"),
      );
      expect(course.max).toBeCloseTo(numberIn(row, "M_max"), 4);
      expect(course.end).toBeCloseTo(numberIn(row, "M_end"), 4);
    }
  });

  it("stays a number a hair above freezing, where the critical humidity rounds to 100 %", () => {
    expect(mouldIndex(steady(1e-300, 100), steady(1, 100), mouldCoefficients.verySensitive).max).toBe(0);
  });

  it("grows nothing in frost, in heat, or at or below zero index", () => {
    for (const t of [-5, 0, 51]) {
      expect(mouldIndex(steady(t, 2000), steady(1, 2000), mouldCoefficients.verySensitive).max).toBe(0);
    }
    expect(mouldIndex(steady(20, 2000), steady(0.5, 2000), mouldCoefficients.verySensitive).end).toBe(0);
  });
});
