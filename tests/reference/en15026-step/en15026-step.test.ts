import { describe, expect, it } from "vitest";
import { profiles, uptake } from "../../../solver/studies/published-checks/points/en15026-step.ts";
import { numbers } from "../support/fixture.ts";
import { expectCheckHolds } from "../support/run.ts";

describe("a half-space that turns warm and damp", () => {
  it("ships the points of the independent answer", () => {
    expect(profiles).toEqual(
      numbers(import.meta.url, "points.csv").map((row) => [row.time_d, row.x_m, row.T_C, row.RH_pct, row.w_kg_m3]),
    );
    expect(uptake).toEqual(
      numbers(import.meta.url, "uptake.csv").map((row) => [
        row.time_d,
        row.moisture_uptake_kg_m2,
        row.heat_through_surface_MJ_m2_incl_latent,
      ]),
    );
  });

  it("meets a fifth of the standard's tolerance at every depth on the default grid, and its own similarity", () => {
    expectCheckHolds("en15026-step");
  });
});
