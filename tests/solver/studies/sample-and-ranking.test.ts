import { describe, expect, it } from "vitest";
import { latinHypercube, seededRandom } from "../../../solver/studies/space-filling.ts";
import { quantile, rankInputs } from "../../../solver/studies/ranking.ts";

describe("space-filling sample", () => {
  it("puts one point in each slice of each dimension", () => {
    const sample = latinHypercube(32, 5, 42);
    for (let dimension = 0; dimension < 5; dimension += 1) {
      const slices = sample.map((point) => Math.floor(point[dimension]! * 32)).sort((a, b) => a - b);
      expect(slices).toEqual(Array.from({ length: 32 }, (_, slice) => slice));
    }
  });

  it("is the same for the same seed and another for another", () => {
    expect(latinHypercube(8, 3, 1)).toEqual(latinHypercube(8, 3, 1));
    expect(latinHypercube(8, 3, 1)).not.toEqual(latinHypercube(8, 3, 2));
    expect(() => latinHypercube(0, 3, 1)).toThrow(/count must be/);
  });

  it("draws numbers that fill 0 to 1 evenly", () => {
    const random = seededRandom(3);
    const values = Array.from({ length: 20000 }, random);
    expect(Math.min(...values)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...values)).toBeLessThan(1);
    // Mean of n uniform numbers: standard error sqrt(1/12/n) = 0.002; five of them allowed.
    expect(Math.abs(values.reduce((sum, value) => sum + value, 0) / 20000 - 0.5)).toBeLessThan(0.0102);
  });
});

describe("ranking of inputs", () => {
  it("finds the weights of a known linear function", () => {
    const sample = latinHypercube(64, 3, 11);
    const ranking = rankInputs(
      sample,
      sample.map(([a, b, c]) => 4 * a! - 2 * b! + 0 * c! + 7),
    )!;
    // Standardised: 4 and -2 times equal spreads over the root of their squares, sqrt(20), if the columns were independent;
    // the sample's own chance correlation leaves a few hundredths.
    expect(ranking.weights[0]!).toBeCloseTo(4 / Math.sqrt(20), 1);
    expect(ranking.weights[1]!).toBeCloseTo(-2 / Math.sqrt(20), 1);
    expect(Math.abs(ranking.weights[2]!)).toBeLessThan(1e-9);
    expect(ranking.explained).toBeCloseTo(1, 9);
  });

  it("refuses to rank from too few runs or a flat output", () => {
    expect(
      rankInputs(
        [
          [1, 2],
          [2, 3],
          [3, 5],
        ],
        [1, 2, 3],
      ),
    ).toBeNull();
    expect(rankInputs([[1], [2], [3], [4]], [5, 5, 5, 5])).toBeNull();
  });

  it("reads quantiles straight between ranks", () => {
    expect(quantile([4, 1, 3, 2], 0.5)).toBe(2.5);
    expect(quantile([1, 2, 3, 4, 5], 0.1)).toBeCloseTo(1.4, 12);
    expect(quantile([], 0.5)).toBeNaN();
  });
});
