import { expect, test } from "vitest";
import {
  boundary,
  demoProject,
  editions,
  starterWalls,
  wallChecks,
  wholeWall,
  type CheckLine,
  type Option,
  type Project,
} from "../../../solver/model/index.ts";

const starter = (id: string): Project => starterWalls.find((one) => one.id === id)!.project;
const optionOf = (project: Project, id: string): Option => project.options.find((one) => one.id === id)!;
const lines = (project: Project, id: string, settings?: Parameters<typeof wallChecks>[2]): readonly CheckLine[] =>
  wallChecks(project, optionOf(project, id), settings);
const byId = (all: readonly CheckLine[], id: string): CheckLine | undefined => all.find((line) => line.id === id);

test("the 20+5 wall in zone 6 gets two lines: the energy table is met, the vapour table asks R-11.25 or a tighter retarder", () => {
  const all = lines(starter("two-by-six-foam"), "A");
  expect(byId(all, "energy")).toMatchObject({ verdict: "meets", subject: "energy", section: "Table N1102.1.3" });
  const vapour = byId(all, "vapourRetarder")!;
  expect(vapour).toMatchObject({
    verdict: "doesNotMeet",
    subject: "vapour",
    section: "Table R702.7(3)",
    limit: 11.25,
    edition: "IRC 2021",
  });
  expect(vapour.remedy).toMatch(/R-11\.25/);
  expect(vapour.remedy).toMatch(/Class II/);
  expect(byId(lines(starter("two-by-six-foam"), "B"), "vapourRetarder")!.verdict).toBe("meets");
});

test("every line names where it stands, and no starter wall makes the checks fail, in any edition", () => {
  for (const { project } of starterWalls)
    for (const option of project.options)
      for (const edition of editions)
        for (const line of wallChecks(project, option, { edition })) {
          expect(line.statement.length).toBeGreaterThan(20);
          expect(line.statement).not.toMatch(/undefined|NaN|null/);
          expect(line.source).not.toBe("");
          expect(line.flag).not.toBe("");
          if (line.holds === false) expect(line.remedy, line.statement).toBeTruthy();
        }
});

test("foil-faced foam over polyethylene: an approved design, two vapour barriers, no drying path; unfaced foam only dries slowly", () => {
  const foil = lines(starter("over-polyethylene"), "A");
  expect(byId(foil, "vapourRetarder")!.verdict).toBe("approvedDesign");
  expect(byId(foil, "twoVapourBarriers")!.statement).toContain("polyethylene");
  expect(byId(foil, "noDryingPath")!.statement).toContain("no drying path");
  const open = lines(starter("over-polyethylene"), "B");
  expect(byId(open, "twoVapourBarriers")).toBeUndefined();
  expect(byId(open, "noDryingPath")).toBeUndefined();
  expect(byId(open, "slowDrying")).toBeDefined();
});

test("stucco tight on the sheathing is told, and a drained gap ends it", () => {
  expect(byId(lines(starter("stucco"), "A"), "noDrainageGap")!.statement).toContain("without a drained gap");
  expect(byId(lines(starter("stucco"), "B"), "noDrainageGap")).toBeUndefined();
  const painted = structuredClone(starter("stucco"));
  for (const path of painted.options[0]!.paths) path.layers.unshift({ id: "finish", material: "paint_latex" });
  expect(byId(lines(painted, "A"), "noDrainageGap")).toBeDefined();
});

test("vinyl wall covering in zone 2 is not permitted, and the remedy is a more open finish", () => {
  const line = byId(lines(starter("brick-veneer"), "B"), "vapourRetarder")!;
  expect(line.verdict).toBe("doesNotMeet");
  expect(line.remedy).toContain("Class III");
});

test("solid masonry is off-table, not judged", () => {
  const all = lines(starter("solid-brick"), "B");
  expect(byId(all, "vapourRetarder")).toMatchObject({ verdict: "offTable", holds: null });
  expect(byId(all, "energy")).toMatchObject({ verdict: "offTable", holds: null });
});

test("a roof and a wall below grade are refused in words, with no verdict beside it", () => {
  for (const change of [{ tilt_deg: 30 }, { belowGrade: true }, { tilt_deg: 170 }]) {
    const project = structuredClone(demoProject);
    Object.assign(project.site!.face, change);
    const all = wallChecks(project, project.options[0]!);
    expect(all).toHaveLength(1);
    expect(all[0]).toMatchObject({ id: "scope", verdict: "outOfScope" });
    expect(all[0]!.statement).toMatch(/outside the scope/);
  }
});

test("zone 8 explains its row: shared with zone 7 to 2018, its own from 2021", () => {
  const settings = { edition: "IRC 2018", zone: "8" } as const;
  expect(byId(lines(demoProject, "B", settings), "zone8Row")!.statement).toContain("share one row");
  expect(byId(lines(demoProject, "B", { edition: "IRC 2021", zone: "8" }), "zone8Row")!.statement).toContain(
    "row of its own",
  );
});

