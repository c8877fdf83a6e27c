import { describe, expect, it } from "vitest";
import { isolines, labelPlace, reach_days } from "../../../renderer/plots/isolines.ts";
import { placeLabels } from "../../../renderer/plots/label-places.ts";
import { niceRange, niceTicks } from "../../../renderer/plots/nice-range.ts";
import { evenField, smoothedInTime, type EvenField } from "../../../renderer/plots/through-wall.ts";
import { depthScale, layerSpans } from "../../../renderer/plots/wall-depths.ts";
import type { CaseLayer, ThroughWallMap } from "../../../solver/index.ts";

const layer = (id: string, thickness_m: number): CaseLayer => ({
  id,
  name: id,
  material: { id, name: id, kind: thickness_m > 0 ? "bulk" : "membrane" },
  thickness_m,
  contact: null,
  airChangesPerHour: null,
  initial: { relativeHumidity: 0.5 },
});

function fieldOf(rows: number, days: number, value: (row: number, day: number) => number): EvenField {
  const values = new Float32Array(rows * days);
  for (let row = 0; row < rows; row++) for (let day = 0; day < days; day++) values[row * days + day] = value(row, day);
  return { rows, days, values };
}

describe("through-wall field", () => {
  const spans = layerSpans([layer("a", 0.1), layer("sheet", 0), layer("b", 0.1)]);
  const map = (values: number[]): ThroughWallMap => ({
    days: 1,
    depth_m: Float32Array.of(0.025, 0.075, 0.125, 0.175),
    T_C: new Float32Array(4),
    RH: new Float32Array(4),
    w_kgm3: Float32Array.from(values),
  });

  it("never blends across a face: water content jumps there", () => {
    const m = map([1, 1, 100, 100]);
    expect([...evenField(m, m.w_kgm3, spans, 8).values]).toEqual([1, 1, 1, 1, 100, 100, 100, 100]);
  });

  it("runs straight between depths within a layer and holds the last value to its face", () => {
    const m = map([0, 10, 50, 50]);
    const [first, second, third, fourth] = evenField(m, m.w_kgm3, spans, 8).values;
    expect(first).toBeCloseTo(0, 5);
    expect(second).toBeCloseTo(2.5, 4);
    expect(third).toBeCloseTo(7.5, 4);
    expect(fourth).toBeCloseTo(10, 4);
  });

  it("smooths over days without bridging a gap in the data", () => {
    const smooth = smoothedInTime(
      fieldOf(1, 5, (_row, day) => (day === 2 ? NaN : day)),
      3,
    );
    expect(smooth.values[2]).toBeNaN();
    expect(smooth.values[1]).toBeCloseTo(0.5, 6);
  });
});

describe("isolines", () => {
  it("lie where a plane crosses the level, exactly", () => {
    const [line, ...others] = isolines(
      fieldOf(20, 30, (row) => row + 0.5),
      7.25,
    );
    expect(others).toEqual([]);
    expect(line!.closed).toBe(false);
    line!.y.forEach((y) => expect(y).toBeCloseTo(7.25, 5));
    expect(reach_days(line!)).toBeCloseTo(29, 5);
  });

  it("close around a hill, within a hundredth of its circle's area", () => {
    const size = 81;
    const lines = isolines(
      fieldOf(size, size, (row, day) => -((row - 40) ** 2) - (day - 40) ** 2),
      -900,
    );
    expect(lines).toHaveLength(1);
    const { x, y, closed } = lines[0]!;
    expect(closed).toBe(true);
    let doubled = 0;
    for (let i = 1; i < x.length; i++) doubled += x[i - 1]! * y[i]! - x[i]! * y[i - 1]!;
    // Area of a circle of radius 30; straight cuts lie inside of it.
    expect(Math.abs(doubled) / 2 / (Math.PI * 900)).toBeGreaterThan(0.99);
    expect(Math.abs(doubled) / 2 / (Math.PI * 900)).toBeLessThan(1.001);
  });

  it("stop at a gap in the data", () => {
    const lines = isolines(
      fieldOf(10, 30, (row, day) => (day === 15 ? NaN : row)),
      4.5,
    );
    expect(lines).toHaveLength(2);
  });

  it("keep their words off lines too short to carry them", () => {
    expect(labelPlace({ x: [1, 2, 3], y: [1, 1, 1], closed: false }, 20, 365)).toBeNull();
  });
});

describe("places for words", () => {
  it("do not overlap one another, and lie inside of the chart", () => {
    const x = Array.from({ length: 200 }, (_, i) => 3 * i);
    const tracks = [30, 34, 38, 90].map((y) => ({ x, y: x.map(() => y), width: 70 }));
    const places = placeLabels(tracks, { left: 0, right: 600, top: 0, bottom: 120 }, 12);
    places.forEach((place, i) => {
      expect(place.y).toBeGreaterThanOrEqual(6);
      expect(place.y).toBeLessThanOrEqual(114);
      places.slice(i + 1).forEach((other) => {
        expect(Math.abs(place.x - other.x) >= 70 || Math.abs(place.y - other.y) >= 12).toBe(true);
      });
    });
  });
});

describe("scales of drawings and axes", () => {
  it("draw the wall at the largest named scale that fits", () => {
    // 9.75 in. at 1:3 and 96 dots an inch is 312 px.
    expect(depthScale(9.75 * 0.0254, 312.5)).toEqual({ oneTo: 3, height_px: expect.closeTo(312, 6) as number });
    expect(depthScale(9.75 * 0.0254, 311).oneTo).toBe(4);
    expect(depthScale(9.75 * 0.0254, 470).oneTo).toBe(2);
  });

  it("round to ticks that hold the values", () => {
    expect(niceRange(8.2, 18.7, 4).ticks).toEqual([8, 12, 16, 20]);
    expect(niceTicks(7.5, 21, 4)).toEqual([8, 12, 16, 20]);
    expect(niceRange(3, 3, 4).ticks.length).toBeGreaterThan(1);
  });
});
