import { describe, expect, it } from "vitest";
import type { Layer, MemberSummary } from "../../solver/index.ts";
import { casesFrom, runCase } from "./run.ts";
import { board, cavity, lining, projectOf, sheathing, type Board, type Retarder } from "./walls.ts";

/**
 * Brick veneer wetted by rain and warmed by the sun in zone 2A, the room cooled. Common practice, no source: the sun drives the
 * stored rain inward; where a tight finish stops it the lining stays wet. Class I and II inside are not permitted in zones 1 and 2
 * (IRC 2021 Table R702.7(2), SEEN).
 */
interface BrickWall {
  readonly sheathing: "fibreboard" | "osb";
  readonly retarder: Retarder;
  readonly foam?: Board;
  readonly airChanges?: number;
}

function brickWall(wall: BrickWall): MemberSummary {
  const panel: Layer =
    wall.sheathing === "osb" ? sheathing : { id: "sheathing", material: "fibreboard_sheathing", thickness_m: 0.0127 };
  const layers: Layer[] = [
    { id: "brick", material: "brick_veneer", thickness_m: 0.09 },
    {
      id: "gap",
      material: "vent_cavity_25_brick",
      thickness_m: 0.025,
      ventilation: { airChangesPerHour: wall.airChanges ?? 1 },
    },
    ...(wall.foam === undefined ? [] : board(wall.foam, 5)),
    { id: "paper", material: "building_paper_60" },
    panel,
    cavity("2x4"),
    ...lining(wall.retarder),
  ];
  const project = projectOf({ zone: "2A", layers, azimuth_deg: 180 });
  const cooled = {
    method: "seasonal",
    winterTemperature_C: 21,
    summerTemperature_C: 23.5,
    winterRelativeHumidity: 0.4,
    summerRelativeHumidity: 0.5,
  } as const;
  const face = { ...project.site!.face, solarAbsorptance: 0.7, height_m: 5, shelter: "severe" as const };
  return runCase(casesFrom({ ...project, indoor: cooled, site: { ...project.site!, face } })[0]!).summary;
}

describe("wet brick in hot sun, the room cooled", () => {
  it("behind fibreboard paint stays well below vinyl and plastic sheet", () => {
    const paint = brickWall({ sheathing: "fibreboard", retarder: "paint10" });
    for (const retarder of ["vinyl", "poly"] as const) {
      const tight = brickWall({ sheathing: "fibreboard", retarder });
      expect(tight.liningSevenDayHumidity).toBeGreaterThan(paint.liningSevenDayHumidity + 0.03);
      expect(tight.liningHoursAbove95).toBeGreaterThan(paint.liningHoursAbove95);
    }
  });

  it("fibreboard and plastic sheet: above 95 % at the sheet for more than 500 hours", () => {
    expect(brickWall({ sheathing: "fibreboard", retarder: "poly" }).liningHoursAbove95).toBeGreaterThan(500);
  });

  it("with paint, a foam board or strand board under the brick keeps the lining below 80 %", () => {
    expect(
      brickWall({ sheathing: "fibreboard", retarder: "paint10", foam: "xps" }).liningSevenDayHumidity,
    ).toBeLessThan(0.8);
    expect(brickWall({ sheathing: "osb", retarder: "paint10" }).liningSevenDayHumidity).toBeLessThan(0.8);
  });

  it("a vented space behind the brick lowers the lining's humidity", () => {
    const still = brickWall({ sheathing: "fibreboard", retarder: "poly" });
    const vented = brickWall({ sheathing: "fibreboard", retarder: "poly", airChanges: 20 });
    expect(vented.liningHoursAbove95).toBeLessThan(still.liningHoursAbove95);
  });
});
