import { describe, expect, it } from "vitest";
import { demoProject } from "../../../solver/index.ts";
import {
  withBoardAsOption,
  withBoardInOption,
  type BoardToUse,
} from "../../../renderer/questions/how-thick/use-board.ts";
import { askedCase, askedLayer, insulationAsked } from "../../../renderer/questions/asking/asked-case.ts";

const thicker: BoardToUse = {
  option: "B",
  path: "bay",
  layer: "ci",
  material: "xps",
  thickness_m: 0.0635,
  words: "2 1/2 in.",
};
const thicknesses = (project: typeof demoProject, option: string): (number | undefined)[] =>
  project.options
    .find(({ id }) => id === option)!
    .paths.map((path) => path.layers.find(({ id }) => id === "ci")?.thickness_m);
const asDrawn = { place: null, humidity: null, paint_perm: null };

describe("a board put to use", () => {
  it("is made thicker in every path through which it runs, and nowhere else", () => {
    const changed = withBoardInOption(demoProject, thicker);
    expect(thicknesses(changed, "B")).toEqual([0.0635, 0.0635]);
    expect(thicknesses(changed, "A")).toEqual([undefined, undefined]);
    expect(thicknesses(demoProject, "B")).toEqual([0.0508, 0.0508]);
  });

  it("leaves the project as it is when the board is there already", () => {
    expect(withBoardInOption(demoProject, { ...thicker, thickness_m: 0.0508 })).toBe(demoProject);
  });

  it("is laid outside where none was drawn", () => {
    const changed = withBoardInOption(demoProject, { ...thicker, option: "A", layer: null });
    expect(thicknesses(changed, "A")).toEqual([0.0635, 0.0635]);
  });

  it("makes a new option under the next letter, the old one untouched", () => {
    const made = withBoardAsOption(demoProject, thicker)!;
    expect(made.letter).toBe("C");
    expect(thicknesses(made.project, "C")).toEqual([0.0635, 0.0635]);
    expect(made.project.options.find(({ id }) => id === "B")).toBe(demoProject.options[1]);
  });
});

describe("the wall that a question asks about", () => {
  it("is the one drawn when nothing is changed", () => {
    const asked = askedCase(demoProject, "B", "bay", { ...asDrawn, insulation: null });
    expect(asked.ok && askedLayer(asked.case, null)?.id).toBe("ci");
  });

  it("gets the usual board where nothing lies outside", () => {
    const drawn = askedCase(demoProject, "A", "bay", { ...asDrawn, insulation: null });
    if (!drawn.ok) throw new Error("the demo must run");
    const insulation = insulationAsked(drawn.case, null);
    expect(insulation).toBe("board:xps");
    const asked = askedCase(demoProject, "A", "bay", { ...asDrawn, insulation });
    expect(asked.ok && askedLayer(asked.case, insulation)?.material.id).toBe("xps");
  });

  it("stands in another room and at another place without the project being changed", () => {
    const asked = askedCase(demoProject, "B", "bay", {
      ...asDrawn,
      insulation: null,
      humidity: 0.42,
      place: "boston-ma",
    });
    if (!asked.ok || asked.case.exposure.kind !== "site") throw new Error("the demo must run at an embedded place");
    expect(asked.case.exposure.indoor).toMatchObject({ winterRelativeHumidity: 0.42 });
    expect(asked.case.exposure.site.weather).toMatchObject({ city: "boston-ma" });
    expect(demoProject.site?.weather).toMatchObject({ city: "burlington-vt" });
  });
});
