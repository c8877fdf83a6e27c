import { describe, expect, it } from "vitest";
import { layersInSeries } from "../../../solver/studies/published-checks/closed-forms/layers-in-series.ts";
import { fixture } from "../support/fixture.ts";
import { expectCheckHolds } from "../support/run.ts";

const psat = (t: number): number => 610.5 * Math.exp((17.269 * t) / (237.3 + t));
const air = 2e-10;

describe("a frame wall with a vapour retarder in a steady winter", () => {
  it("is tabled as resistances in series give it", () => {
    const table = fixture(import.meta.url, "points.csv");
    const solution = layersInSeries(
      [
        { thermal_m2KW: 0, vapour_m2sPakg: 5 / air },
        { thermal_m2KW: 0.0125 / 0.25, vapour_m2sPakg: 0.1 / air },
        { thermal_m2KW: 0.14 / 0.036, vapour_m2sPakg: (0.14 * 1.3) / air },
        { thermal_m2KW: 0.011 / 0.13, vapour_m2sPakg: (0.011 * 150) / air },
        { thermal_m2KW: 0.05 / 0.035, vapour_m2sPakg: (0.05 * 60) / air },
      ],
      { T_C: 20, p_Pa: 0.4 * psat(20), film_m2KW: 0.13 },
      { T_C: -5, p_Pa: 0.8 * psat(-5), film_m2KW: 0.04 },
    );
    expect(table).toHaveLength(6);
    table.forEach((row, k) => {
      expect(solution.T_C[k]).toBeCloseTo(Number(row.T_C), 5);
      expect(solution.p_Pa[k]).toBeCloseTo(Number(row.p_Pa), 4);
      expect((100 * solution.p_Pa[k]!) / psat(solution.T_C[k]!)).toBeCloseTo(Number(row.RH_pct_unlimited), 4);
      expect(solution.heatFlow_Wm2).toBeCloseTo(Number(row.heat_flux_W_m2), 5);
      expect(solution.vapourFlow_kgm2s * 1e8).toBeCloseTo(Number(row.vapour_flux_kg_m2s) * 1e8, 5);
    });
  });

  it("comes to that steady state in the transient solver", () => {
    expectCheckHolds("diffusion-in-series");
  });
});
