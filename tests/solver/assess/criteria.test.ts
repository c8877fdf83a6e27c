import { describe, expect, it } from "vitest";
import {
  dewPointMargin,
  drift,
  dryingSplit,
  freezeThaw,
  frostDays,
  largestUptake,
  potentialCondensate,
  wetHoursForMetal,
} from "../../../solver/assess/index.ts";
import { hourlyMeans } from "../../../solver/assess/hourly-air.ts";
import type { LoadSeries } from "../../../climate/index.ts";
import { hourly, steady } from "./fixtures.ts";

describe("freeze and thaw", () => {
  // Counting with a band of 1 K round 0 degC is common practice, no source.
  const swing = hourly(240, (hour) => -3 * Math.sin((2 * Math.PI * hour) / 24));

  it("counts a cycle a day and none of a noise round zero", () => {
    expect(freezeThaw(swing, steady(0.9, 240), 0.8).wetCycles).toBe(10);
    const noise = hourly(240, (hour) => 0.9 * Math.sin(hour));
    expect(freezeThaw(noise, steady(0.9, 240), 0.8).cycles).toBe(0);
  });

  it("tells wet cycles from dry ones", () => {
    const saturation = hourly(240, (hour) => (hour < 120 ? 0.85 : 0.4));
    const count = freezeThaw(swing, saturation, 0.8);
    expect(count.cycles).toBe(10);
    expect(count.wetCycles).toBe(5);
    expect(count.wettestFreeze).toBeCloseTo(0.85, 12);
  });

  it("does not count wetness that comes after the thaw", () => {
    const saturation = hourly(240, (hour) => (swing[hour]! > 0 ? 0.95 : 0.3));
    expect(freezeThaw(swing, saturation, 0.8).wetCycles).toBe(0);
  });
});

describe("frost days and metal", () => {
  it("counts each day with a freezing hour once", () => {
    expect(frostDays(hourly(240, (hour) => (hour % 48 < 3 ? -1 : 2)))).toEqual({ days: 5, coldestHour: 0 });
  });

  it("counts metal as wet from 80 % above freezing", () => {
    // ISO 9223, time of wetness (MEMORY).
    expect(wetHoursForMetal([-1, 0.1, 5, 5], [1, 0.8, 0.79, 0.95])).toBe(2);
  });
});

describe("water taken up and gathered", () => {
  it("measures the rise from a low to a later high, not from a high to an earlier low", () => {
    expect(largestUptake([3, 1, 2, 0.5, 2.25, 1])).toEqual({ gain_kgm2: 1.75, from: 3, to: 4 });
    expect(largestUptake([3, 2, 1]).gain_kgm2).toBe(0);
    // The high is to lie in the judged part; the low may lie before it.
    expect(largestUptake([0, 5, 1, 3, 2], 2)).toEqual({ gain_kgm2: 3, from: 0, to: 3 });
  });

  it("counts rises in saturated hours only and lets every fall take away", () => {
    const course = potentialCondensate([1, 1.5, 2, 1.7, 1.9, 1.2, 1.3], [1, 0.9, 1, 0.9, 0.9, 0.9, 1]);
    expect(course.most_kgm2).toBeCloseTo(0.5, 12);
    expect(course.hourOfMost).toBe(2);
    expect(course.left_kgm2).toBeCloseTo(0.1, 12);
    expect(course.hoursSaturated).toBe(3);
  });
});

describe("the dew-point margin", () => {
  it("finds the coldest month and the worst day", () => {
    const monthOf = (hour: number): number => Math.floor(hour / 730) % 12;
    const plane = hourly(8760, (hour) => (monthOf(hour) === 2 ? 4 : 10) - (hour >= 3600 && hour < 3624 ? 12 : 0));
    const margin = dewPointMargin(plane, steady(3, 8760), monthOf);
    expect(margin.coldestMonth).toBe(2);
    expect(margin.coldestMonthMargin_K).toBeCloseTo(1, 9);
    expect(margin.worstDay).toBe(3600);
    expect(margin.worstDayMargin_K).toBeCloseTo(-5, 9);
    expect(margin.hoursBelow).toBe(24);
  });
});

