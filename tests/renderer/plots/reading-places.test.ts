import { expect, test } from "vitest";
import { placeReadings } from "../../../renderer/plots/reading-places.ts";

const area = { width: 400, height: 200 };
const one = [{ y: 100, width: 30 }];

test("a reading stands below and right of its mark where nothing is in the way", () => {
  expect(placeReadings(one, 200, area, [])).toEqual([{ x: 208, y: 115, anchor: "start" }]);
});

test("it goes above where words stand below, and left at the right edge", () => {
  const words = { left: 190, right: 300, top: 104, bottom: 120 };
  expect(placeReadings(one, 200, area, [words])[0]).toMatchObject({ y: 93, anchor: "start" });
  expect(placeReadings(one, 390, area, [])[0]).toMatchObject({ x: 382, anchor: "end" });
});

test("readings of two close marks keep clear of each other", () => {
  const [a, b] = placeReadings(
    [
      { y: 100, width: 30 },
      { y: 104, width: 30 },
    ],
    200,
    area,
    [],
  );
  expect(a).not.toEqual(b);
  expect(Math.abs(a!.y - b!.y) >= 14 || a!.anchor !== b!.anchor).toBe(true);
});
