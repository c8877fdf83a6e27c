import { describe, it } from "vitest";
import { expectCheckHolds, expectRefinedHolds } from "../support/run.ts";

describe("isothermal drying with an analytical answer", () => {
  it("dries within one percent of the difference on the default grid", () => {
    expectCheckHolds("hamstad-2");
  });

  it("dries within a tenth of a percent on a fine grid", () => {
    expectRefinedHolds("hamstad-2", 0.1, 4, 1e-6);
  });
});
