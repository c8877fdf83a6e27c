import { describe, expect, it } from "vitest";
import { comparisonSentence, findingsOf, leadSentence } from "../../../solver/assess/index.ts";
import type { Told } from "../../../solver/assess/index.ts";
import type { Course } from "./synthetic.ts";
import { caseOf, frameLayers, resultOf, swinging } from "./synthetic.ts";

const told = (course: Course, option = "A", units: "si" | "ip" = "si"): Told => {
  const aCase = caseOf(frameLayers(), { option });
  const result = resultOf(aCase, course);
  return { aCase, result, findings: findingsOf(aCase, result, { units }) };
};
const dry = told(swinging(7, 13, 6, 0.7));
const wet = told(swinging(12, 26, -4, 0.97), "B");

describe("the lead of the year", () => {
  it("says that a dry board stays dry, with one number and its month", () => {
    const lead = leadSentence(dry.aCase, dry.result, dry.findings);
    expect(lead).toMatch(/^The OSB sheathing stays dry: it peaks at 13 % in February/);
    expect(lead).not.toMatch(/safe|passed|\d\.\d\d/);
  });

  it("says how a wet board fails, by the worst harm first", () => {
    const lead = leadSentence(wet.aCase, wet.result, wet.findings);
    expect(lead).toMatch(/26 % in February/);
    expect(lead).not.toMatch(/stays dry/);
  });

  it("puts at most one number into a clause", () => {
    for (const one of [dry, wet]) {
      for (const clause of leadSentence(one.aCase, one.result, one.findings).split(/[,;:.]/)) {
        expect((clause.match(/\d+/g) ?? []).length).toBeLessThanOrEqual(1);
      }
    }
  });

  it("judges nothing where the run could not end", () => {
    const failure = {
      hour: 100,
      date: "5 October, 04:00",
      layer: "OSB sheathing",
      cause: "no convergence",
      remedy: "Check the sorption curve.",
    };
    const failed = { ...dry.result, status: "failed" as const, failure };
    expect(leadSentence(dry.aCase, failed, dry.findings)).toMatch(
      /^Not judged: .*5 October.*Check the sorption curve\.$/,
    );
    expect(leadSentence(dry.aCase, { ...dry.result, status: "stopped" }, dry.findings)).toMatch(/^Not judged/);
  });
});

describe("two options side by side", () => {
  it("sets the coldest month and the wettest board against each other", () => {
    const sentence = comparisonSentence(dry, wet);
    expect(sentence).toMatch(/^In January the inner face of the OSB sheathing averages 6 °C in A, \u22124 °C in B/);
    expect(sentence).toMatch(/A peaks at 13 % moisture, B at 26 %/);
    expect(comparisonSentence(wet, dry)).toBe(sentence);
  });

  it("speaks inch-pound on request", () => {
    expect(comparisonSentence(dry, wet, { units: "ip" })).toMatch(/43 °F in A, 25 °F in B/);
  });

  it("says so when the two fare alike", () => {
    const twin = told(swinging(7, 13, 6, 0.7), "B");
    expect(comparisonSentence(dry, twin)).toBe("A and B fare alike, as closely as a run can tell.");
  });

  it("names the paths where the option is the same", () => {
    const stud = { ...wet, aCase: { ...wet.aCase, option: "A", pathName: "Stud" } };
    expect(comparisonSentence(dry, stud)).toMatch(/in Stud bay, .* in Stud;/);
  });
});
