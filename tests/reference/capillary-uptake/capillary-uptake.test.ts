import { describe, expect, it } from "vitest";
import type { Project } from "../../../solver/index.ts";
import { runLabProject } from "../../../solver/studies/published-checks/index.ts";
import { checkNamed, drive, expectCheckHolds } from "../support/run.ts";

describe("a stone that stands in water", () => {
  it("takes up water with the root of time, at the rate of its absorption coefficient", () => {
    expectCheckHolds("capillary-uptake");
  });

  it("takes up as much whatever its retention curve, because D(w) alone decides", () => {
    const check = checkNamed("capillary-uptake");
    const project = check.project();
    const coarsePores: Project = {
      ...project,
      materials: project.materials!.map((material) => ({
        ...material,
        sorption: { saturation_kgm3: 200, suctionTerms: [{ share: 1, scale_perPa: 3e-6, n: 1.6, m: 0.9 }] },
      })),
    };
    const rows = check.compare(drive(runLabProject(coarsePores))).filter((row) => row.what.startsWith("Uptake"));
    expect(rows.length).toBeGreaterThan(0);
    expect(rows.filter((row) => !row.holds)).toEqual([]);
  });
});
