import { describe, expect, it } from "vitest";
import {
  handCheck,
  humidityAtDewPoint,
  outsideResistanceAtDewPoint_m2KW,
  roomDewPoint_C,
} from "../../../solver/studies/index.ts";
import { celsius, fahrenheit, rsiPerR } from "../../../solver/units.ts";

describe("dew-point rule by hand", () => {
  // Common practice, no source: the worked pair of a trade column, 70 °F and 50 % inside, 32 °F outside, R-11 between the studs.
  it.each([
    [7, 32 + (7 / 18) * 38, "wet"],
    [14, 32 + (14 / 25) * 38, "dry"],
  ])(
    "with R-%d outside of R-11 the face is where series resistances put it and is called %3$s",
    (outside_R, face_F, says) => {
      const check = handCheck(celsius(32), celsius(70), 0.5, {
        outside_m2KW: outside_R * rsiPerR,
        inside_m2KW: 11 * rsiPerR,
      });
      expect(fahrenheit(check.face_C)).toBeCloseTo(face_F, 6);
      // The column prints 50 °F, off a chart in whole degrees; the formula gives 50.5.
      expect(Math.abs(fahrenheit(check.dewPoint_C) - 50)).toBeLessThan(0.6);
      expect(check.says).toBe(says);
    },
  );

  // Insulation-only ratio for a room of 21 °C; worked out from saturation pressure as ISO 13788 writes it (MEMORY); COMPUTED.
  it.each([
    [0.3, 2.781, -10, 0.4123],
    [0.35, 4.969, -6, 0.4062],
    [0.35, 4.969, -12, 0.5142],
    [0.4, 6.896, -4, 0.4359],
    [0.35, 4.969, 5, 0],
  ])(
    "at %d in the room the dew point is %d °C, and at %d °C outside the ratio needed is %d",
    (humidity, dew_C, outdoor_C, ratio) => {
      expect(roomDewPoint_C(21, humidity)).toBeCloseTo(dew_C, 2);
      const outside = outsideResistanceAtDewPoint_m2KW(outdoor_C, 21, humidity, 1);
      expect(outside / (outside + 1)).toBeCloseTo(ratio, 4);
    },
  );

  // Steady humidity at which the face of a 2x6 wall with R-20 meets the dew point, 21 °C inside; films 0.68 and 0.17,
  // gypsum 0.45, strand board 0.62, cladding and air 0.62 (ASHRAE Fundamentals values, MEMORY); COMPUTED, whole percent.
  const ciOfColumns = [0, 5, 7.5, 11.25, 15, 20] as const;
  it.each([
    [-1.3, [25, 32, 36, 40, 44, 49]],
    [-6.5, [17, 24, 28, 32, 36, 41]],
    [-12, [12, 18, 21, 25, 29, 34]],
  ])(
    "at %d °C the humidity that keeps the face at the dew point rises with the insulation outside",
    (outdoor_C, expected) => {
      const safe = ciOfColumns.map(
        (ci) =>
          100 *
          humidityAtDewPoint(outdoor_C, 21, {
            outside_m2KW: (0.17 + 0.62 + 0.62 + ci) * rsiPerR,
            inside_m2KW: (20 + 0.45 + 0.68) * rsiPerR,
          }),
      );
      safe.forEach((value, column) => expect(Math.abs(value - expected[column]!)).toBeLessThan(3));
      for (let column = 1; column < safe.length; column += 1) expect(safe[column]!).toBeGreaterThan(safe[column - 1]!);
    },
  );
});
