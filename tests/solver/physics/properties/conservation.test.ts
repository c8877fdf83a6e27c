import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { runOne } from "../../../reference/support/run.ts";
import { between, dailyFace, hourly, layered, waterAtEnd_kgm2, wallProject, weatheredFace } from "./walls.ts";

const hours = 36;

describe("nothing is lost", () => {
  it("water and heat books close to a millionth of the turnover, whatever the wall, its weather, its rain and its air", () => {
    fc.assert(
      fc.property(
        layered,
        weatheredFace(hours, true),
        weatheredFace(hours, false),
        between(0.1, 0.98),
        hourly(hours, -2e-4, 2e-4),
        (wall, outside, inside, startHumidity, airVelocity_ms) => {
          const result = runOne(
            wallProject({ ...wall, outside, inside, hours, start_C: 10, startHumidity, physics: { airVelocity_ms } }),
          );
          expect(result.status).toBe("finished");
          expect(result.water.closure).toBeLessThanOrEqual(1e-6);
          expect(result.heat.closure).toBeLessThanOrEqual(1e-6);
        },
      ),
      { numRuns: 25, seed: 20260, endOnFailure: true },
    );
  });

  // Without rain: a film of water on a face is in the books, but in no layer.
  it("the books' stored water is what the layers hold at the end less what they held at the start", () => {
    fc.assert(
      fc.property(layered, dailyFace(hours), dailyFace(hours), (wall, outside, inside) => {
        const result = runOne(wallProject({ ...wall, outside, inside, hours, start_C: 10, startHumidity: 0.6 }));
        const start = result.yearEndWater_kgm2[0]!;
        const end = waterAtEnd_kgm2(result, wall.layers);
        // The recorded series are single precision: 1e-7 of what the wall holds.
        expect(Math.abs(end - start - result.water.stored)).toBeLessThanOrEqual(2e-6 * Math.max(end, start) + 1e-7);
      }),
      { numRuns: 15, seed: 7, endOnFailure: true },
    );
  });

  it("a closed wall keeps its water and its heat to a millionth", () => {
    fc.assert(
      fc.property(layered, between(0.2, 0.97), (wall, startHumidity) => {
        const closed = { temperature_C: 10, heatFilm_Wm2K: 0, vapourFilm_kgm2sPa: 0 };
        const result = runOne(
          wallProject({ ...wall, outside: closed, inside: closed, hours: 24, start_C: 10, startHumidity }),
        );
        const held = result.yearEndWater_kgm2[0]!;
        expect(Math.abs(result.water.stored)).toBeLessThanOrEqual(1e-6 * held + 1e-9);
      }),
      { numRuns: 10, seed: 3, endOnFailure: true },
    );
  });
});
