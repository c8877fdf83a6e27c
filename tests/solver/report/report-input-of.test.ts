import { describe, expect, it } from "vitest";
import {
  demoProject,
  findingsOf,
  loadsOf,
  reportInputOf,
  reportOf,
  reportText,
  weatherOf,
  type Case,
} from "../../../solver/index.ts";
import { flatResult } from "../studies/fake-result.ts";
import { demoCases } from "./report-input.ts";

const cases = demoCases();
const weather = weatherOf(demoProject.site!.weather, {});
if (!weather.ok) throw new Error("the demo's place is embedded");
const loads = loadsOf(cases[0]!, weather.value, {});
if (!loads.ok) throw new Error("the demo has loads");
const run = (aCase: Case) => {
  const result = flatResult(aCase);
  return { case: aCase, result, findings: findingsOf(aCase, result, { loads: loads.value }) };
};
const input = reportInputOf({
  project: demoProject,
  runs: cases.map(run),
  weather: weather.value,
  loads: loads.value,
  versions: { program: "0.1.0" },
  units: "ip",
});

describe("a report's input gathered from runs", () => {
  it("draws the stud bay of each option and keeps all paths", () => {
    expect(input.options.map((option) => [option.id, option.shown.path, option.paths.length])).toEqual([
      ["A", "bay", 2],
      ["B", "bay", 2],
    ]);
    expect(input.books).toHaveLength(4);
  });

  it("looks up energy and vapour on separate lines, with edition and row", () => {
    const lines = input.codeLines.filter((line) => line.option === "A");
    expect(lines.map((line) => line.subject)).toEqual(expect.arrayContaining(["vapour", "energy"]));
    for (const line of lines.filter((each) => each.subject === "energy")) expect(line.edition).toBe("IRC 2021");
  });

  it("takes the coldest month from the loads themselves", () => {
    expect([11, 0, 1]).toContain(input.winter.month);
    // Burlington's coldest month by the station's typical year, about -7 °C (SEEN in the file, to 1.5 K for the made year).
    expect(input.winter.outdoor_C).toBeGreaterThan(-10);
    expect(input.winter.outdoor_C).toBeLessThan(-4);
    expect(input.winter.room_C).toBeCloseTo(21, 0);
    expect(input.winter.roomHumidity).toBeCloseTo(0.35, 1);
  });

  it("gives the whole wall's U with its method and framing share", () => {
    const [a, b] = input.options;
    expect(b!.wholeWall!.U_Wm2K).toBeLessThan(a!.wholeWall!.U_Wm2K);
    expect(a!.wholeWall!.method).toMatch(/25 % framing/);
  });

  it("makes a report that says what was not asked", () => {
    const text = reportText(reportOf(input));
    expect(text).toMatch(/no range was run/);
    expect(text).not.toMatch(/NaN|undefined|\[object/);
  });

  it("refuses a report without runs", () => {
    expect(() =>
      reportInputOf({
        project: demoProject,
        runs: [],
        weather: weather.value,
        loads: loads.value,
        versions: {},
        units: "si",
      }),
    ).toThrow(/at least one finished run/);
  });
});
