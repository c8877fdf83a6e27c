import { describe, expect, it } from "vitest";
import { hexOf, labOf, type Lab } from "../../../renderer/plots/lab-colour.ts";
import { colourAt, colourRamp, scaleStops } from "../../../renderer/plots/scales.ts";
import { ciede2000 } from "./ciede2000.ts";

describe("CIELAB", () => {
  // sRGB primaries under D65, as computed from IEC 61966-2-1 and CIE 015 (values widely tabulated; MEMORY).
  it.each<[string, Lab]>([
    ["#ff0000", [53.24, 80.09, 67.2]],
    ["#00ff00", [87.74, -86.18, 83.18]],
    ["#0000ff", [32.3, 79.19, -107.86]],
    ["#ffffff", [100, 0, 0]],
  ])("puts %s where the tables have it", (hex, expected) => {
    labOf(hex).forEach((value, i) => expect(Math.abs(value - expected[i]!)).toBeLessThan(0.06));
  });

  it("comes back to the same colour to the bit", () => {
    for (const hex of ["#302442", "#f5f2e9", "#7f7f7f", "#010203", "#00555b"]) expect(hexOf(labOf(hex))).toBe(hex);
  });

  it("refuses what is not a colour", () => {
    expect(() => labOf("tea")).toThrow(/#RRGGBB/);
  });
});

describe("CIEDE2000 as used by these checks", () => {
  // Sharma, Wu, Dalal 2005, Color Research and Application 30(1), table 1 (MEMORY).
  it.each<[Lab, Lab, number]>([
    [[50, 2.6772, -79.7751], [50, 0, -82.7485], 2.0425],
    [[50, 3.1571, -77.2803], [50, 0, -82.7485], 2.8615],
    [[50, 2.8361, -74.02], [50, 0, -82.7485], 3.4412],
    [[50, 0, 0], [50, -1, 2], 2.3669],
    [[50, 2.5, 0], [73, 25, -18], 27.1492],
    [[50, 2.5, 0], [50, 3.2592, 0.335], 1.0],
    [[2.0776, 0.0795, -1.135], [0.9033, -0.0636, -0.5514], 0.9082],
  ])("differs %o from %o by the published amount", (a, b, expected) => {
    expect(Math.abs(ciede2000(a, b) - expected)).toBeLessThan(1e-4);
  });
});

describe("map scales", () => {
  const steps = (stops: readonly string[]): number[] =>
    stops.slice(1).map((hex, i) => ciede2000(labOf(stops[i]!), labOf(hex)));

  it("spaces the light stain evenly, 10.4 to 10.8 a step", () => {
    for (const step of steps(scaleStops("stain", "light"))) {
      expect(step).toBeGreaterThan(10.35);
      expect(step).toBeLessThan(10.85);
    }
  });

  it("spaces frost evenly, 8.9 to 9.6 a step", () => {
    for (const step of steps(scaleStops("frost", "light"))) {
      expect(step).toBeGreaterThan(8.85);
      expect(step).toBeLessThan(9.65);
    }
  });

  it.each(["light", "dark"] as const)(
    "lets the %s stain run one way in lightness, so that it survives grey print",
    (theme) => {
      const lightness = colourRamp("stain", theme).map(([, colour]) => labOf(colour)[0]);
      const falls = theme === "light" ? -1 : 1;
      lightness.slice(1).forEach((value, i) => expect(falls * (value - lightness[i]!)).toBeGreaterThan(0));
    },
  );

  it("begins and ends on its end colours and goes no further", () => {
    expect(colourAt("stain", "light", 0)).toBe("#f5f2e9");
    expect(colourAt("stain", "light", 1)).toBe("#302442");
    expect(colourAt("stain", "light", -3)).toBe("#f5f2e9");
    expect(colourAt("stain", "light", 7)).toBe("#302442");
  });

  it("keeps the middle of the differences without hue in both themes", () => {
    for (const theme of ["light", "dark"] as const) {
      const [, a, b] = labOf(colourAt("shift", theme, 0.5));
      expect(Math.hypot(a, b)).toBeLessThan(0.5);
    }
  });
});
