import { describe, expect, it } from "vitest";
import { cupsPerSheet, wordingIn } from "../../../solver/assess/index.ts";
import { dateOfDay, datesFrom } from "../../../solver/assess/dates.ts";
import { inSentence } from "../../../solver/assess/wording.ts";

describe("how a statement says numbers", () => {
  const si = wordingIn("si");
  const ip = wordingIn("ip");

  it("rounds to what is known and keeps the sign", () => {
    expect([si.temperature(-4.6), ip.temperature(-4.6)]).toEqual(["\u22125 °C", "24 °F"]);
    expect(si.temperature(-0.2)).toBe("0 °C");
    expect([si.humidity(0.796), si.moisture(14.6)]).toEqual(["80 %", "15 %"]);
    expect([si.kelvins(-1.26), ip.kelvins(-1.26)]).toEqual(["1.3 K", "2 °F"]);
    expect([si.points(1.2), si.points(-6.4)]).toEqual(["1 point", "6 points"]);
  });

  it("says water by area or by the sheet", () => {
    // 1 US cup 236.588 mL, 4 by 8 ft = 2.9729 m2: 1 kg/m2 is 12.57 cups.
    expect(cupsPerSheet(1)).toBeCloseTo(12.566, 3);
    expect([si.water(0.487), si.water(1.24)]).toEqual(["490 g/m²", "1.2 kg/m²"]);
    expect([ip.water(0.08), ip.water(1), ip.water(9.5), ip.water(0.01)]).toEqual([
      "1 cup on a 4 by 8 ft sheet",
      "13 cups on a 4 by 8 ft sheet",
      "30 quarts on a 4 by 8 ft sheet",
      "less than half a cup on a 4 by 8 ft sheet",
    ]);
  });

  it("says time in hours, then in days", () => {
    expect([si.duration(1), si.duration(47), si.duration(48)]).toEqual(["1 hour", "47 hours", "2 days"]);
  });

  it("shortens a catalogue name and keeps its capitals where they belong", () => {
    expect(inSentence("Gypsum board, paper-faced, 12.7 mm")).toBe("gypsum board");
    expect(inSentence("OSB sheathing")).toBe("OSB sheathing");
    expect(inSentence("Asphalt-coated kraft facing on batts")).toBe("asphalt-coated kraft facing");
    expect(inSentence("Fibre-cement siding/panel")).toBe("fibre-cement siding");
  });
});

describe("dates of a run", () => {
  it("knows the first and last day of every month", () => {
    expect(dateOfDay(0)).toEqual({ month: 0, dayOfMonth: 1 });
    expect(dateOfDay(58)).toEqual({ month: 1, dayOfMonth: 28 });
    expect(dateOfDay(59)).toEqual({ month: 2, dayOfMonth: 1 });
    expect(dateOfDay(364)).toEqual({ month: 11, dayOfMonth: 31 });
    expect(dateOfDay(365)).toEqual({ month: 0, dayOfMonth: 1 });
  });

  it("dates the judged hours from the run's start, which is midnight of its first day", () => {
    const dates = datesFrom(273, 8760, false);
    expect([dates.date(0), dates.date(23), dates.date(24), dates.date(92 * 24)]).toEqual([
      "1 October",
      "1 October",
      "2 October",
      "1 January",
    ]);
    expect(datesFrom(0, 0, true).date(11)).toBe("hour 12");
  });
});
