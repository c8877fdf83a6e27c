import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { gatherReport } from "../../../renderer/report/gather-report.ts";
import { casesOf, demoProject, programVersion, reportOf, reportText } from "../../../solver/index.ts";
import { flatResult } from "../../solver/studies/fake-result.ts";

const made = casesOf(demoProject);
if (!made.ok) throw new Error("the demo makes cases");
const runs = made.value.map((aCase) => ({ case: aCase, result: flatResult(aCase) }));
const order = {
  project: demoProject,
  runs,
  edition: "IRC 2021",
  units: "ip",
  versions: { Wallyear: programVersion },
} as const;

describe("what the worker gathers for a report", () => {
  it("is plain data that a message can carry, and makes a report", () => {
    const outcome = gatherReport(order, {});
    if (outcome.kind !== "input") throw new Error(outcome.issues[0]!.message);
    const carried = structuredClone(outcome.input);
    const report = reportOf(carried);
    expect(Object.keys(report.pages)).toContain("books");
    expect(report.titleBlock.options).toBe(demoProject.options.map(({ id }) => id).join(", "));
  });

  it("speaks of temperatures in the reader's units alone", () => {
    for (const [units, other] of [
      ["ip", /\d °C/],
      ["si", /\d °F/],
    ] as const) {
      const outcome = gatherReport({ ...order, units }, {});
      if (outcome.kind !== "input") throw new Error(outcome.issues[0]!.message);
      const { client, official } = reportOf(outcome.input).pages;
      const said = JSON.stringify([client, official.blocks[0]]);
      expect(said).not.toMatch(other);
      expect(said).not.toMatch(/degC/);
    }
  });

  it("reads the tables of the edition that is asked for", () => {
    const outcome = gatherReport({ ...order, edition: "IRC 2024" }, {});
    if (outcome.kind !== "input") throw new Error(outcome.issues[0]!.message);
    const text = reportText(reportOf(outcome.input), ["official"]);
    expect(text).toMatch(/IRC 2024/);
    expect(text).not.toMatch(/IRC 2021/);
  });

  it("says what is missing without a site, without runs, and without the weather file", () => {
    expect(gatherReport({ ...order, runs: [] }, {}).kind).toBe("issues");
    const weather = { file: "gone.epw" };
    const elsewhere = { ...demoProject, site: { ...demoProject.site!, weather } };
    const outcome = gatherReport({ ...order, project: elsewhere }, {});
    expect(outcome.kind === "issues" && outcome.issues[0]!.message).toMatch(/gone\.epw/);
  });

  it("prints the version of the package", () => {
    const read: unknown = JSON.parse(readFileSync(new URL("../../../package.json", import.meta.url), "utf8"));
    expect(read).toMatchObject({ version: programVersion });
  });
});
