import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { runOne } from "../../../reference/support/run.ts";
import { between, hourly, layered, wallProject } from "./walls.ts";

const hours = 24;
/** Largest share of the range by which a temperature may leave it: the local error that a default step allows. */
const slack = 1e-3;

describe("pure conduction", () => {
  it("never makes a place hotter than the hottest, or colder than the coldest, of start and surroundings", () => {
    fc.assert(
      fc.property(
        layered,
        hourly(hours, -20, 40),
        hourly(hours, 10, 30),
        between(-20, 40),
        fc.boolean(),
        (wall, outsideCourse, insideCourse, start_C, held) => {
          const result = runOne(
            wallProject({
              ...wall,
              outside: { temperature_C: outsideCourse, heatFilm_Wm2K: held ? "held" : 20, vapourFilm_kgm2sPa: 0 },
              inside: { temperature_C: insideCourse, heatFilm_Wm2K: 8, vapourFilm_kgm2sPa: 0 },
              hours,
              start_C,
              startHumidity: 0.5,
              physics: { moisture: false },
            }),
          );
          const met = [start_C, ...outsideCourse.table.map(([, T]) => T), ...insideCourse.table.map(([, T]) => T)];
          const [low, high] = [Math.min(...met), Math.max(...met)];
          const give = slack * (high - low);
          for (const probe of result.probes)
            for (const T of probe.T_C) {
              expect(T).toBeGreaterThanOrEqual(low - give);
              expect(T).toBeLessThanOrEqual(high + give);
            }
        },
      ),
      { numRuns: 40, seed: 11, endOnFailure: true },
    );
  });

  it("cools from one face without a wiggle: temperature falls towards the cold face at every hour", () => {
    fc.assert(
      fc.property(layered, (wall) => {
        const total = wall.layers.reduce((sum, layer) => sum + (layer.thickness_m ?? 0), 0);
        const depths_m = Array.from({ length: 9 }, (_, k) => ((k + 1) / 10) * total);
        const result = runOne(
          wallProject({
            ...wall,
            outside: { temperature_C: 0, heatFilm_Wm2K: "held", vapourFilm_kgm2sPa: 0 },
            inside: { temperature_C: 20, heatFilm_Wm2K: 0, vapourFilm_kgm2sPa: 0 },
            hours,
            start_C: 20,
            startHumidity: 0.5,
            depths_m,
            physics: { moisture: false },
          }),
        );
        const across = result.probes.filter((probe) => probe.kind === "depth").sort((a, b) => a.depth_m - b.depth_m);
        expect(across).toHaveLength(9);
        for (let k = 0; k < result.hours; k += 1)
          for (let i = 1; i < across.length; i += 1)
            expect(across[i]!.T_C[k]! - across[i - 1]!.T_C[k]!).toBeGreaterThanOrEqual(-slack * 20);
      }),
      { numRuns: 20, seed: 12, endOnFailure: true },
    );
  });
});
