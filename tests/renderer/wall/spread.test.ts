import fc from "fast-check";
import { expect, test } from "vitest";
import { spread } from "../../../renderer/wall/drawing/spread.ts";

test("labels with room between them stay where they are", () => {
  expect(spread([10, 40, 90], 19, 0)).toEqual([10, 40, 90]);
});

test("labels that would touch are moved apart about their middle", () => {
  expect(spread([50, 50], 20, 0)).toEqual([40, 60]);
  expect(spread([100, 102, 104], 20, 0)).toEqual([82, 102, 122]);
});

test("no two labels touch, their order stays, and none stands above the top", () => {
  fc.assert(
    fc.property(fc.array(fc.double({ min: 0, max: 500, noNaN: true }), { maxLength: 14 }), (places) => {
      const wanted = [...places].sort((one, other) => one - other);
      const placed = spread(wanted, 19, 0);
      expect(placed).toHaveLength(wanted.length);
      placed.forEach((place, index) => {
        expect(place).toBeGreaterThanOrEqual(0);
        if (index > 0) expect(place - placed[index - 1]!).toBeGreaterThanOrEqual(19 - 1e-9);
      });
    }),
    { seed: 11 },
  );
});
