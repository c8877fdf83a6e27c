import { expect, test } from "vitest";
import {
  dropLayer,
  dropOption,
  freeLayerId,
  freeOptionLetter,
  onLayer,
  pathsWithLayer,
  putLayer,
  shiftLayer,
  shiftOption,
} from "../../../renderer/state/edits.ts";
import { copyPath, dropPath, freePathId } from "../../../renderer/state/path-edits.ts";
import { areaShares, demoProject, type Project } from "../../../solver/index.ts";

const idsOf = (project: Project, option: string, path: string): string[] =>
  project.options
    .find(({ id }) => id === option)!
    .paths.find(({ id }) => id === path)!
    .layers.map(({ id }) => id);

const thicker = (throughAll: boolean): Project =>
  onLayer("B", "bay", "ci", throughAll, (layer) => ({ ...layer, thickness_m: 0.1 }))(demoProject);

const thicknesses = (project: Project): (number | undefined)[] =>
  project.options
    .find(({ id }) => id === "B")!
    .paths.map((path) => path.layers.find(({ id }) => id === "ci")!.thickness_m);

test("a layer that runs through two paths is edited in both, or in one alone when asked", () => {
  expect(pathsWithLayer(demoProject.options[1]!, demoProject.options[1]!.paths[0]!, "ci")).toHaveLength(2);
  expect(thicknesses(thicker(true))).toEqual([0.1, 0.1]);
  expect(thicknesses(thicker(false))).toEqual([0.1, 0.0508]);
});

test("an edit leaves the project it was given and all other options untouched", () => {
  const before = structuredClone(demoProject);
  const after = thicker(true);
  expect(demoProject).toEqual(before);
  expect(after.options[0]).toBe(demoProject.options[0]);
});

test("an edit that finds nothing to change gives back the same project", () => {
  expect(onLayer("B", "bay", "nowhere", true, (layer) => ({ ...layer, thickness_m: 1 }))(demoProject)).toBe(
    demoProject,
  );
  expect(shiftLayer("A", "bay", idsOf(demoProject, "A", "bay")[0]!, -1, true)(demoProject)).toBe(demoProject);
});

test("a new layer goes inward of the chosen one, in every path through which that runs", () => {
  const layer = { id: "second", material: "xps", thickness_m: 0.0254 };
  const after = putLayer("B", "bay", "ci", true, layer)(demoProject);
  for (const path of ["bay", "stud"]) {
    const ids = idsOf(after, "B", path);
    expect(ids[ids.indexOf("ci") + 1]).toBe("second");
  }
});

test("a layer moved inward and back outward stands where it stood", () => {
  const there = shiftLayer("B", "bay", "ci", 1, true)(demoProject);
  expect(idsOf(there, "B", "bay")).not.toEqual(idsOf(demoProject, "B", "bay"));
  expect(idsOf(there, "B", "stud").indexOf("ci")).toBe(idsOf(there, "B", "bay").indexOf("ci"));
  expect(shiftLayer("B", "bay", "ci", -1, true)(there)).toEqual(demoProject);
});

test("the last layer of a path cannot be removed", () => {
  let project = demoProject;
  for (const id of idsOf(demoProject, "A", "bay")) project = dropLayer("A", "bay", id, false)(project);
  expect(idsOf(project, "A", "bay")).toHaveLength(1);
});

test("new ids and letters avoid those that are taken", () => {
  expect(freeLayerId(demoProject.options[0]!, "sheathing")).toBe("sheathing-2");
  expect(freeOptionLetter(demoProject)).toBe("C");
  const eight = { ...demoProject, options: Array.from({ length: 8 }, () => demoProject.options[0]!) };
  expect(freeOptionLetter(eight)).toBeNull();
});

test("an option can be taken out and moved, and the last one stays", () => {
  const ids = (project: Project): string[] => project.options.map(({ id }) => id);
  expect(ids(dropOption("A")(demoProject))).toEqual(["B"]);
  const last = dropOption("A")(demoProject);
  expect(dropOption("B")(last)).toBe(last);
  expect(dropOption("Z")(demoProject)).toBe(demoProject);
  expect(ids(shiftOption("B", -1)(demoProject))).toEqual(["B", "A"]);
  expect(shiftOption("B", 1)(demoProject)).toBe(demoProject);
});

test("a path is copied with a share from the widest, and its area goes back when it is taken out", () => {
  const option = (project: Project) => project.options[0]!;
  const sum = (project: Project): number => areaShares(option(project)).reduce((total, { share }) => total + share, 0);
  const id = freePathId(option(demoProject));
  const more = copyPath("A", "bay", id)(demoProject);
  expect(option(more).paths.map((path) => path.id)).toEqual([
    "bay",
    id,
    ...option(demoProject)
      .paths.slice(1)
      .map((path) => path.id),
  ]);
  expect(option(more).paths[1]!.areaShare).toBeCloseTo(0.05, 9);
  expect(sum(more)).toBeCloseTo(1, 9);
  const back = dropPath("A", id)(more);
  expect(areaShares(option(back)).map(({ share }) => share)).toEqual(
    areaShares(option(demoProject)).map(({ share }) => share),
  );
  const alone = option(demoProject)
    .paths.slice(1)
    .reduce((project, path) => dropPath("A", path.id)(project), demoProject);
  expect(dropPath("A", "bay")(alone)).toBe(alone);
});