describe("year on year", () => {
  it("tells a wall that ratchets from one that settles and one that still dries", () => {
    expect(drift([5, 5.4, 5.8, 6.2])!.ratchets).toBe(true);
    expect(drift([5, 5.4, 5.41, 5.41])!.ratchets).toBe(false);
    expect(drift([5, 4, 3.5])!.lastYear_kgm2).toBeCloseTo(-0.5, 12);
  });

  it("does not judge the first year, which carries its start", () => {
    expect(drift([5, 7])).toBeNull();
  });
});

describe("which way a layer dries", () => {
  const months = (value: (month: number) => number): number[] => Array.from({ length: 12 }, (_, month) => value(month));

  it("splits what leaves by face and season", () => {
    // From October: water comes from the room in winter (negative at the inner face) and leaves from April to August.
    const flows = {
      interfaces: [
        { probe: "osb-outside", vapour: months((m) => (m >= 6 && m <= 10 ? -0.02 : -0.005)), liquid: months(() => 0) },
        { probe: "osb-inside", vapour: months((m) => (m >= 6 && m <= 10 ? 0.08 : -0.03)), liquid: months(() => 0) },
      ],
      sources: [
        { layer: "osb", cause: "air leak", gain: months((m) => (m < 5 ? 0.07 : -0.01)) },
        { layer: "batt", cause: "air leak", gain: months(() => 1) },
      ],
      stored: [],
      heatFromRoom_MJm2: months(() => 0),
    };
    const split = dryingSplit(flows, ["osb"], 9)!;
    expect(split.dryingMonths.toInside_kgm2).toBeCloseTo(0.4, 12);
    expect(split.dryingMonths.toOutside_kgm2).toBeCloseTo(0.1, 12);
    expect(split.dryingMonths.insideShare).toBeCloseTo(0.8, 12);
    expect(split.year.toOutside_kgm2).toBeCloseTo(0.135, 12);
    const june = split.quarters.find((one) => one.firstMonth === 5)!;
    expect(june.leaving.toInside_kgm2).toBeCloseTo(0.24, 12);
    const december = split.quarters.find((one) => one.firstMonth === 11)!;
    expect(december.leaving.toInside_kgm2).toBe(0);
    expect(split.arriving.fromInside_kgm2).toBeCloseTo(7 * 0.03, 12);
    expect(split.arriving.fromOutside_kgm2).toBe(0);
    expect(split.arriving.byCause_kgm2["air leak"]).toBeCloseTo(0.35, 12);
    expect(dryingSplit(flows, ["brick"], 9)).toBeNull();
  });
});

describe("hourly means of a load", () => {
  it("keeps the integral of line and bulge, across hours, parts of hours and rounds", () => {
    const series: LoadSeries = {
      start: Float64Array.of(0, 10),
      end: Float64Array.of(10, 4),
      bulge: Float64Array.of(0, 3),
    };
    // Two intervals of two hours: the halves of a line, then 10 - 6 tau + 18 tau (1 - tau).
    const loads = { time_s: Float64Array.of(0, 7200, 14400), repeats: true };
    const means = hourlyMeans(loads, series, 0, 8);
    expect(means[0]).toBeCloseTo(2.5, 10);
    expect(means[1]).toBeCloseTo(7.5, 10);
    expect(means[2]! + means[3]!).toBeCloseTo(20, 9);
    expect(means[2]).toBeCloseTo(2 * (5 - 0.75 + 18 * (1 / 8 - 1 / 24)), 9);
    expect(Array.from(means.slice(4))).toEqual(
      Array.from(means.slice(0, 4), (one) => expect.closeTo(one, 9) as number),
    );
  });
});
