import { describe, expect, it } from "vitest";
import { planeCheck } from "../../../solver/assess/index.ts";
import { materialById } from "../../../solver/materials/index.ts";
import { celsius, fahrenheit, rsiPerR } from "../../../solver/units.ts";
import { frameLayers, layer } from "./synthetic.ts";

/** A slab of insulation that resists exactly so much. */
const insulation = (id: string, R: number, thickness_m: number) =>
  layer(
    id,
    { ...materialById(id === "foam" ? "xps" : "glass_fibre_batt")!, conductivity_WmK: thickness_m / (R * rsiPerR) },
    thickness_m,
  );
const wall = (foamR: number) => ({
  layers: [
    ...frameLayers().slice(0, 2),
    insulation("foam", foamR, 0.05),
    layer("osb", "osb_111", 0.0111),
    insulation("batt", 11, 0.089),
    layer("gypsum", "gypsum_board_127", 0.0127),
  ],
});
const room = { temperature_C: celsius(70), relativeHumidity: 0.5 };

describe("the hand check on a path", () => {
  it("puts the sheathing of R-7 and R-14 foam over R-11 at 46.8 and 53.3 degF and says which stays above the dew point", () => {
    // Trade arithmetic at 32 degF outdoors, insulation only (SEEN in a trade article, which prints 47 and 53).
    const thin = planeCheck(wall(7), room, celsius(32))!;
    const thick = planeCheck(wall(14), room, celsius(32))!;
    expect(Math.abs(fahrenheit(thin.plane_C) - 46.8)).toBeLessThan(0.2);
    expect(Math.abs(fahrenheit(thick.plane_C) - 53.3)).toBeLessThan(0.2);
    expect([thin.holds, thick.holds]).toEqual([false, true]);
    expect(thin.plane).toBe("osb");
  });

  it("counts boards and films when asked, and then lands elsewhere by a little", () => {
    const only = planeCheck(wall(7), room, celsius(32))!;
    const all = planeCheck(wall(7), room, celsius(32), "everything")!;
    expect(all.outside_m2KW).toBeCloseTo(only.outside_m2KW + 0.13 + 0.0111 / 0.105, 6);
    expect(Math.abs(all.plane_C - only.plane_C)).toBeGreaterThan(0.05);
    expect(Math.abs(all.plane_C - only.plane_C)).toBeLessThan(1.5);
  });

  it("has nothing to say where nothing insulates or the weather is as warm as the room", () => {
    const bare = { layers: [layer("osb", "osb_111", 0.0111)] };
    expect(planeCheck(bare, room, 0)).toBeNull();
    expect(planeCheck(wall(7), room, 25)).toBeNull();
  });
});
