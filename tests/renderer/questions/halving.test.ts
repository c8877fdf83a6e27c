import { describe, expect, it } from "vitest";
import { halving } from "../../../renderer/questions/how-thick/movers.ts";

/** Runs the search to its end against a wall that keeps its limits from one board on. */
function search(boards: number, start: number, keptFrom: number): { first: number; runs: number } {
  const kept = new Map<number, boolean>();
  for (let runs = 0; runs < 50; runs += 1) {
    const step = halving(kept, boards, start);
    if ("first" in step) return { first: step.first, runs };
    expect(kept.has(step.next)).toBe(false);
    kept.set(step.next, step.next >= keptFrom);
  }
  throw new Error("the search did not end");
}

describe("the first board that keeps its limits", () => {
  it("is found from any start, and so is that none does", () => {
    for (let boards = 1; boards <= 11; boards += 1)
      for (let start = -1; start <= boards + 1; start += 1)
        for (let keptFrom = 0; keptFrom <= boards; keptFrom += 1)
          expect(search(boards, start, keptFrom).first).toBe(keptFrom);
  });

  it("takes no more runs than halving needs, the board of the start aside", () => {
    for (let keptFrom = 0; keptFrom <= 9; keptFrom += 1)
      expect(search(9, 5, keptFrom).runs).toBeLessThanOrEqual(1 + Math.ceil(Math.log2(10)));
  });

  it("is read from the thick end where a thicker board breaks what a thinner one keeps", () => {
    const kept = new Map([
      [2, true],
      [5, false],
    ]);
    const step = halving(kept, 9, 2);
    expect("next" in step && step.next > 5).toBe(true);
  });
});
