import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { vapourLine } from "../../../../solver/physics/steady/condensing-planes.ts";
import { airPermeability_kgmsPa } from "../../../../solver/physics/steady/index.ts";

const wall = fc
  .record({
    steps: fc.array(
      fc.record({
        sd_m: fc.double({ min: 0.01, max: 50, noNaN: true }),
        ceiling: fc.double({ min: 50, max: 4000, noNaN: true }),
        wet: fc.boolean(),
      }),
      { minLength: 1, maxLength: 12 },
    ),
    first: fc.double({ min: 50, max: 3000, noNaN: true }),
    last: fc.double({ min: 50, max: 3000, noNaN: true }),
  })
  .map(({ steps, first, last }) => {
    let sd_m = 0;
    const planes = [{ sd_m: 0, ceiling_Pa: first, wet: false }];
    for (const step of steps) {
      sd_m += step.sd_m;
      planes.push({ sd_m, ceiling_Pa: step.ceiling, wet: step.wet });
    }
    planes.push({ sd_m: sd_m + 1, ceiling_Pa: last, wet: false });
    return { planes, first, last };
  });

describe("the vapour line under saturation", () => {
  it("never rises above a ceiling and passes through every wet plane", () => {
    fc.assert(
      fc.property(wall, ({ planes, first, last }) => {
        const line = vapourLine(planes, first, last);
        planes.forEach((plane, index) => {
          expect(line.pressure_Pa[index]).toBeLessThanOrEqual(plane.ceiling_Pa * (1 + 1e-12) + 1e-9);
          if (plane.wet) expect(line.pressure_Pa[index]).toBeCloseTo(plane.ceiling_Pa, 6);
        });
      }),
      { seed: 13788, numRuns: 400 },
    );
  });

  it("gathers at its planes exactly what enters less what leaves", () => {
    fc.assert(
      fc.property(wall, ({ planes, first, last }) => {
        const line = vapourLine(planes, first, last);
        const flow = (from: number): number =>
          (airPermeability_kgmsPa * (line.pressure_Pa[from]! - line.pressure_Pa[from + 1]!)) /
          (planes[from + 1]!.sd_m - planes[from]!.sd_m);
        const gathered = line.netFlow_kgm2s.reduce((sum, one) => sum + one, 0);
        const scale = Math.abs(flow(0)) + Math.abs(flow(planes.length - 2)) + 1e-12;
        expect(Math.abs(gathered - (flow(0) - flow(planes.length - 2))) / scale).toBeLessThan(1e-9);
      }),
      { seed: 13788, numRuns: 400 },
    );
  });

  it("dries nowhere but at planes that hold water", () => {
    fc.assert(
      fc.property(wall, ({ planes, first, last }) => {
        const line = vapourLine(planes, first, last);
        planes.forEach((plane, index) => {
          if (!plane.wet) expect(line.netFlow_kgm2s[index]).toBeGreaterThanOrEqual(-1e-18);
        });
      }),
      { seed: 13788, numRuns: 400 },
    );
  });

  it("is a straight line where nothing condenses", () => {
    const planes = [0, 1, 3, 4].map((sd_m) => ({ sd_m, ceiling_Pa: 5000, wet: false }));
    expect(vapourLine(planes, 400, 1200).pressure_Pa).toEqual([400, 600, 1000, 1200]);
  });
});
