import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { runOne } from "../../../reference/support/run.ts";
import { everyNumber, layered, wallProject, weatheredFace } from "./walls.ts";

const hours = 24;

describe("the same case", () => {
  it("gives the same result to the bit, also after another wall has run in between", () => {
    fc.assert(
      fc.property(
        layered,
        layered,
        weatheredFace(hours, true),
        weatheredFace(hours, false),
        (one, other, outside, inside) => {
          const project = wallProject({ ...one, outside, inside, hours, start_C: 8, startHumidity: 0.7 });
          const first = runOne(project);
          runOne(wallProject({ ...other, outside: inside, inside: outside, hours, start_C: 20, startHumidity: 0.4 }));
          const again = runOne(structuredClone(project));
          expect(again.caseHash).toBe(first.caseHash);
          const [a, b] = [everyNumber(first), everyNumber(again)];
          expect(a.length).toBeGreaterThan(hours);
          expect(Buffer.from(a.buffer).equals(Buffer.from(b.buffer))).toBe(true);
        },
      ),
      { numRuns: 10, seed: 21, endOnFailure: true },
    );
  });
});
