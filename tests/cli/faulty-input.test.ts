import { readFile } from "node:fs/promises";
import { existsSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { root } from "../../electron/tools/targets.mjs";
import { demoProject, fileOf, newFolder, wall, type Ended, type Project } from "./wall.ts";

/** Every fault of the input ends with 1 and a message with a place and a remedy, never with a stack trace. */
function expectIssues(ended: Ended, ...says: RegExp[]): void {
  expect(ended.err).toMatch(/^Error at .+: .+\n {4}\S/m);
  for (const words of says) expect(ended.err).toMatch(words);
  expect(ended.err).not.toMatch(/^ +at .*[:)]\d*$/m);
  expect(ended.code).toBe(1);
}

describe("a project", () => {
  let demo: Project;
  beforeAll(async () => {
    demo = await demoProject();
  });
  const spoilt = async (spoil: (project: Project) => void): Promise<Ended> => {
    const project = structuredClone(demo);
    spoil(project);
    return wall(["run", await fileOf("spoilt.wallyear.json", JSON.stringify(project))]);
  };
  const firstLayers = (project: Project): Project["options"][0]["paths"][0]["layers"] =>
    project.options[0]!.paths[0]!.layers;

  test("that is not there", async () => expectIssues(await wall(["run", "nowhere.wallyear.json"]), /no such file/));
  test("that is a folder", async () => expectIssues(await wall(["run", await newFolder()]), /folder/));
  test("that is no JSON names line and column", async () =>
    expectIssues(await wall(["run", await fileOf("a.json", '{ "format": "wallyear",\n  "name": }')]), /line 2/));
  test("with NaN in it", async () =>
    expectIssues(await wall(["run", await fileOf("a.json", JSON.stringify(demo).replace("0.0111", "NaN"))])));
  test("with a layer of no thickness names the layer", async () =>
    expectIssues(
      await spoilt((project) => (firstLayers(project).find(({ id }) => id === "sheathing")!.thickness_m = 0)),
      /sheathing|layer/i,
    ));
  test("with a material that the catalogue does not know", async () =>
    expectIssues(await spoilt((project) => (firstLayers(project)[0]!.material = "unobtainium")), /unobtainium/));
  test("with a million layers", async () => {
    const layer = JSON.stringify({ id: "x", material: "osb_111", thickness_m: 0.01 });
    const text = JSON.stringify(demo).replace('"layers":[', `"layers":[${`${layer},`.repeat(1_000_000)}`);
    expectIssues(await wall(["check", await fileOf("a.json", text)]));
  });
  test("with several faults tells all of them at once", async () => {
    const ended = await spoilt((project) => {
      firstLayers(project)[0]!.material = "unobtainium";
      firstLayers(project).find(({ id }) => id === "sheathing")!.thickness_m = -1;
    });
    expectIssues(ended, /unobtainium/, /thickness/i);
  });
  test("that names a weather file which is not beside it", async () =>
    expectIssues(await spoilt((project) => (project.site.weather = { file: "missing.epw" })), /missing\.epw/));
});

const burlington = join(root, "..", "shared", "climate", "USA_VT_Burlington.Intl.AP.726170_TMY3.epw");

describe.skipIf(!existsSync(burlington) && process.env["CI"] === undefined)("a weather file", () => {
  let epw: string;
  beforeAll(async () => {
    epw = await readFile(burlington, "utf8");
  });
  const runWith = async (text: string): Promise<Ended> =>
    wall(["run", "demo", "--option", "A", "--path", "bay", "--years", "1", "--weather", await fileOf("a.epw", text)]);

  test("that ends in mid-year", async () => expectIssues(await runWith(epw.slice(0, Math.floor(epw.length / 2)))));
  test("that ends after its heading", async () => expectIssues(await runWith(epw.split("\n").slice(0, 8).join("\n"))));
  test("with columns missing", async () =>
    expectIssues(
      await runWith(
        epw
          .split("\n")
          .map((line, index) => (index < 8 ? line : line.split(",").slice(0, 7).join(",")))
          .join("\n"),
      ),
    ));
  test("that is empty", async () => expectIssues(await runWith("")));
  test("that is not text", async () => {
    const bytes = Array.from({ length: 5000 }, (_, index) => String.fromCharCode((index * 7919) % 256)).join("");
    expectIssues(await runWith(bytes));
  });
  test("with rain no place on earth has is read, and its rain doubted against the place's normal", async () => {
    const flooded = epw.split("\n").map((line, index) => {
      const cells = line.split(",");
      if (index >= 8 && cells.length > 33) cells[33] = "5";
      return cells.join(",");
    });
    const { code, out } = await wall(["weather", await fileOf("flood.epw", flooded.join("\n"))]);
    expect(out).toMatch(/^Doubt about the rain: /m);
    expect(code).toBe(0);
  });
  test("is checked by the weather command alike", async () => {
    const { code, err } = await wall(["weather", await fileOf("a.epw", epw.slice(0, 200_000))]);
    expect(err).toMatch(/^Error at /m);
    expect(code).toBe(1);
  });
});
