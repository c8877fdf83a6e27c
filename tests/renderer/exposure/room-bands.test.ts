import { expect, test } from "vitest";
import { bandsOf } from "../../../renderer/exposure/room-bands.ts";

test("days are sorted into bands of 5 K by their outdoor mean, coldest first, and none is lost", () => {
  const mean_C = Float32Array.from([-7, -6, 0, 4.9, 5, 21]);
  const roomHumidity = Float32Array.from([0.3, 0.4, 0.5, 0.6, 0.6, 0.7]);
  const bands = bandsOf({ mean_C, roomHumidity });
  expect(bands.map(({ from_C, days }) => [from_C, days])).toEqual([
    [-10, 2],
    [0, 2],
    [5, 1],
    [20, 1],
  ]);
  expect(bands[0]!.mean).toBeCloseTo(0.35, 6);
});
