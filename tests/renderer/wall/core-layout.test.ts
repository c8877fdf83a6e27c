import { expect, test } from "vitest";
import { layOut } from "../../../renderer/wall/drawing/core-layout.ts";
import { demoProject, lookupFor, starterWalls } from "../../../solver/index.ts";

const lookup = lookupFor(demoProject);
const room = { width: 650, height: 500 };

test("cores are drawn to one named scale, true in the depth of the wall", () => {
  for (const option of demoProject.options) {
    const layout = layOut(option, lookup, room);
    // A sheet has 96 px to the inch.
    expect(layout.pxPerMetre * layout.ratio * 0.0254).toBeCloseTo(96, 9);
    expect(layout.height).toBeLessThanOrEqual(room.height);
    for (const core of layout.cores) {
      const thickness_m = core.path.layers.reduce((sum, layer) => sum + (layer.thickness_m ?? 0), 0);
      expect(core.height).toBeCloseTo(thickness_m * layout.pxPerMetre, 6);
    }
  }
});

test("the sheathing of every path lies on one line", () => {
  for (const { project } of starterWalls) {
    const own = lookupFor(project);
    for (const option of project.options) {
      const { cores, pxPerMetre } = layOut(option, own, room);
      const heights = cores.flatMap((core) => {
        const at = core.layers.findIndex((layer) => layer.id === "sheathing");
        if (at < 0) return [];
        return [core.y + core.layers.slice(0, at).reduce((sum, layer) => sum + layer.thickness_m, 0) * pxPerMetre];
      });
      for (const height of heights) expect(height).toBeCloseTo(heights[0]!, 6);
    }
  }
});

test("cores do not overlap and stay on the sheet, whatever starter wall is drawn", () => {
  for (const { project } of starterWalls) {
    for (const option of project.options) {
      const layout = layOut(option, lookupFor(project), room);
      layout.cores.forEach((core, index) => {
        const before = layout.cores[index - 1];
        if (before) expect(core.x).toBeGreaterThanOrEqual(before.x + before.width - 1e-9);
        expect(core.y).toBeGreaterThanOrEqual(0);
      });
      expect(layout.width).toBeLessThanOrEqual(room.width + 1);
    }
  }
});
