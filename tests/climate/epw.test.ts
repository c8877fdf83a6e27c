import { describe, expect, test } from "vitest";
import { placeById, readEpw, readWeatherFile, syntheticYear, weatherReport, type Issue } from "../../climate/index.ts";
import { epwHead, epwRows, joinEpw } from "./support/made-files.ts";

const made = syntheticYear(placeById("burlington-vt")!, { kind: "typical", seed: 3 });
const head = epwHead(made);
const rows = epwRows(made);
const text = joinEpw(head, rows);

/** The file with some rows changed; a row may be dropped by returning null. */
function changed(change: (row: string[], k: number) => string[] | null): string {
  return joinEpw(
    head,
    rows.flatMap((row, k) => {
      const next = change([...row], k);
      return next ? [next] : [];
    }),
  );
}
const field = (k: number, value: string, where: (hour: number) => boolean): string =>
  changed((row, hour) => {
    if (where(hour)) row[k] = value;
    return row;
  });
const read = (source: string) => readWeatherFile("made.epw", source);
const same = (a: Float64Array, b: Float64Array): boolean =>
  a.length === b.length && a.every((value, k) => value === b[k]);
const good = (source: string) => {
  const result = read(source);
  if (!result.ok) throw new Error(result.issues.map((issue) => `${issue.path}: ${issue.message}`).join("\n"));
  return result.value;
};
const errors = (source: string): readonly Issue[] => {
  const result = read(source);
  expect(result.ok).toBe(false);
  const found = result.issues.filter((issue) => issue.severity === "error");
  expect(found.length).toBeGreaterThan(0);
  for (const issue of found)
    expect([issue.path, issue.message, issue.remedy].every((words) => words.length > 3)).toBe(true);
  return found;
};
const plain = good(text);
const told = (issues: readonly Issue[], pattern: RegExp): boolean =>
  issues.some((issue) => pattern.test(`${issue.path}: ${issue.message}`));

describe("an EPW file that is sound", () => {
  test("gives every hour as written", () => {
    const year = plain;
    for (const [column, k] of [
      ["temperature_C", 6],
      ["windSpeed_ms", 21],
      ["rain_mm", 33],
    ] as const)
      expect(
        same(
          year[column],
          Float64Array.from(rows, (row) => Number(row[k])),
        ),
      ).toBe(true);
    expect(year.place).toMatchObject({ name: "Testville", latitude_deg: 44.467, utcOffset_h: -5, elevation_m: 101 });
    expect(year.sha256).toMatch(/^[0-9a-f]{64}$/);
  });

  test("reads the same with a byte-order mark, CRLF, bare CR, spaces around fields and a longer header", () => {
    for (const variant of [
      "\ufeff" + text,
      joinEpw(head, rows, "\r\n"),
      joinEpw(head, rows, "\r"),
      joinEpw([...head.slice(0, 6), "COMMENTS 1b,more", "COMMENTS 1c,and more", ...head.slice(6)], rows),
      joinEpw(
        head,
        rows.map((row) => row.map((cell) => ` ${cell} `)),
      ),
    ])
      expect(same(good(variant).temperature_C, plain.temperature_C)).toBe(true);
  });

  test("keeps years that jump from month to month in calendar order", () => {
    expect(new Set(rows.map((row) => row[0])).size).toBeGreaterThan(3);
    expect(
      same(good(changed((row, k) => ((row[0] = String(1960 + (k % 50))), row))).temperature_C, plain.temperature_C),
    ).toBe(true);
  });

  test("leaves out 29 February of a file of 8784 rows, and says so", () => {
    const leap = rows.slice(59 * 24, 60 * 24).map((row) => ((row = [...row]), (row[1] = "2"), (row[2] = "29"), row));
    const year = good(joinEpw(head, [...rows.slice(0, 59 * 24), ...leap, ...rows.slice(59 * 24)]));
    expect(same(year.temperature_C, plain.temperature_C)).toBe(true);
    expect(told(year.issues, /29 February/)).toBe(true);
  });

  test("averages finer steps to hours and adds up rain", () => {
    const fine = rows.flatMap((row) =>
      [15, 30, 45, 60].map(
        (minute, q) => ((row = [...row]), (row[4] = String(minute)), (row[6] = String(Number(row[6]) + q)), row),
      ),
    );
    const year = good(joinEpw(head, fine));
    // The change of each quarter adds to the copy before it: 0, 1, 3, 6.
    expect(year.temperature_C[100]).toBeCloseTo(Number(rows[100]![6]) + 2.5, 9);
    const wet = rows.findIndex((row) => Number(row[33]) > 0);
    expect(year.rain_mm[wet]).toBeCloseTo(4 * Number(rows[wet]![33]), 9);
    expect(told(year.issues, /4\.0 rows an hour/)).toBe(true);
  });

  test("takes hour 0 for the midnight before, or for the first hour when the file counts 0 to 23", () => {
    const midnight = changed((row) => {
      if (row[3] !== "24") return row;
      const next = rows[(rows.findIndex((other) => other[1] === row[1] && other[2] === row[2]) + 24) % 8760]!;
      [row[1], row[2], row[3]] = [next[1]!, next[2]!, "0"];
      return row;
    });
    expect(same(good(midnight).temperature_C, plain.temperature_C)).toBe(true);
    const beginning = changed((row) => ((row[3] = String(Number(row[3]) - 1)), row));
    const year = good(beginning);
    expect(same(year.temperature_C, plain.temperature_C)).toBe(true);
    expect(told(year.issues, /0 to 23/)).toBe(true);
  });
});

