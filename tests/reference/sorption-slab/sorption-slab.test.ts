import { describe, it } from "vitest";
import { expectCheckHolds, expectRefinedHolds } from "../support/run.ts";

describe("a board that takes up moisture from both faces", () => {
  it("follows the plane-sheet solution on the default grid", () => {
    expectCheckHolds("sorption-slab");
  });

  it("follows it within a tenth of a percent on a fine grid", () => {
    expectRefinedHolds("sorption-slab", 0.2, 4, 1e-6);
  });
});
