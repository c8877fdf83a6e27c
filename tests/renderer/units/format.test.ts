import fc from "fast-check";
import { expect, test } from "vitest";
import {
  figure,
  inchText,
  lengthEntry,
  lengthText,
  parseDistance,
  parseShare,
  parseTemperature,
  parseThickness,
  permeanceFigure,
  resistanceText,
  rewordTemperatures,
  tapeInches,
  temperatureText,
  transmittanceText,
} from "../../../renderer/units/index.ts";

const inch_m = 0.0254;

test("lengths near a sixteenth of an inch are read as a tape reads them, in lowest terms", () => {
  expect(inchText(2.25 * inch_m)).toBe("2 1/4");
  expect(inchText(0.4375 * inch_m)).toBe("7/16");
  expect(inchText(9.75 * inch_m)).toBe("9 3/4");
  expect(inchText(2 * inch_m)).toBe("2");
  // 140 mm is the metric name of a 5 1/2 in. stud, 11.1 mm of a 7/16 in. board.
  expect(inchText(0.14)).toBe("5 1/2");
  expect(inchText(0.0111)).toBe("7/16");
});

test("a length between the ticks is written in decimals", () => {
  expect(tapeInches(2.03 * inch_m)).toBeNull();
  expect(inchText(2.03 * inch_m)).toBe("2.03");
});

test("what stands in a thickness field is read back as the same length to a 64th of an inch", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.002, max: 1, noNaN: true }),
      fc.constantFrom("ip", "si", "both"),
      (length_m, units) => {
        const read = parseThickness(lengthEntry(length_m, units), units, null);
        expect(read.ok).toBe(true);
        if (read.ok) expect(Math.abs(read.value - length_m)).toBeLessThanOrEqual(inch_m / 64 + 1e-9);
      },
    ),
    { seed: 7 },
  );
});

test("both units show the inch and the millimetre", () => {
  expect(lengthText(0.0508, "both")).toBe("2 in. (50.8 mm)");
});

test("temperatures, resistances and U follow the published factors", () => {
  // 0 degC = 32 degF; 1 h ft2 degF/Btu = 0.1761 m2 K/W (NIST Special Publication 811, appendix B).
  expect(temperatureText(0, "ip")).toBe("32 °F");
  expect(temperatureText(-40, "both")).toBe("−40 °F (−40 °C)");
  expect(resistanceText(1.761, "ip")).toBe("R-10.0");
  // U 1 Btu/(h ft2 degF) = 5.678 W/(m2 K).
  expect(transmittanceText(5.678, "ip")).toBe("U 1.000 Btu/(h·ft²·°F)");
});

test("permeance is written in perms or as an equivalent air layer", () => {
  // 1 US perm = 5.72135e-11 kg/(Pa s m2) (ASTM E96).
  expect(permeanceFigure(5.72135e-11, "ip")).toBe("1.0");
  expect(permeanceFigure(2e-10, "si")).toBe("1.00");
});

test("a negative number has a minus sign, and no zero has one", () => {
  expect(figure(-3.2, 1)).toBe("−3.2");
  expect(figure(-0.01, 1)).toBe("0.0");
});

test("temperatures, shares and distances are read with or without a unit", () => {
  expect(parseTemperature("70", "ip")).toMatchObject({ ok: true, value: expect.closeTo(21.111, 3) });
  expect(parseTemperature("21 C", "ip")).toMatchObject({ ok: true, value: 21 });
  expect(parseTemperature("−5 °C", "si")).toMatchObject({ ok: true, value: -5 });
  expect(parseShare("35 %")).toMatchObject({ ok: true, value: 0.35 });
  expect(parseShare("135").ok).toBe(false);
  expect(parseDistance("10 ft", "si", 500)).toMatchObject({ ok: true, value: expect.closeTo(3.048, 6) });
  expect(parseDistance("4", "si", 500)).toMatchObject({ ok: true, value: 4 });
});

test("sentences written in SI are reworded for an inch-pound window", () => {
  expect(rewordTemperatures("a mean of -2.0 degC asks 36 %", "ip")).toBe("a mean of 28 °F asks 36 %");
  expect(rewordTemperatures("a mean of -2.0 degC", "si")).toBe("a mean of −2.0 °C");
});
