import { describe, expect, it } from "vitest";
import { monthlyCondensation } from "../../../../solver/physics/steady/index.ts";
import { climate, numberIn, rowsOf, walls } from "./fixtures.ts";

const cases = [
  ["S1", "TEST-COLD", "glaser_S1_no_retarder_cold.csv"],
  ["S2", "TEST-COLD", "glaser_S2_kraft_cold.csv"],
  ["S3", "TEST-COLD", "glaser_S3_xps50_cold.csv"],
  ["S4", "TEST-COLD", "glaser_S4_xps25_cold.csv"],
  ["S5", "TEST-MARINE", "glaser_S5_no_retarder_marine.csv"],
] as const;

describe("the monthly condensation method of ISO 13788", () => {
  it.each(cases)("gives every temperature, pressure, flow and stock of wall %s in %s", (wall, place, file) => {
    const rows = rowsOf(file);
    const result = monthlyCondensation(walls[wall]!, climate(place), undefined, 3);
    expect(result.months.length).toBe(rows.length);
    const planes = walls[wall]!.length;
    rows.forEach((row, index) => {
      const month = result.months[index]!;
      expect(month.month).toBe(row["month"]);
      // The files count planes from the room; the digits are what they print.
      for (let plane = 0; plane <= planes; plane += 1) {
        const here = planes - plane;
        expect(month.temperature_C[here]).toBeCloseTo(numberIn(row, `theta${plane}_C`), 3);
        expect(Math.abs(month.saturation_Pa[here]! - numberIn(row, `psat${plane}_Pa`))).toBeLessThan(6e-4);
        expect(Math.abs(month.vapourPressure_Pa[here]! - numberIn(row, `p${plane}_Pa`))).toBeLessThan(6e-4);
        if (plane === 0 || plane === planes) continue;
        expect(Math.abs(month.flow_kgm2[here]! * 1000 - numberIn(row, `g${plane}_g_m2`))).toBeLessThan(6e-5);
        expect(Math.abs(month.stock_kgm2[here]! * 1000 - numberIn(row, `Ma${plane}_g_m2`))).toBeLessThan(6e-5);
      }
    });
  });

  it("begins with the first month that condenses after a dry one and peaks as listed", () => {
    for (const row of rowsOf("glaser_summary.csv")) {
      const wall = row["case"]!.slice(0, 2);
      const result = monthlyCondensation(walls[wall]!, climate(row["climate"]!));
      expect(result.firstMonth).toBe(row["first_condensation_month"]);
      const peaks = row["peak_Ma_year1_g_m2_per_interface"]!.split(";").map(Number);
      const found = [...result.peakStock_kgm2].slice(1, -1).reverse();
      peaks.forEach((peak, index) => expect(Math.abs(found[index]! * 1000 - peak)).toBeLessThan(6e-4));
      expect(result.driesEachYear).toBe(true);
    }
  });

  it("gives the same stock when a layer is cut into ten", () => {
    const whole = walls["S4"]!;
    const cut = whole.flatMap((layer) =>
      Array.from({ length: 10 }, (_, part) => ({
        id: `${layer.id}-${part}`,
        resistance_m2KW: layer.resistance_m2KW / 10,
        sd_m: layer.sd_m / 10,
      })),
    );
    const coarse = monthlyCondensation(whole, climate("TEST-COLD"));
    const fine = monthlyCondensation(cut, climate("TEST-COLD"));
    expect(fine.peakTotal_kgm2).toBeCloseTo(coarse.peakTotal_kgm2, 9);
    expect(fine.peakStock_kgm2[20]).toBeCloseTo(coarse.peakStock_kgm2[2]!, 9);
    expect(fine.firstMonth).toBe(coarse.firstMonth);
  });

  it("keeps the water of the month: what gathers is what flows in less what flows out", () => {
    const result = monthlyCondensation(walls["S1"]!, climate("TEST-COLD"));
    const january = result.months.find((month) => month.month === "Jan")!;
    // Hand sum: (792.12 - 349.357)/0.8696 m in, (349.357 - 252.123)/2.25 m out, 2e-10 kg/(m s Pa), 31 days.
    const net = 2e-10 * ((792.123 - 349.357) / 0.8696 - (349.357 - 252.123) / 2.25) * 31 * 86400;
    expect(january.flow_kgm2[2]).toBeCloseTo(net, 5);
  });

  it("says that a wall keeps water when the year does not empty it", () => {
    const sealed = [{ id: "foil", resistance_m2KW: 0, sd_m: 1500 }, ...walls["S1"]!];
    const cold = climate("TEST-COLD").map((month) => ({
      ...month,
      outside_C: month.outside_C - 15,
      outsideVapourPressure_Pa: month.outsideVapourPressure_Pa * 0.25,
    }));
    const result = monthlyCondensation(sealed, cold, undefined, 1, 4);
    expect(result.driesEachYear).toBe(false);
    expect(result.months.length).toBe(48);
    const january = result.months
      .filter((month) => month.month === "Jan")
      .map((month) => month.stock_kgm2.reduce((sum, water) => sum + water, 0));
    expect(january[1]).toBeGreaterThan(january[0]!);
  });

  it("refuses a year that is not twelve months long", () => {
    expect(() => monthlyCondensation(walls["S1"]!, climate("TEST-COLD").slice(0, 11))).toThrow(/12 months, got 11/);
  });
});
