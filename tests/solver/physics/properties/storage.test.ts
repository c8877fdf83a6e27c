import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { catalogue, type Material } from "../../../../solver/index.ts";
import { highestPotential, lowestPotential } from "../../../../solver/physics/moisture-potential.ts";
import { sorptionCurve } from "../../../../solver/physics/sorption-curve.ts";
import { porous } from "./walls.ts";

const rhoR = 1000 * 461.5;
const steps = 4000;

/** Water content over the whole range rises at every step: a plateau would leave dew nowhere to go. */
function expectRising(material: Material): void {
  const { waterAt } = sorptionCurve(material, rhoR);
  const water = Array.from({ length: steps + 1 }, (_, k) =>
    waterAt(lowestPotential + ((highestPotential - lowestPotential) * k) / steps),
  );
  const falls = water.findIndex((w, k) => !(w >= (water[k - 1] ?? 0)));
  expect(falls, `${material.id} falls at step ${falls}`).toBe(-1);
  expect(water.at(-1)!).toBeGreaterThan(water[0]!);
}

/** Up to eight points, a tenth of a percent RH apart at least, as tables have them. */
const points = fc
  .uniqueArray(fc.integer({ min: 20, max: 995 }), { minLength: 1, maxLength: 8 })
  .map((perMille) => perMille.map((phi) => phi / 1000))
  .chain((humidities) =>
    fc
      .array(fc.double({ min: 0.1, max: 60, noNaN: true }), {
        minLength: humidities.length,
        maxLength: humidities.length,
      })
      .map((rises) => {
        let w = 0;
        return [...humidities].sort((a, b) => a - b).map((phi, k): [number, number] => [phi, (w += rises[k]!)]);
      }),
  );

describe("storage", () => {
  it.each(catalogue.filter((material) => material.kind === "bulk"))(
    "of $id rises from dry to saturated",
    (material) => {
      expectRising(material);
    },
  );

  it("rises whatever curve form a material gives", () => {
    fc.assert(
      fc.property(porous("any"), (material) => expectRising(material)),
      { numRuns: 100, seed: 1, endOnFailure: true },
    );
  });

  it("rises between points that rise, however they are spaced", () => {
    fc.assert(
      fc.property(points, fc.option(fc.double({ min: 1, max: 300, noNaN: true })), (relativeHumidity, above) => {
        const last = relativeHumidity.at(-1)![1];
        expectRising({
          id: "pointed",
          name: "pointed",
          kind: "bulk",
          sorption: { relativeHumidity },
          ...(above === null ? {} : { freeSaturation_kgm3: last + above }),
        });
      }),
      { numRuns: 200, seed: 2, endOnFailure: true },
    );
  });

  it("passes through the points that a material gives", () => {
    fc.assert(
      fc.property(points, (relativeHumidity) => {
        const { boundWaterAt } = sorptionCurve(
          { id: "pointed", name: "pointed", kind: "bulk", sorption: { relativeHumidity } },
          rhoR,
        );
        for (const [phi, w] of relativeHumidity) expect(boundWaterAt(-Math.log(-Math.log(phi)))).toBeCloseTo(w, 6);
      }),
      { numRuns: 200, seed: 3, endOnFailure: true },
    );
  });
});
