import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import {
  casesOf,
  caseHash,
  demoProject,
  openProject,
  starterWalls,
  writeProject,
  type Project,
} from "../../../solver/model/index.ts";
import type { Issue } from "../../../climate/index.ts";

type Loose = Record<string, any>; // eslint-disable-line @typescript-eslint/no-explicit-any
const demo = (): Loose => JSON.parse(writeProject(demoProject)) as Loose;
const issuesOf = (value: unknown): readonly Issue[] =>
  openProject(typeof value === "string" ? value : JSON.stringify(value)).issues;
const changed = (change: (file: Loose) => void): Loose => {
  const file = demo();
  change(file);
  return file;
};
const layer = (file: Loose, n: number): Loose => file["options"][0].paths[0].layers[n] as Loose;
const one = (value: unknown): Issue => {
  const issues = issuesOf(value);
  expect(issues.map((issue) => `${issue.path}: ${issue.message}`)).toHaveLength(1);
  expect(issues[0]!.remedy.length).toBeGreaterThan(5);
  return issues[0]!;
};

test("a thickness of zero is told by layer, material and remedy", () => {
  const issue = one(changed((file) => (layer(file, 3)["thickness_m"] = 0)));
  expect(issue.path).toBe("options.A.paths.bay.layers.4.thickness_m");
  expect(issue.message).toBe("Option A, path bay (stud bay), layer 4, OSB sheathing: thickness is 0 mm");
  expect(issue.remedy).toBe("Enter a value above 0 mm.");
});

test("millimetres written as metres are recognised", () => {
  const issue = one(changed((file) => (layer(file, 4)["thickness_m"] = 140)));
  expect(issue.message).toContain("140 m");
  expect(issue.remedy).toContain("140 mm is 0.14");
});

test("inches written as metres are recognised", () => {
  expect(one(changed((file) => (layer(file, 4)["thickness_m"] = 5.5))).remedy).toContain("5.5 in. is 0.1397");
});

test.each([
  ["a negative thickness", (file: Loose) => (layer(file, 0)["thickness_m"] = -0.1), "thickness is -100 mm"],
  ["a missing thickness", (file: Loose) => delete layer(file, 0)["thickness_m"], "thickness is missing"],
  ["an unknown material", (file: Loose) => (layer(file, 3)["material"] = "osb_11"), "not in the catalogue"],
  ["a leak to nowhere", (file: Loose) => (file["options"][0].paths[0].leaks[0].to = "attic"), "no layer of this path"],
  [
    "rain that leaks to nowhere",
    (file: Loose) => (file["site"].rain = { leakShare: 0.01, leakTo: "attic" }),
    "no layer of any path",
  ],
  ["shares that do not add up", (file: Loose) => (file["options"][0].paths[0].areaShare = 0.9), "add up to 1.150"],
  ["a probe beyond the wall", (file: Loose) => (file["options"][0].paths[0].probes = [{ depth_m: 1 }]), "the wall is"],
  ["two layers of one id", (file: Loose) => (layer(file, 1)["id"] = "cladding"), "used by two layers"],
  ["two options of one name", (file: Loose) => (file["options"][1].id = "A"), "two options are named A"],
  ["neither site nor laboratory", (file: Loose) => delete file["site"], "neither a site nor laboratory"],
  ["no indoor climate", (file: Loose) => delete file["indoor"], "indoor climate is missing"],
  ["a humidity in per cent", (file: Loose) => (file["indoor"].winterRelativeHumidity = 35), "is 35"],
  ["a day that does not exist", (file: Loose) => (file["run"].start = "02-30"), "no day of the year"],
  ["an empty list of options", (file: Loose) => (file["options"] = []), "list of options"],
  ["a roof", (file: Loose) => (file["site"].face.tilt_deg = 20), "roofs are outside the scope"],
  [
    "more start water than the wood holds",
    (file: Loose) => (layer(file, 3)["initial"] = { moistureContent_percent: 200 }),
    "holds 470.0 kg/m3 at most",
  ],
  [
    "air changes in a board",
    (file: Loose) => (layer(file, 3)["ventilation"] = { airChangesPerHour: 5 }),
    "no air space",
  ],
  ["a wrong kind of path", (file: Loose) => (file["options"][0].paths[0].kind = "roof"), 'kind is "roof"'],
  [
    "a driven leak without a blower-door result",
    (file: Loose) => (delete file["air"], (file["options"][0].paths[0].leaks[0].flow_m3hm2 = "driven")),
    "air tightness",
  ],
])("%s is one issue, with its place and what would be valid", (_, change, words) => {
  expect(one(changed(change as (file: Loose) => void)).message).toContain(words);
});

