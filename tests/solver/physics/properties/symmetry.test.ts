import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ProbeSeries } from "../../../../solver/index.ts";
import { runOne } from "../../../reference/support/run.ts";
import { hourly, layered, wallProject, weatheredFace, type WallCase } from "./walls.ts";

const hours = 30;

/** The wall seen from the other side. */
function mirrored(wall: WallCase, total_m: number): WallCase {
  const air = wall.physics?.airVelocity_ms;
  return {
    ...wall,
    layers: wall.layers.toReversed(),
    outside: wall.inside,
    inside: wall.outside,
    depths_m: (wall.depths_m ?? []).map((depth) => total_m - depth),
    physics:
      typeof air === "object"
        ? { ...wall.physics, airVelocity_ms: { ...air, table: air.table.map(([t, v]): [number, number] => [t, -v]) } }
        : (wall.physics ?? {}),
  };
}

const otherSide = { outside: "inside", inside: "outside" } as const;
function counterpart(probe: ProbeSeries, among: readonly ProbeSeries[], total_m: number): ProbeSeries {
  const found = among.find((other) =>
    probe.kind === "layerMean"
      ? other.kind === "layerMean" && other.layer === probe.layer
      : probe.kind === "interface"
        ? other.kind === "interface" &&
          other.layer === probe.layer &&
          probe.side !== null &&
          other.side === otherSide[probe.side]
        : other.kind === "depth" && Math.abs(other.depth_m + probe.depth_m - total_m) < 1e-9,
  );
  if (!found) throw new Error(`no counterpart of ${probe.id}`);
  return found;
}

describe("a mirrored wall between mirrored faces", () => {
  it("gives the mirrored answer", () => {
    fc.assert(
      fc.property(
        layered,
        weatheredFace(hours, true),
        weatheredFace(hours, false),
        hourly(hours, -1e-4, 1e-4),
        (layers, outside, inside, airVelocity_ms) => {
          const total = layers.layers.reduce((sum, layer) => sum + (layer.thickness_m ?? 0), 0);
          const wall: WallCase = {
            ...layers,
            outside,
            inside,
            hours,
            start_C: 12,
            startHumidity: 0.6,
            tolerance: 1e-5,
            depths_m: [0.3 * total, 0.7 * total],
            physics: { airVelocity_ms },
          };
          const there = runOne(wallProject(wall));
          const back = runOne(wallProject(mirrored(wall, total)));
          for (const probe of there.probes) {
            const other = counterpart(probe, back.probes, total);
            // Nearly all runs agree to single precision. Sums run the other way round, though, and rounding may tip whether a step is
            // accepted: then the two differ by what the step tolerance of 1e-5 allows.
            for (let k = 0; k < hours; k += 1) {
              expect(Math.abs(probe.T_C[k]! - other.T_C[k]!)).toBeLessThanOrEqual(1e-3);
              expect(Math.abs(probe.RH[k]! - other.RH[k]!)).toBeLessThanOrEqual(1e-4);
              expect(Math.abs(probe.w_kgm3[k]! - other.w_kgm3[k]!)).toBeLessThanOrEqual(2e-4 * (1 + probe.w_kgm3[k]!));
            }
          }
        },
      ),
      { numRuns: 10, seed: 5, endOnFailure: true },
    );
  });
});
