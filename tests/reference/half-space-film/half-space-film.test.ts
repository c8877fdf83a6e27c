import { describe, it } from "vitest";
import { expectCheckHolds, expectRefinedHolds } from "../support/run.ts";

describe("a half-space that cools through a film", () => {
  it("follows the closed form within half a percent of the driving difference on the default grid", () => {
    expectCheckHolds("half-space-film");
  });

  it("follows it within a tenth of a percent on a fine grid with small steps", () => {
    expectRefinedHolds("half-space-film", 0.2, 4, 1e-6);
  });
});
