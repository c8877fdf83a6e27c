import { describe, it } from "vitest";
import { expectCheckHolds, expectRefinedHolds } from "../support/run.ts";

describe("conduction with air that flows through the layer", () => {
  it("bends the temperature profile as the closed form does, for flows inward and outward", () => {
    expectCheckHolds("conduction-with-air-flow");
  });

  it("comes within a tenth of a percent on a fine grid", () => {
    expectRefinedHolds("conduction-with-air-flow", 0.2, 4, 1e-6);
  });
});
