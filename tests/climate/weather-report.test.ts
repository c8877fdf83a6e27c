import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import {
  computedClimateZone,
  moistureLetter,
  monthlyMeans,
  placeById,
  places,
  readWeatherFile,
  syntheticYear,
  thermalZone,
  weatherReport,
  withMonthlyRain,
} from "../../climate/index.ts";
import { epwHead, epwRows, joinEpw } from "./support/made-files.ts";
import { realFile } from "./support/files.ts";

const burlington = placeById("burlington-vt")!;

describe("climate zone", () => {
  test("thermal zones part where the 2021 table says", () => {
    // IRC 2021 table N1101.7.2 (SEEN in adopted state texts): limits included on the lower zone's side.
    expect(thermalZone(0, 6001)).toBe(0);
    expect(thermalZone(0, 6000)).toBe(1);
    expect(thermalZone(200, 5000)).toBe(2);
    expect(thermalZone(2000, 3500)).toBe(3);
    expect(thermalZone(2001, 3500)).toBe(4);
    expect(thermalZone(3000, 3400)).toBe(4);
    expect(thermalZone(3001, 1500)).toBe(5);
    expect(thermalZone(4000, 1500)).toBe(5);
    expect(thermalZone(5000, 1500)).toBe(6);
    expect(thermalZone(7000, 1000)).toBe(7);
    expect(thermalZone(7001, 500)).toBe(8);
  });

  test("the letter is marine first, then dry, else humid", () => {
    const mild = [4, 5, 7, 9, 12, 15, 18, 18, 15, 11, 7, 5];
    const drySummer = [140, 90, 95, 70, 50, 40, 18, 22, 40, 90, 165, 140];
    expect(moistureLetter(mild, drySummer, 47)).toBe("C");
    expect(moistureLetter(mild, new Array<number>(12).fill(80), 47)).toBe("A");
    expect(moistureLetter(mild, new Array<number>(12).fill(20), 47)).toBe("B");
    // Southern half: the cold season is April to September.
    const turn = (months: number[]): number[] => [...months.slice(6), ...months.slice(0, 6)];
    expect(moistureLetter(turn(mild), turn(drySummer), -47)).toBe("C");
  });

  test("agrees with the county assignment at nearly all embedded US places", () => {
    // Typical-year means lie beside a zone limit at a few places; a step apart is known for eight of the 57 (San Juan, Phoenix, Yuma, Dallas, Las Vegas, Salt Lake City, Bellingham, Billings).
    let apart = 0;
    let counted = 0;
    for (const place of places) {
      if (place.country !== "US") continue;
      counted++;
      const report = weatherReport(syntheticYear(place, { kind: "typical", seed: 1 }));
      if (report.climateZone.computed[0] !== place.climateZone[0]) apart++;
      expect(
        Math.abs(Number(report.climateZone.computed[0]) - Number(place.climateZone[0])),
        place.id,
      ).toBeLessThanOrEqual(1);
    }
    expect(counted).toBe(57);
    expect(apart).toBeLessThanOrEqual(8);
  });

  test("has no letter without rain and none in zones 7 and 8", () => {
    const input = {
      heating65F_Kd: 4200,
      cooling10_Kd: 1300,
      temperature_C: new Array<number>(12).fill(8),
      rain_mm: null,
      latitude_deg: 44,
    };
    expect(computedClimateZone(input)).toBe("6");
    expect(computedClimateZone({ ...input, heating65F_Kd: 6000, rain_mm: new Array<number>(12).fill(60) })).toBe("7");
  });
});

