import { describe, expect, test } from "vitest";
import { placeById, readEpw, readTmy3, readWeatherFile, syntheticYear } from "../../climate/index.ts";
import { epwHead, epwRows, joinEpw, tmy3Text } from "./support/made-files.ts";

const made = syntheticYear(placeById("burlington-vt")!, { kind: "typical", seed: 3 });
const rows = epwRows(made);
const text = tmy3Text(made, rows, (row) => row[33]!);
const same = (a: Float64Array, b: Float64Array): boolean =>
  a.length === b.length && a.every((value, k) => value === b[k]);
const good = (source: string) => {
  const result = readTmy3("made.csv", source);
  if (!result.ok) throw new Error(result.issues.map((issue) => `${issue.path}: ${issue.message}`).join("\n"));
  return result.value;
};

describe("a TMY3 CSV file", () => {
  test("gives the same year as the EPW of the same hours", () => {
    const epw = readEpw("made.epw", joinEpw(epwHead(made), rows));
    if (!epw.ok) throw new Error("not read");
    const csv = good(text);
    for (const column of ["temperature_C", "dewPoint_C", "globalHorizontal_Wm2", "windSpeed_ms", "rain_mm"] as const)
      expect(same(csv[column], epw.value[column]), column).toBe(true);
    expect(csv.place.name).toBe("TESTVILLE, NORTH, VT");
  });

  test("is recognised by its content, with CRLF and byte-order mark too", () => {
    for (const source of [text, "\ufeff" + text.replaceAll("\n", "\r\n")]) {
      const read = readWeatherFile("anything.txt", source);
      expect(
        read.ok &&
          same(
            read.value.temperature_C,
            made.temperature_C.map((t) => Number(t.toFixed(1))),
          ),
      ).toBe(true);
    }
  });

  test("-9900 and ? are missing, short gaps filled", () => {
    const lines = text.split("\n");
    const broken = lines.map((line, k) => {
      const cells = line.split(",");
      if (k === 50) cells[6] = "-9900";
      if (k === 60) cells[7] = "?";
      return cells.join(",");
    });
    const year = good(broken.join("\n"));
    expect(year.temperature_C[48]).toBeCloseTo((Number(rows[47]![6]) + Number(rows[49]![6])) / 2, 9);
    expect(year.issues.some((issue) => issue.path.startsWith("line 51, column 7 (dry-bulb)"))).toBe(true);
  });

  test("pressure in mbar becomes Pa, and another unit is taken from the heading or refused", () => {
    expect(good(text).pressure_Pa[0]).toBeCloseTo(Number(rows[0]![9]), 6);
    const read = readTmy3("x", text.replace("Dry-bulb (C)", "Dry-bulb (F)"));
    expect(read.ok).toBe(false);
    expect(read.issues[0]!.path).toBe("line 2, column 7 (dry-bulb)");
    expect(read.issues[0]!.message).toMatch(/unit "f"/);
  });

  test("rain in tenths of a millimetre under the heading mm is divided by ten", () => {
    // Hundredths of an inch in tenths of a millimetre: 3, 5, 8, 10, 13 ... as seen in the published files.
    const tenths = tmy3Text(made, rows, (row) => String(Math.round(Math.round(Number(row[33]) / 0.254) * 2.54)));
    const sum = (values: Float64Array): number => values.reduce((a, b) => a + b, 0);
    expect(Math.abs(sum(good(tenths).rain_mm) / sum(made.rain_mm) - 1)).toBeLessThan(0.05);
  });

  test("a missing column is named", () => {
    const read = readTmy3("x", text.replace("Wspd (m/s)", "Breeze"));
    expect(read.ok).toBe(false);
    expect(read.issues[0]!.message).toContain('"wspd"');
  });

  test("24:00 is the end of the day, and a row without a date is left out and said", () => {
    const lines = text.split("\n");
    lines[30] = "soon," + lines[30]!.split(",").slice(1).join(",");
    const year = good(lines.join("\n"));
    expect(year.temperature_C[23]).toBe(Number(rows[23]![6]));
    expect(year.issues.some((issue) => issue.path === "line 31")).toBe(true);
  });
});