test("both a site and laboratory faces are refused, and a face without humidity is named", () => {
  const face = { temperature_C: 20, heatFilm_Wm2K: "held", vapourFilm_kgm2sPa: "held" };
  const issues = issuesOf(
    changed(
      (file) =>
        (file["lab"] = {
          outside: { ...face, relativeHumidity: 1.4 },
          inside: face,
          duration_h: 10,
          initialTemperature_C: 20,
        }),
    ),
  );
  const all = issues.map((issue) => issue.message).join("\n");
  expect(all).toContain("both a site and laboratory faces");
  expect(all).toContain("relative humidity at the outer face is 1.4");
  expect(all).toContain("the inner face has no humidity");
});

test("every problem is told at once, those of the schema and those behind it", () => {
  const issues = issuesOf(
    changed((file) => {
      layer(file, 0)["thickness_m"] = "thick";
      layer(file, 3)["material"] = "osb_11";
      file["options"][1].paths[1].kind = "roof";
      file["site"].weather = {};
      file["options"][1].paths[0].layers[2].thickness_m = 0;
    }),
  );
  expect(issues.length).toBe(5);
  for (const issue of issues) expect(issue.remedy).not.toBe("");
});

test("text that is no project is refused with line and column", () => {
  expect(one('{ "format": "wallyear",\n  "x": NaN }')).toMatchObject({
    path: "line 2, column 8",
    remedy: "Give a finite number.",
  });
  expect(one("").message).toContain("ends too early");
  expect(one('{"format": "wallyear", "formatVersion": 1').message).toContain("ends too early");
  expect(one("PK\u0003\u0004 binary").path).toBe("line 1, column 1");
  expect(one("[1, 2,]").message).toContain('"]"');
  expect(one("{'a': 1}").message).toContain("name of a field");
  expect(one('{"a": 01}').message).toContain("number goes on");
  expect(one("[]").message).toContain("no project");
  expect(one('{"format":"other"}').path).toBe("format");
});

test("hostile JSON is refused without a crash: deep nesting, a million layers, reaching field names, numbers beyond range", () => {
  expect(one("[".repeat(1e6)).message).toContain("nested");
  expect(one(`{"format":"wallyear","formatVersion":1,"a":${"[".repeat(200)}${"]".repeat(200)}}`).message).toContain(
    "nested",
  );
  expect(
    one(changed((file) => (file["options"][0].paths[0].layers = Array.from({ length: 1e6 }, () => ({ id: "x" })))))
      .message,
  ).toContain("1000000 layers");
  expect(
    one(writeProject(demoProject).replace('"name"', '"__proto__": { "polluted": true }, "name"')).message,
  ).toContain("__proto__");
  expect(({} as Loose)["polluted"]).toBeUndefined();
  expect(issuesOf(writeProject(demoProject).replace("0.019", "1e999"))[0]!.message).toContain("beyond the range");
});

test("a file of a newer version opens for reading only, says so, and keeps its version and fields when written", () => {
  const opened = openProject(JSON.stringify({ ...demo(), formatVersion: 2, novelty: { deep: [1] } }));
  if (!opened.ok) throw new Error(JSON.stringify(opened.issues));
  expect(opened.value.readOnly).toBe(true);
  expect(opened.value.reason).toContain("version 2");
  expect(opened.issues[0]!.severity).toBe("warning");
  expect(JSON.parse(writeProject(opened.value.project))).toMatchObject({ formatVersion: 2, novelty: { deep: [1] } });
});

test("a file of the draft version is brought forward: one wall becomes an option, millimetres become metres, unknown fields stay", () => {
  const opened = openProject(readFileSync(new URL("./fixtures/version-0.wallyear.json", import.meta.url), "utf8"));
  if (!opened.ok) throw new Error(JSON.stringify(opened.issues));
  expect(opened.value.readOnly).toBe(false);
  expect(opened.value.project.options.map((option) => option.id)).toEqual(["A"]);
  expect(opened.value.project.options[0]!.paths[0]!.layers[0]!.thickness_m).toBeCloseTo(0.019, 12);
  expect(JSON.parse(writeProject(opened.value.project))).toMatchObject({ formatVersion: 1, kept: 1 });
});

test("a material written out wrongly is told by layer, name, property and remedy", () => {
  const own = {
    id: "mine",
    name: "Own board",
    kind: "bulk",
    density_kgm3: 600,
    heatCapacity_JkgK: 1500,
    conductivity_WmK: 0.1,
    vapour: { resistanceFactor: 10 },
    sorption: { slope_kgm3: 1 },
  };
  const told = (material: Loose): string => one(changed((file) => (layer(file, 3)["material"] = material))).message;
  expect(told({ ...own, density_kgm3: -5 })).toBe(
    "Option A, path bay (stud bay), layer 4, Own board: density is -5 kg/m3",
  );
  expect(told({ ...own, sorption: undefined })).toBe(
    "Option A, path bay (stud bay), layer 4, Own board: sorption curve is missing",
  );
  expect(told({ ...own, sorption: { relativeHumidity: [[0.5, 40], [0.8, 30]] } })).toContain("falls from 40 to 30"); // prettier-ignore
  expect(told({ ...own, kind: "fluid" })).toContain('kind is "fluid"');
});

