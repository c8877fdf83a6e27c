import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { calendarDay, dayName, longDate, monthSpans, shortDate, timeTicks } from "../../../renderer/plots/calendar.ts";
import { daysAbove, daysAboveCurve, spellsAbove } from "../../../renderer/plots/days-above.ts";
import { leavingShares } from "../../../renderer/plots/leaving-shares.ts";
import {
  dailyMeans,
  difference,
  highest,
  highestRunningMean,
  lowest,
  monthlyMeans,
} from "../../../renderer/plots/series.ts";
import { csvOf } from "../../../renderer/plots/table-twin.ts";

describe("calendar of a 365-day year", () => {
  it("names days by month and date, and runs on past the year's end", () => {
    expect(shortDate(0)).toBe("1 Jan");
    expect(shortDate(59)).toBe("1 Mar");
    expect(longDate(273)).toBe("1 October");
    expect(shortDate(273 + 136)).toBe("14 Feb");
    expect(calendarDay(364)).toEqual({ month: 11, date: 31 });
  });

  it("covers a year from 1 October in twelve months that meet without a gap", () => {
    const spans = monthSpans(273, 365);
    expect(spans.map(({ month }) => month)).toEqual([9, 10, 11, 0, 1, 2, 3, 4, 5, 6, 7, 8]);
    expect(spans[0]!.from).toBe(0);
    expect(spans.at(-1)!.to).toBe(365);
    spans.slice(1).forEach((span, i) => expect(span.from).toBe(spans[i]!.to));
  });

  it("numbers the days of a laboratory run, which has no date", () => {
    expect(dayName({ days: 60, startDay: null }, 4)).toBe("day 5");
    expect(timeTicks({ days: 60, startDay: null }).labels.length).toBeGreaterThan(3);
  });
});

describe("daily and monthly means", () => {
  it("takes each day's own 24 hours and leaves out a day that is not whole", () => {
    const hours = Array.from({ length: 60 }, (_, hour) => (hour < 24 ? 1 : hour < 48 ? 3 : 100));
    expect([...dailyMeans(hours)]).toEqual([1, 3]);
  });

  it("keeps the mean of the year when months are weighted by their days", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -50, max: 50, noNaN: true }), { minLength: 365, maxLength: 365 }),
        (days) => {
          const spans = monthSpans(273, 365);
          const months = monthlyMeans(days, 273);
          const fromMonths = months.reduce((sum, { mean }, i) => sum + mean * (spans[i]!.to - spans[i]!.from), 0) / 365;
          expect(fromMonths).toBeCloseTo(days.reduce((sum, value) => sum + value, 0) / 365, 8);
        },
      ),
    );
  });
});

describe("differences and peaks", () => {
  it("subtracts the first from the second, over the days both hold", () => {
    expect([...difference([1, 2, 3], [4, 4])]).toEqual([3, 2]);
  });

  it("finds the first of equal peaks, and nothing in nothing", () => {
    expect(highest([1, 5, 5])).toEqual({ day: 1, value: 5 });
    expect(lowest([2, 0, 0])).toEqual({ day: 1, value: 0 });
    expect(highest([])).toBeNull();
  });

  it("finds the same running mean as adding up every window", () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 100, noNaN: true }), { minLength: 30, maxLength: 80 }), (days) => {
        const means = Array.from(
          { length: days.length - 29 },
          (_, from) => days.slice(from, from + 30).reduce((a, b) => a + b) / 30,
        );
        expect(highestRunningMean(days, 30)!.mean).toBeCloseTo(Math.max(...means), 8);
      }),
    );
    expect(highestRunningMean([1, 2], 30)).toBeNull();
  });
});

describe("days above", () => {
  it("counts days over a level and not those on it", () => {
    expect(daysAbove([79, 80, 81, 95], 80)).toBe(2);
  });

  it("gathers days on end into spells", () => {
    expect(spellsAbove([90, 90, 70, 90], 80)).toEqual([
      { from: 0, to: 1 },
      { from: 3, to: 3 },
    ]);
    expect(spellsAbove([], 80)).toEqual([]);
  });

  it("falls from level to level, and agrees with the spells at each", () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 20, max: 100, noNaN: true }), { maxLength: 365 }), (days) => {
        const curve = daysAboveCurve(days, 60, 100, 5);
        curve.slice(1).forEach((point, i) => expect(point.days).toBeLessThanOrEqual(curve[i]!.days));
        for (const { level, days: count } of curve)
          expect(spellsAbove(days, level).reduce((sum, { from, to }) => sum + to - from + 1, 0)).toBe(count);
      }),
    );
  });

  it("refuses a step that leads nowhere", () => {
    expect(() => daysAboveCurve([1], 60, 100, 0)).toThrow(RangeError);
  });
});

describe("water that leaves", () => {
  const months = [9, 10, 11, 0, 1, 2, 3, 4, 5, 6, 7, 8];
  const only = (month: number, value: number): number[] => months.map((each) => (each === month ? value : 0));

  it("splits what leaves in the months asked for, whatever month the run begins in", () => {
    const shares = leavingShares({ months, outward: only(3, 0.3), inward: only(4, 0.1) }, [2, 3, 4, 5])!;
    expect(shares.outward).toBeCloseTo(0.75, 12);
    expect(shares.inward).toBeCloseTo(0.25, 12);
  });

  it("counts neither water that arrives nor other months", () => {
    expect(leavingShares({ months, outward: only(3, -0.3), inward: only(8, 0.1) }, [2, 3, 4, 5])).toBeNull();
  });
});

describe("table as comma-separated values", () => {
  // RFC 4180, sections 2.5 to 2.7.
  it("quotes cells with commas, quotes and breaks, and doubles the quotes", () => {
    expect(csvOf({ columns: ["a, b", 'say "c"'], rows: [["1", "x\ny"]] })).toBe('"a, b","say ""c"""\r\n1,"x\ny"\r\n');
  });
});
