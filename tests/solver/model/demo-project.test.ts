import { readFileSync, writeFileSync } from "node:fs";
import { expect, test } from "vitest";
import { casesOf, demoProject, openProject, writeProject } from "../../../solver/model/index.ts";

const fixture = new URL("../../fixtures/demo.wallyear.json", import.meta.url);

test("the demo file on disk is the demo that the program carries (WRITE_FIXTURES=1 writes it anew)", () => {
  if (process.env["WRITE_FIXTURES"]) writeFileSync(fixture, writeProject(demoProject));
  expect(readFileSync(fixture, "utf8")).toBe(writeProject(demoProject));
});

test("the demo opens without a word and gives a stud bay and a stud for each of two options", () => {
  const opened = openProject(writeProject(demoProject));
  expect(opened.issues).toEqual([]);
  if (!opened.ok) throw new Error("unreachable");
  const cases = casesOf(opened.value.project);
  expect(cases.ok && cases.value.map((one) => `${one.option}-${one.pathKind}`)).toEqual([
    "A-studBay",
    "A-stud",
    "B-studBay",
    "B-stud",
  ]);
});