test("unknown fields survive a round trip at every level", () => {
  let count = 0;
  const sprinkle = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(sprinkle);
    if (typeof value !== "object" || value === null) return value;
    return {
      ...Object.fromEntries(Object.entries(value).map(([key, field]) => [key, sprinkle(field)])),
      [`extra${count++}`]: { kept: [count, "Ü\u2028", null] },
    };
  };
  const file = sprinkle(demo());
  expect(count).toBeGreaterThan(40);
  const opened = openProject(JSON.stringify(file));
  if (!opened.ok) throw new Error(JSON.stringify(opened.issues));
  expect(JSON.parse(writeProject(opened.value.project))).toEqual(file);
});

test("every starter wall opens without an error, at least twelve of them, each with its own id and a sentence", () => {
  expect(starterWalls.length).toBeGreaterThanOrEqual(12);
  expect(new Set(starterWalls.map((wall) => wall.id)).size).toBe(starterWalls.length);
  for (const wall of starterWalls) {
    const opened = openProject(writeProject(wall.project));
    expect(opened.issues, wall.id).toEqual([]);
    expect(casesOf(wall.project).ok).toBe(true);
    expect(wall.sentence.length).toBeGreaterThan(30);
  }
});

test("equal cases have equal keys whatever the order of their fields; a thickness, a weather or a start state changes the key, a name does not", () => {
  const keys = (project: Project, extra = "w"): string[] => {
    const cases = casesOf(project);
    if (!cases.ok) throw new Error("unreachable");
    return cases.value.map((aCase) => caseHash(aCase, extra));
  };
  const shuffled = (value: unknown): unknown =>
    Array.isArray(value)
      ? value.map(shuffled)
      : typeof value === "object" && value !== null
        ? Object.fromEntries(
            Object.entries(value)
              .reverse()
              .map(([key, field]) => [key, shuffled(field)]),
          )
        : value;
  const base = keys(demoProject);
  expect(new Set(base).size).toBe(4);
  expect(base[0]).toMatch(/^[0-9a-f]{64}$/);
  expect(keys(shuffled(demoProject) as Project)).toEqual(base);
  expect(keys({ ...demoProject, name: "Another name" })).toEqual(base);
  expect(keys(demoProject, "other weather")[0]).not.toBe(base[0]);
  const thicker = structuredClone(demoProject);
  thicker.options[1]!.paths[0]!.layers[2]!.thickness_m = 0.0762;
  expect(keys(thicker).map((key, i) => key === base[i])).toEqual([true, true, false, true]);
});

test("start states: delivered is 80 % RH (ANSI/ASHRAE 160, from memory), masonry 90 %, rained-on sheathing 25 % by mass, a layer's own figure goes first", () => {
  const project = structuredClone(demoProject);
  const initials = (): Record<string, unknown> => {
    const cases = casesOf(project);
    if (!cases.ok) throw new Error(JSON.stringify(cases.issues));
    return Object.fromEntries(cases.value[0]!.layers.map((one) => [one.id, one.initial]));
  };
  expect(initials()["sheathing"]).toEqual({ relativeHumidity: 0.8 });
  project.run.initial = "rainedOn";
  expect(initials()["sheathing"]).toEqual({ water_kgm3: 0.25 * 650 });
  expect(initials()["cavity"]).toEqual({ relativeHumidity: 0.8 });
  project.run.initial = "dry";
  expect(initials()["sheathing"]).toEqual({ relativeHumidity: 0.5 });
  project.options[0]!.paths[0]!.layers[3]!.initial = { moistureContent_percent: 20 };
  expect(initials()["sheathing"]).toEqual({ water_kgm3: 130 });
  project.run.initial = "delivered";
  project.options[0]!.paths[0]!.layers[0] = { id: "cladding", material: "brick_veneer", thickness_m: 0.09 };
  expect(initials()["cladding"]).toEqual({ relativeHumidity: 0.9 });
});

test("a board whose facers govern keeps its permeance at any thickness; an air space takes the resistance of its depth (ISO 6946: 0.18 m2 K/W from 25 mm)", () => {
  const project = structuredClone(demoProject);
  const resistance = (thickness_m: number): number => {
    project.options[1]!.paths[0]!.layers[2] = { id: "ci", material: "pir_foil", thickness_m };
    const cases = casesOf(project);
    if (!cases.ok) throw new Error("unreachable");
    const { material } = cases.value[2]!.layers[2]!;
    const factor = (material.vapour as { resistanceFactor: [number, number][] }).resistanceFactor[0]![1];
    return factor * thickness_m;
  };
  expect(resistance(0.025)).toBeCloseTo(resistance(0.1), 6);
  project.options[0]!.paths[0]!.layers[1] = { id: "gap", material: "air_6", thickness_m: 0.025 };
  const cases = casesOf(project);
  if (!cases.ok) throw new Error("unreachable");
  expect(cases.value[0]!.layers[1]!.material.thermalResistance_m2KW).toBeCloseTo(0.183, 3);
});