describe("missing codes and gaps", () => {
  test("a gap of six hours is filled by a straight line and listed with its line", () => {
    const year = good(field(6, "99.9", (k) => k >= 1000 && k < 1006));
    const before = Number(rows[999]![6]);
    const after = Number(rows[1006]![6]);
    for (let k = 0; k < 6; k++)
      expect(year.temperature_C[1000 + k]).toBeCloseTo(before + ((after - before) * (k + 1)) / 7, 9);
    const issue = year.issues.find((one) => /dry-bulb: a gap was filled/.test(one.message))!;
    // 8 header lines, so hour 1000 (counted from 0) is line 1009.
    expect(issue.path).toBe("line 1009, column 7 (dry-bulb)");
    expect(issue.message).toContain("11 Feb 17:00 to 11 Feb 22:00 (6 h)");
    expect(weatherReport(year).columns.find((one) => one.column === "temperature_C")!.complete).toBeCloseTo(
      1 - 6 / 8760,
      9,
    );
  });

  test("a gap of seven hours is refused with a remedy", () => {
    const [issue] = errors(field(6, "99.9", (k) => k >= 1000 && k < 1007));
    expect(issue!.path).toBe("line 1009, column 7 (dry-bulb)");
    expect(issue!.message).toMatch(/longer than 6 h.*7 h/);
    expect(issue!.remedy).toMatch(/up to 6 h/);
  });

  test("missing dew point comes from humidity, and the other way round", () => {
    const fromHumidity = good(field(7, "99.9", () => true));
    // The humidity field is whole per cent: 1 % at 40 % is about 0.35 K of dew point.
    for (let k = 0; k < 8760; k += 97)
      expect(Math.abs(fromHumidity.dewPoint_C[k]! - plain.dewPoint_C[k]!)).toBeLessThan(1.5);
    expect(same(good(field(8, "999", () => true)).dewPoint_C, plain.dewPoint_C)).toBe(true);
    const both = changed((row) => ((row[7] = "99.9"), (row[8] = "999"), row));
    expect(told(errors(both), /has no dew point/)).toBe(true);
  });

  test("missing infrared is computed by the cloud formula", () => {
    const year = good(field(12, "9999", () => true));
    // The made file's field comes from the same formula, rounded, with cloud rounded to tenths: a tenth of cloud is up to 10 W/m2.
    for (let k = 0; k < 8760; k += 53)
      expect(Math.abs(year.skyInfrared_Wm2[k]! - plain.skyInfrared_Wm2[k]!)).toBeLessThan(7);
    expect(told(year.issues, /infrared was missing in 8760 hours/)).toBe(true);
  });

  test("missing direct or diffuse sun is computed or split; missing global of all hours is refused", () => {
    const noDiffuse = good(field(15, "9999", () => true));
    const sum = (values: Float64Array): number => values.reduce((a, b) => a + b, 0);
    expect(Math.abs(sum(noDiffuse.diffuseHorizontal_Wm2) / sum(plain.diffuseHorizontal_Wm2) - 1)).toBeLessThan(0.05);
    const split = good(changed((row) => ((row[14] = "9999"), (row[15] = "9999"), row)));
    expect(told(split.issues, /split by the hour's clearness/)).toBe(true);
    expect(Math.abs(sum(split.diffuseHorizontal_Wm2) / sum(plain.diffuseHorizontal_Wm2) - 1)).toBeLessThan(0.05);
    errors(changed((row) => ((row[13] = "9999"), (row[14] = "9999"), (row[15] = "9999"), row)));
  });

  test("missing pressure, cloud and rain do not stop a year but are said", () => {
    const year = good(
      changed((row) => ((row[9] = "999999"), (row[22] = "99"), (row[23] = "99"), (row[33] = "999"), row)),
    );
    expect(told(year.issues, /Pressure was missing in 8760/)).toBe(true);
    expect(told(year.issues, /Cloud was missing in 8760/)).toBe(true);
    expect(told(year.issues, /no rain/)).toBe(true);
    expect(year.pressure_Pa[0]).toBeCloseTo(100_117, -2);
    expect(weatherReport(year).rain.missingHours).toBe(8760);
  });

  test("missing wind direction is let pass in calms only", () => {
    const calm = changed((row, k) => (k >= 500 && k < 520 && ((row[20] = "999"), (row[21] = "0")), row));
    good(calm);
    expect(told(errors(field(20, "999", (k) => k >= 500 && k < 520)), /wind direction is missing/)).toBe(true);
  });
});

describe("damaged files are refused or repaired, never trusted", () => {
  test("a file cut short says where it ends", () => {
    const [issue] = errors(joinEpw(head, rows.slice(0, 4000)));
    expect(issue!.path).toBe("line 4008");
    expect(issue!.message).toMatch(/ends early: 4760 hours/);
  });

  test("rows that are missing in the middle are counted", () => {
    good(changed((row, k) => (k >= 200 && k < 206 ? null : row)));
    expect(told(errors(changed((row, k) => (k >= 200 && k < 260 ? null : row))), /60 of 8760 hours have no row/)).toBe(
      true,
    );
  });

  test("text and absurd numbers in a field count as missing and name line and column", () => {
    const year = good(field(6, "warm", (k) => k === 41));
    expect(told(year.issues, /^line 50, column 7 \(dry-bulb\): "warm"/)).toBe(true);
    expect(told(good(field(21, "-3", (k) => k === 41)).issues, /^line 50, column 22 \(wind speed\): "-3"/)).toBe(true);
    for (const nonsense of ["NaN", "Infinity", "0x10", "", "1e999"]) {
      const mended = good(field(6, nonsense, (k) => k === 41));
      expect(mended.temperature_C[41]).toBeCloseTo((Number(rows[40]![6]) + Number(rows[42]![6])) / 2, 9);
    }
    errors(field(6, "warm", () => true));
  });

  test("degrees Fahrenheit, kelvin, hectopascal and kilometres per hour are refused", () => {
    const warm = syntheticYear(placeById("miami-fl")!, { kind: "typical", seed: 1 });
    const fahrenheit = epwRows(warm).map((row) => ((row[6] = String(Number(row[6]) * 1.8 + 32)), row));
    expect(read(joinEpw(epwHead(warm), fahrenheit)).ok).toBe(false);
    const kelvin = errors(changed((row) => ((row[6] = String(Number(row[6]) + 273.15)), row)));
    expect(told(kelvin, /column 7 \(dry-bulb\): .*kelvin/)).toBe(true);
    expect(
      told(read(changed((row) => ((row[9] = String(Number(row[9]) / 100)), row))).issues, /column 10 \(pressure\)/),
    ).toBe(true);
    errors(changed((row) => ((row[21] = String(Number(row[21]) * 3.6)), row)));
  });

  test("no text, no header, no rows and bytes are refused with what to do", () => {
    for (const nothing of [
      "",
      "   \n",
      "PK\u0003\u0004\u0000\u0000zip",
      "\u0000".repeat(5000),
      "hello",
      head.join("\n"),
      text.slice(600),
    ])
      errors(nothing);
    expect(told(errors("\u0000\u0001".repeat(3000)), /not plain text/)).toBe(true);
  });

  test("a place out of range is refused, a contradictory one warned about", () => {
    const location = (latitude: string, longitude: string, zone: string): string[] =>
      epwHead(made, `LOCATION,Testville,VT,USA,made,000000,${latitude},${longitude},${zone},101`);
    expect(errors(joinEpw(location("144", "-73.15", "-5"), rows))[0]!.path).toBe("line 1, column 7 (latitude)");
    expect(errors(joinEpw(location("44.47", "west", "-5"), rows))[0]!.path).toBe("line 1, column 8 (longitude)");
    const sign = good(joinEpw(location("44.47", "73.15", "-5"), rows));
    expect(told(sign.issues, /other sign/)).toBe(true);
    expect(told(good(joinEpw(location("44.47", "-73.15", "5"), rows)).issues, /do not go together/)).toBe(true);
    expect(told(good(joinEpw(location("44.47", "-73.15", "-7"), rows)).issues, /h later than|h earlier than/)).toBe(
      true,
    );
    expect(told(good(joinEpw(location("-44.47", "-73.15", "-5"), rows)).issues, /South is negative|lies south/)).toBe(
      true,
    );
    expect(told(plain.issues, /place/)).toBe(false);
  });

  test("sun while the sun is down is said and does not reach a wall as beam", () => {
    const year = good(field(13, "80", (k) => k % 24 === 1));
    expect(told(year.issues, /while the sun is down/)).toBe(true);
  });

  test("rain in tenths of a millimetre is recognised by its steps", () => {
    const tenths = changed(
      (row) => ((row[33] = String(Math.round(Math.round((Number(row[33]) * 10) / 2.54) * 2.54))), row),
    );
    const year = good(tenths);
    expect(told(year.issues, /divided by 10/)).toBe(true);
    // Steps of 0.254 mm: within 5 % of the rain that was written.
    const sum = (values: Float64Array): number => values.reduce((a, b) => a + b, 0);
    expect(Math.abs(sum(year.rain_mm) / sum(plain.rain_mm) - 1)).toBeLessThan(0.05);
    const millimetres = changed((row) => ((row[33] = String(Math.round(Number(row[33])))), row));
    expect(told(good(millimetres).issues, /divided by 10/)).toBe(false);
  });

  test("rain ten times too much is refused above the wettest year on record, doubted below it", () => {
    // 26,470 mm: Cherrapunji, August 1860 to July 1861 (World Meteorological Organization, from memory). Burlington's normal: 935 mm.
    const times = (factor: number): string =>
      changed((row) => ((row[33] = String(Math.min(Number(row[33]) * factor, 299))), row));
    const soaked = errors(changed((row) => ((row[33] = "5.3"), row)));
    expect(told(soaked, /column 34 \(rain\): Rain sums to 464\d\d mm.*not in mm/)).toBe(true);
    const doubtful = good(times(4));
    expect(weatherReport(doubtful).rain.doubt).toMatch(/far above normal/);
  });

  test("wind in miles an hour is doubted, humidity as a fraction of a percent too", () => {
    const windy = good(changed((row) => ((row[21] = String(Math.min(Number(row[21]) * 2.237, 70))), row)));
    expect(told(windy.issues, /column 22 \(wind speed\): Wind averages/)).toBe(true);
    expect(told(plain.issues, /Wind averages/)).toBe(false);
    const dry = good(changed((row) => ((row[8] = String(Number(row[8]) / 100)), row)));
    expect(told(dry.issues, /column 9 \(relative humidity\): .*fraction/)).toBe(true);
    const noDew = changed((row) => ((row[7] = "99.9"), (row[8] = String(Number(row[8]) / 100)), row));
    expect(told(errors(noDew), /drier than any desert/)).toBe(true);
  });

  test("repeated hours are averaged and said", () => {
    const year = good(joinEpw(head, [...rows, rows[5]!]));
    expect(told(year.issues, /1 hours occur more than once/)).toBe(true);
    expect(same(year.temperature_C, plain.temperature_C)).toBe(true);
  });

  test("a dew point above the dry-bulb is lowered to it", () => {
    const year = good(field(7, "35", (k) => k === 77));
    expect(year.relativeHumidity[77]).toBe(1);
    expect(told(year.issues, /0\.5 K above/)).toBe(true);
  });

  test("readEpw itself refuses a text of another kind", () => {
    expect(readEpw("x", "time,temperature\n").ok).toBe(false);
  });
});
