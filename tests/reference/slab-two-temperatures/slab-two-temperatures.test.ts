import { describe, it } from "vitest";
import { expectCheckHolds, expectRefinedHolds } from "../support/run.ts";

describe("a slab between two temperatures", () => {
  it("follows the closed form within half a percent of the driving difference on the default grid", () => {
    expectCheckHolds("slab-two-temperatures");
  });

  it("follows it within a tenth of a percent on a fine grid with small steps", () => {
    expectRefinedHolds("slab-two-temperatures", 0.2, 4, 1e-6);
  });
});