describe("what this year contains", () => {
  test("a synthetic year of Burlington is reported whole, in zone 6A, with its normal rain", () => {
    const report = weatherReport(syntheticYear(burlington, { kind: "typical", seed: 1 }));
    expect(report.climateZone.computed).toBe("6A");
    expect(report.columns.every((column) => column.complete === 1)).toBe(true);
    expect(report.rain.shareOfNormal).toBeCloseTo(1, 4);
    expect(report.rain.nearest.id).toBe("burlington-vt");
    expect(report.rain.doubt).toBeNull();
    expect(report.annual.rain_mm).toBeCloseTo(935, 2);
    expect(report.monthly.rain_mm).toHaveLength(12);
    const column = report.columns.find((one) => one.column === "temperature_C")!;
    expect(column.low).toBe(Math.min(...report.monthly.coldestHour_C));
    expect(column.lowAt).toMatch(/^\d{1,2} (Dec|Jan|Feb|Mar) \d\d:00$/);
    expect(report.annual.temperature_C).toBeCloseTo(7.87, 1);
  });

  test("missing rain is a doubt with both totals, and the letter then follows the normals", () => {
    const made = syntheticYear(burlington, { kind: "typical", seed: 1 });
    const rows = epwRows(made).map((row) => ((row[33] = "999"), row));
    const read = readWeatherFile("dry.epw", joinEpw(epwHead(made), rows));
    if (!read.ok) throw new Error("not read");
    const report = weatherReport(read.value);
    expect(report.rain.doubt).toMatch(
      /missing in 8760 hours: 0 mm against a normal year's 935 mm at Burlington, VT, 0 km away/,
    );
    expect(report.climateZone).toMatchObject({ computed: "6A" });
    expect(report.climateZone.advice).toMatch(/normal rain of Burlington/);
    expect(report.columns.find((column) => column.column === "rain_mm")!.complete).toBe(0);
    const mended = weatherReport(withMonthlyRain(read.value, burlington));
    expect(mended.rain.doubt).toBeNull();
    expect(mended.rain.total_mm).toBeCloseTo(935, 1);
  });

  test("the New York file's rain is shown against its normal", () => {
    const text = realFile("USA_NY_New.York-J.F.Kennedy.Intl.AP.744860_TMY3.epw");
    if (text === null) return;
    const read = readWeatherFile("ny.epw", text);
    if (!read.ok) throw new Error("not read");
    const report = weatherReport(read.value);
    // 722 mm in the file (COMPUTED), 1086 mm the 1981-2010 normal of the airport (NOAA, SEEN).
    expect(report.rain.total_mm).toBeCloseTo(722, 6);
    expect(report.rain.missingHours).toBe(5);
    expect(Math.abs(report.rain.nearest.normal_mm - 1086)).toBeLessThan(4);
    expect(report.climateZone.computed).toBe("4A");
  });

  test("Seattle's hourly normals agree in mean with its typical year and are far smoother", () => {
    // NOAA 1981-2010 hourly normals of Seattle, as packed in vega-datasets; 8759 rows, the first hour of the year is not there.
    const csv = readFileSync(
      new URL("../../node_modules/vega-datasets/data/seattle-weather-hourly-normals.csv", import.meta.url),
      "utf8",
    );
    const rows = csv
      .trim()
      .split(/\r?\n/)
      .slice(1)
      .map((line) => line.split(","));
    expect(rows).toHaveLength(8759);
    const column = (k: number): number[] => rows.map((row) => Number(row[k]));
    const mean = (values: ArrayLike<number>): number => Array.from(values).reduce((a, b) => a + b, 0) / values.length;
    const text = realFile("USA_WA_Seattle-Tacoma.Intl.AP.727930_TMY3.epw");
    const read = text === null ? null : readWeatherFile("seattle.epw", text);
    const year = read?.ok ? read.value : syntheticYear(placeById("seattle-wa")!, { kind: "typical", seed: 1 });
    expect(Math.abs(mean(year.temperature_C) - mean(column(2)))).toBeLessThan(0.5);
    expect(Math.abs(mean(year.windSpeed_ms) - mean(column(3)))).toBeLessThan(0.4);
    // Station pressure against pressure at sea level: 122 m are 14.6 hPa.
    expect(Math.abs(mean(year.pressure_Pa) / 100 + 14.6 - mean(column(1)))).toBeLessThan(4);
    const months = monthlyMeans(Float64Array.from([column(2)[0]!, ...column(2)]));
    // Months of a typical year come from single years: within 2.5 K of thirty-year means.
    monthlyMeans(year.temperature_C).forEach((value, month) =>
      expect(Math.abs(value - months[month]!), `month ${month + 1}`).toBeLessThan(2.5),
    );
    const roughness = (values: ArrayLike<number>): number => {
      let square = 0;
      for (let k = 24; k < values.length; k++) square += (values[k]! - values[k - 24]!) ** 2;
      return Math.sqrt(square / values.length);
    };
    expect(roughness(year.temperature_C)).toBeGreaterThan(5 * roughness(column(2)));
    const refused = readWeatherFile("normals.csv", csv);
    expect(refused.ok).toBe(false);
  });
});
