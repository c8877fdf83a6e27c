import { describe, expect, it } from "vitest";
import { conductivityCurve } from "../../../solver/physics/conductivity.ts";
import { liquidSlope } from "../../../solver/physics/liquid-transport.ts";
import { potentialAtSuction, referenceTemperature_K } from "../../../solver/physics/moisture-potential.ts";
import { physicsSettings } from "../../../solver/physics/physics-settings.ts";
import { sorptionCurve } from "../../../solver/physics/sorption-curve.ts";
import { vapourCurve } from "../../../solver/physics/vapour-transport.ts";
import { en15026Physics, loadBearing } from "../../../solver/studies/published-checks/benchmark-materials.ts";
import { numbers } from "../support/fixture.ts";

// Each function of the benchmark material at six states; the figures carry six digits, so 1e-5 of a value is rounding.
const rhoR = 1000 * 462;
const physics = physicsSettings(en15026Physics, 101325);
const sorption = sorptionCurve(loadBearing, rhoR);

describe("the benchmark material's functions", () => {
  it.each(numbers(import.meta.url, "property-vectors.csv"))("at $T_K K and a relative humidity of $RH", (row) => {
    const suction = -rhoR * row.T_K! * Math.log(row.RH!);
    const potential = potentialAtSuction(suction, referenceTemperature_K, rhoR);
    const near = (got: number, expected: number): void => {
      expect(Math.abs(got / expected - 1)).toBeLessThan(1e-5);
    };
    near(physics.saturationPressure(row.T_K!), row.psat_Pa!);
    near(suction, row.s_Pa!);
    const w = sorption.waterAt(potential);
    near(w, row.w_kg_m3!);
    const step = 1e-4;
    const byPotential = (sorption.waterAt(potential + step) - sorption.waterAt(potential - step)) / (2 * step);
    near(-byPotential / suction, row.dw_ds_kg_m3_Pa!);
    near(vapourCurve(loadBearing, sorption).at(potential) * physics.airPermeability(row.T_K!), row.delta_s!);
    near(liquidSlope(loadBearing, sorption, rhoR)!(potential) / suction, row.K_s!);
    near(conductivityCurve(loadBearing).wet(w), row.lambda_W_mK!);
  });
});
