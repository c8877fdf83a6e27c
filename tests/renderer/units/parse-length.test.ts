import { expect, test } from "vitest";
import { parseNumber, parseThickness } from "../../../renderer/units/parse-length.ts";

// 1 in = 25.4 mm exactly (NIST Special Publication 811, appendix B).
const inch_m = 0.0254;

const metres = (text: string, units: "ip" | "si" | "both" = "ip", conductivity_WmK: number | null = 0.03): number => {
  const read = parseThickness(text, units, conductivity_WmK);
  if (!read.ok) throw new Error(read.message);
  return read.value;
};

test.each([
  ["2 in", 2],
  ["2in.", 2],
  ['1 1/2"', 1.5],
  ["1-1/2 in", 1.5],
  ["2½", 2.5],
  ["⅝ in", 0.625],
  ["7/16", 0.4375],
  ["2,5 in", 2.5],
  [".75 in", 0.75],
  ["1'", 12],
  ["1' 6\"", 18],
  ["1′ 6 1/2″", 18.5],
  ["1 ft", 12],
  ["10 mil", 0.01],
])("%s is read as %d inches", (text, inches) => {
  expect(metres(text)).toBeCloseTo(inches * inch_m, 9);
});

test.each([
  ["50 mm", 0.05],
  ["50,8mm", 0.0508],
  ["5 cm", 0.05],
  ["0.05 m", 0.05],
])("%s is read as %d m whatever the units of the window", (text, value) => {
  expect(metres(text, "ip")).toBeCloseTo(value, 9);
  expect(metres(text, "si")).toBeCloseTo(value, 9);
});

test("a bare number is inches in an inch-pound window and millimetres in a metric one", () => {
  expect(metres("2", "ip")).toBeCloseTo(2 * inch_m, 9);
  expect(metres("50", "si")).toBeCloseTo(0.05, 9);
});

test("R-10 is read through the material's conductivity", () => {
  // R-5 per inch is 0.0288 W/(m K): 0.14423 W/(m K) is one Btu in/(h ft2 degF) (ASTM C168 and SP 811 factors), a fifth of it R-5 per inch.
  const perInchR5 = 0.1442279 / 5;
  expect(metres("R-10", "ip", perInchR5)).toBeCloseTo(2 * inch_m, 5);
  expect(metres("r10", "ip", perInchR5)).toBeCloseTo(2 * inch_m, 5);
  expect(metres("RSI 2", "ip", 0.03)).toBeCloseTo(0.06, 9);
});

test.each(["", "wombat", "2 furlongs", "1/0 in", "R-", "-2 in", "0", "3 m"])(
  "%j is refused with a sentence that says what would do",
  (text) => {
    const read = parseThickness(text, "ip", 0.03);
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.message).toMatch(/Write a length|Enter a value|has no number/);
  },
);

test("R-10 is refused for a layer that has no conductivity", () => {
  expect(parseThickness("R-10", "ip", null)).toMatchObject({ ok: false });
});

test("numbers are read with a point, a comma or a fraction", () => {
  expect(["2", "2.5", "2,5", "1/2", "2 1/4", "2-1/4", "x", "1.2.3"].map(parseNumber)).toEqual([
    2,
    2.5,
    2.5,
    0.5,
    2.25,
    2.25,
    null,
    null,
  ]);
});
