import { describe, expect, it } from "vitest";
import { standardSaturationPressure_Pa, steadyProfile } from "../../../../solver/physics/steady/index.ts";
import { numberIn, rowsOf, walls } from "./fixtures.ts";

/** The series wall of a7_layers_in_series.csv, outside first. */
const series = (retarderSd_m: number) => [
  { id: "foam", resistance_m2KW: 0.05 / 0.035, sd_m: 60 * 0.05 },
  { id: "panel", resistance_m2KW: 0.011 / 0.13, sd_m: 150 * 0.011 },
  { id: "fibre", resistance_m2KW: 0.14 / 0.036, sd_m: 1.3 * 0.14 },
  { id: "gypsum", resistance_m2KW: 0.0125 / 0.25, sd_m: 0.1 },
  { id: "retarder", resistance_m2KW: 0, sd_m: retarderSd_m },
];
const outside = { temperature_C: -5, vapourPressure_Pa: 0.8 * 610.5 * Math.exp((17.269 * -5) / (237.3 - 5)) };
const inside = { temperature_C: 20, vapourPressure_Pa: 0.4 * standardSaturationPressure_Pa(20) };

describe("the steady profile", () => {
  it("gives temperatures, vapour pressures and flows of layers in series to 0.1 %", () => {
    const profile = steadyProfile(series(5), outside, inside);
    for (const row of rowsOf("a7_layers_in_series.csv")) {
      const plane = profile.planes[5 - numberIn(row, "plane_from_inside")]!;
      expect(Math.abs(plane.temperature_C - numberIn(row, "T_C"))).toBeLessThan(25e-3);
      expect(Math.abs(plane.vapourPressure_Pa / numberIn(row, "p_Pa") - 1)).toBeLessThan(1e-3);
      expect(Math.abs(profile.heatFlow_Wm2 / numberIn(row, "heat_flux_W_m2") - 1)).toBeLessThan(1e-3);
      expect(Math.abs(profile.vapourFlow_kgm2s / numberIn(row, "vapour_flux_kg_m2s") - 1)).toBeLessThan(1e-3);
    }
    expect(profile.planesAboveSaturation).toEqual([]);
  });

  it("flags the panel's inner face when the retarder is left out", () => {
    // Plane 2 from outside is the inner face of the panel, where unlimited diffusion passes saturation.
    expect(steadyProfile(series(0.1), outside, inside).planesAboveSaturation).toContain(2);
  });

  it("does not change when a layer is listed as two halves", () => {
    const whole = steadyProfile(walls["S1"]!, outside, inside);
    const halved = walls["S1"]!.flatMap((layer) =>
      [1, 2].map((half) => ({
        id: `${layer.id}${half}`,
        resistance_m2KW: layer.resistance_m2KW / 2,
        sd_m: layer.sd_m / 2,
      })),
    );
    const cut = steadyProfile(halved, outside, inside);
    whole.planes.forEach((plane, index) => {
      expect(cut.planes[2 * index]!.temperature_C).toBeCloseTo(plane.temperature_C, 10);
      expect(cut.planes[2 * index]!.vapourPressure_Pa).toBeCloseTo(plane.vapourPressure_Pa, 8);
    });
  });

  it("refuses a negative resistance by name", () => {
    const bad = [{ id: "panel", resistance_m2KW: -1, sd_m: 1 }];
    expect(() => steadyProfile(bad, outside, inside)).toThrow(/panel must be >= 0, got -1/);
  });
});
