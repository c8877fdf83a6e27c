import { describe, expect, it } from "vitest";
import { mouldCoefficients, mouldIndex, thirtyDayHumidity } from "../../../solver/assess/index.ts";
import { hourly, numberIn, rowsOf, steady } from "./fixtures.ts";

/** The course that a vector's definition spells out, 8760 hours. */
function course(definition: string): { T: Float64Array; RH: Float64Array } {
  const [Tm, Ta, Tph, Rm, Ra, Rph, dR] = /=\(([^()]+)\)$/.exec(definition)![1]!.split(",").map(Number) as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const turn = (hour: number): number => (2 * Math.PI * hour) / 8760;
  return {
    T: hourly(8760, (hour) => Tm + Ta * Math.cos(turn(hour) - Tph)),
    RH: hourly(
      8760,
      (hour) => Math.min(100, Rm + Ra * Math.cos(turn(hour) - Rph) + dR * Math.sin((2 * Math.PI * hour) / 24)) / 100,
    ),
  };
}

describe("the 30-day surface rule", () => {
  it("fails the listed hours from the listed hour on, and the mould index disagrees", () => {
    for (const row of rowsOf("thirty_day_criterion_vectors.csv")) {
      const { T, RH } = course(row["definition, h=0..8759"]!);
      const rule = thirtyDayHumidity(T, RH)!;
      const failing = row["hours_failing_30day_80pct (trailing 720 h means, 5<=Tmean<=40)"]!;
      expect(rule.hoursFailing).toBe(Number(failing));
      const first = row["first_failing_hour_index"]!;
      if (first === "") expect(rule.firstFailing).toBeNull();
      else expect(rule.firstFailing).toBe(Number(first));
      expect(rule.worst! * 100).toBeCloseTo(numberIn(row, "max_30day_RH_while_5<=T<=40"), 4);
      for (const [kind, column] of [
        ["sensitive", "max_mould_index_sensitive_c0.1"],
        ["verySensitive", "max_mould_index_very_sensitive_c0.1"],
      ] as const) {
        const index = mouldIndex(T, RH, mouldCoefficients[kind], 0.1);
        expect(index.max).toBeCloseTo(numberIn(row, column), 4);
        expect(index.max).toBeLessThan(0.5);
      }
    }
  });

  it("fails at the limit itself, and not just under it", () => {
    expect(thirtyDayHumidity(steady(20, 720), steady(0.8, 720), 0.8)!.hoursFailing).toBe(1);
    expect(thirtyDayHumidity(steady(20, 720), steady(0.7999, 720), 0.8)!.hoursFailing).toBe(0);
  });

  it("says nothing of a course too short, too cold or too hot", () => {
    expect(thirtyDayHumidity(steady(20, 719), steady(1, 719))).toBeNull();
    expect(thirtyDayHumidity(steady(4.9, 900), steady(1, 900))!.worst).toBeNull();
    expect(thirtyDayHumidity(steady(40.1, 900), steady(1, 900))!.worst).toBeNull();
    expect(thirtyDayHumidity(steady(-3, 900), steady(0.9, 900), 0.8, null)!.worst).toBeCloseTo(0.9, 9);
  });
});