test("the ratio rule shows its worked number and what would do", () => {
  const line = byId(lines(demoProject, "B", { edition: "IRC 2021", winter: { outdoorMean_C: -6 } }), "ratio")!;
  expect(line.measured).toBeCloseTo(10.01 / (10.01 + 19.87), 2);
  // (T_dew - T_out)/(T_in - T_out) at 21 degC, 35 % RH and -6 degC: 0.4062 (COMPUTED).
  expect(line.limit).toBeCloseTo(0.4062, 4);
  expect(line.holds).toBe(false);
  expect(line.remedy).toMatch(/R-13\.\d/);
});

test("the project may choose the edition and amend a value, and the line says that it was amended", () => {
  const project = structuredClone(demoProject);
  project.codes = {
    edition: "IRC 2024",
    amendments: { class3: { "6A": { over2x4: 5, over2x6: 10 } }, ach50: { "6": 1.5 } },
  };
  project.options[1]!.paths.forEach((path) => (path.layers = path.layers.filter((layer) => layer.id !== "retarder")));
  const all = wallChecks(project, project.options[1]!);
  expect(byId(all, "vapourRetarder")).toMatchObject({
    edition: "IRC 2024",
    verdict: "meets",
    amended: true,
    limit: 10,
  });
  expect(byId(all, "airTightness")).toMatchObject({ verdict: "doesNotMeet", limit: 1.5, amended: true });
});

test("fasteners of the option raise U by the correction and not below it", () => {
  const project = structuredClone(demoProject);
  const bare = wholeWall(project.options[1]!, project);
  project.options[1]!.fasteners = { perM2: 4.04, diameter_m: 0.0048, conductivity_WmK: 50 };
  const screwed = wholeWall(project.options[1]!, project);
  expect(screwed.fastenerCorrection_Wm2K).toBeGreaterThan(0.003);
  expect(screwed.U_Wm2K - bare.U_Wm2K).toBeCloseTo(screwed.fastenerCorrection_Wm2K, 12);
});

test("without a zone the code lines say so instead of guessing", () => {
  const project = structuredClone(demoProject);
  delete project.site!.climateZone;
  expect(byId(wallChecks(project, project.options[0]!), "zone")!.verdict).toBe("unknown");
});

test("the ledger is told as a thermal and an air break, and running the boundary behind it removes both", () => {
  const project = starter("ledger-and-rim");
  const before = boundary(optionOf(project, "A"), project).breaks.filter((one) => one.kind === "break");
  expect(before.map((one) => `${one.path}:${one.role}`).sort()).toEqual(["ledger:air", "ledger:thermal"]);
  expect(before.every((one) => one.statement.includes("Deck ledger") && one.remedy.includes("behind the ledger"))).toBe(
    true,
  );
  const after = boundary(optionOf(project, "B"), project);
  expect(after.breaks.filter((one) => one.kind === "break")).toEqual([]);
  expect(after.unbroken).toEqual({ water: true, air: true, vapour: true, thermal: true });
});

test("the band behind the porch lacks water, air and thermal control and names the bay where they stop; sheathing it first removes every finding", () => {
  const project = starter("porch-band");
  const before = boundary(optionOf(project, "A"), project).breaks;
  expect(before.map((one) => `${one.path}:${one.role}:${one.neighbour}`).sort()).toEqual([
    "band:air:bay",
    "band:thermal:bay",
    "band:water:bay",
  ]);
  expect(boundary(optionOf(project, "B"), project).breaks.filter((one) => one.path === "band")).toEqual([]);
});

test("the unsheathed band loses the most heat per area until the wall behind the porch is sheathed first", () => {
  const project = starter("porch-band");
  const worst = (id: string): string =>
    [...wholeWall(optionOf(project, id), project).paths].sort((a, b) => b.U_Wm2K - a.U_Wm2K)[0]!.id;
  expect(worst("A")).toBe("band");
  expect(worst("B")).toBe("stud");
});

test("a role that the user set stands, and a tie-in that the user denies is a break", () => {
  const project = structuredClone(demoProject);
  const bay = project.options[1]!.paths[0]!;
  bay.layers.find((layer) => layer.id === "gypsum")!.roles = ["air"];
  bay.layers.find((layer) => layer.id === "sheathing")!.roles = [];
  const report = boundary(project.options[1]!, project);
  expect(report.paths[0]!.roles.find((one) => one.role === "air")).toMatchObject({ layer: "gypsum", by: "user" });
  project.options[1]!.paths[1]!.tieIns = { to: ["bay"], water: false };
  expect(boundary(project.options[1]!, project).breaks.some((one) => one.role === "water" && one.path === "stud")).toBe(
    true,
  );
});

test("studs without continuous insulation are a bridge, not a gap, and with it they are neither", () => {
  const kinds = (id: string): string[] =>
    boundary(optionOf(demoProject, id), demoProject).breaks.map((one) => one.kind);
  expect(kinds("A")).toEqual(["bridge"]);
  expect(kinds("B")).toEqual([]);
});
