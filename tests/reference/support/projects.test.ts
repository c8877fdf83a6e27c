import { describe, expect, it } from "vitest";
import { casesOf, openProject, writeProject } from "../../../solver/index.ts";
import { publishedChecks } from "../../../solver/studies/published-checks/index.ts";

describe("published checks", () => {
  it("have names of their own", () => {
    expect(new Set(publishedChecks.map((check) => check.id)).size).toBe(publishedChecks.length);
  });

  it.each(publishedChecks)("$id opens as a project file that a user could have written", (check) => {
    const project = check.project();
    const opened = openProject(writeProject(project));
    expect(opened.issues).toEqual([]);
    if (!opened.ok) throw new Error("not opened");
    expect(opened.value.project).toEqual(project);
    const cases = casesOf(opened.value.project);
    expect(cases.issues).toEqual([]);
    expect(cases.ok).toBe(true);
  });

  it.each(publishedChecks)("$id says where its answer comes from and why its tolerance is what it is", (check) => {
    expect(check.source.length).toBeGreaterThan(20);
    expect(check.tolerance.length).toBeGreaterThan(20);
    expect(check.flag).toBe("COMPUTED");
  });
});
