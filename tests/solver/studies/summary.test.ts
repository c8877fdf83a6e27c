import { describe, expect, it } from "vitest";
import { shareInward, summarise, sumOver, waterBudget, type MemberSummary } from "../../../solver/studies/index.ts";
import {
  dateOfDay,
  dayOfDate,
  monthAndDay,
  monthOfDay,
  monthlyMeans,
  worstRunningMean,
} from "../../../solver/studies/calendar.ts";
import { flatResult } from "./fake-result.ts";
import { frameWall } from "./fake-run.ts";

const wall = frameWall(0.05);

describe("summary of a run", () => {
  it("reads the plane's coldest month and the wood's wettest hour", () => {
    // 1 October is day 273; December holds hours 24 x 61 to 24 x 92 of the run.
    const december = (hour: number): boolean => hour >= 61 * 24 && hour < 92 * 24;
    const summary = summarise(
      wall,
      flatResult(wall, {
        face_C: (hour) => (december(hour) ? -7 : 5),
        moisture_percent: (hour) => (hour === 3000 ? 21 : 12),
      }),
      [],
    );
    expect(summary.coldestMonth).toEqual({ month: 11, temperature_C: -7 });
    expect(summary.peakMoisture_percent).toBeCloseTo(21, 4);
    expect(summary.leastMoisture_percent).toBeCloseTo(12, 4);
    expect(summary.plane.layer).toBe("strand");
    expect(summary.heatFromRoom_MJm2).toBe(96);
  });

  it("counts days to a moisture content, the first time and for good", () => {
    const wetAgain = (hour: number): number => (hour < 240 ? 25 : hour < 480 ? 18 : hour < 720 ? 21 : 15);
    const times = summarise(wall, flatResult(wall, { moisture_percent: wetAgain }), []).dryingTimes;
    const twenty = times.find((time) => time.threshold_percent === 20)!;
    expect(twenty.first_days).toBeCloseTo(241 / 24, 9);
    expect(twenty.lasting_days).toBeCloseTo(721 / 24, 9);
    expect(times.find((time) => time.threshold_percent === 16)!.first_days).toBeCloseTo(721 / 24, 9);
  });

  it("says null where a moisture content is not reached", () => {
    const times = summarise(wall, flatResult(wall, { moisture_percent: () => 24 }), []).dryingTimes;
    expect(times.every((time) => time.first_days === null && time.lasting_days === null)).toBe(true);
  });
});

describe("water budget", () => {
  it("closes: sources less what leaves by both faces is what is stored", () => {
    const budget = waterBudget(wall, flatResult(wall), 4 - 1, 4 - 1 + 1)!;
    const strand = wall.layers.findIndex((layer) => layer.id === "strand");
    const own = waterBudget(wall, flatResult(wall), strand, strand)!;
    expect(own.closure).toBeLessThan(1e-12);
    expect(sumOver(own, own.inward)).toBeCloseTo(0.24, 9);
    expect(sumOver(own, own.outward)).toBeCloseTo(0.12, 9);
    expect(own.byCause["air leak"]![0]).toBe(0.03);
    expect(shareInward(own)).toBeCloseTo(2 / 3, 9);
    expect(budget.months[0]).toBe(9);
  });

  it("shows an open book as such", () => {
    const result = flatResult(wall);
    const open = { ...result, monthly: { ...result.monthly!, sources: [] } };
    expect(summarise(wall, open, []).sheathingBudget!.closure).toBeGreaterThan(0.5);
  });

  it("has no budget where the run kept no months", () => {
    const summary: MemberSummary = summarise(wall, { ...flatResult(wall), monthly: null }, []);
    expect(summary.sheathingBudget).toBeNull();
    expect(summary.heatFromRoom_MJm2).toBeNull();
  });
});

describe("calendar of a run", () => {
  it("knows days, months and dates of a year of 365 days", () => {
    expect(dayOfDate("10-01")).toBe(273);
    expect(dateOfDay(273)).toBe("1 October");
    expect(monthAndDay(365 + 58)).toBe("02-28");
    expect(monthOfDay(365)).toBe(0);
    expect(() => dayOfDate("02-30")).toThrow(/monthAndDay must be like/);
  });

  it("means by month cover a year that starts in October", () => {
    const means = monthlyMeans(
      Float32Array.from({ length: 8760 }, (_, hour) => (hour < 31 * 24 ? 1 : 0)),
      0,
      8760,
      273,
    );
    expect(means[9]).toBe(1);
    expect(means[10]).toBe(0);
  });

  it("finds the worst running mean within the stretch it is given", () => {
    const spike = Float32Array.from({ length: 2000 }, (_, hour) => (hour >= 1000 && hour < 1720 ? 1 : 0));
    expect(worstRunningMean(spike, 0, 2000, 720)).toEqual({ mean: 1, endsAt: 1719 });
    expect(worstRunningMean(spike, 0, 1000, 720).mean).toBe(0);
  });
});
