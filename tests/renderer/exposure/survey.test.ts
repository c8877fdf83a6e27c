import { expect, test } from "vitest";
import { surveyExposure } from "../../../renderer/exposure/survey.ts";
import { dateWords, monthsFrom } from "../../../renderer/exposure/time-axis.ts";
import { demoProject } from "../../../solver/index.ts";

const sum = (values: Float32Array): number => values.reduce((total, value) => total + value, 0);

test("the days of the year add up to what the year contains", () => {
  const outcome = surveyExposure(demoProject, {});
  if (outcome.kind !== "survey") throw new Error(outcome.issues.map(({ message }) => message).join("; "));
  const { survey } = outcome;
  expect(sum(survey.mean_C) / 365).toBeCloseTo(survey.report.annual.temperature_C, 1);
  expect(sum(survey.rain_mm)).toBeCloseTo(survey.report.annual.rain_mm, 0);
  const north = survey.faces.find((face) => face.azimuth_deg === 0)!;
  expect(sum(survey.drivingRain_kgm2)).toBeCloseTo(north.rain_kgm2, 0);
  // Daily sums of the loads against hourly sums of the sun: the same sun by two ways.
  expect(sum(survey.sun_kWhm2) / north.sun_kWhm2).toBeCloseTo(1, 2);
  survey.coldest_C.forEach((coldest, day) => expect(coldest).toBeLessThanOrEqual(survey.warmest_C[day]!));
});

test("the room stays within the humidity that the project asks for", () => {
  const outcome = surveyExposure(demoProject, {});
  if (outcome.kind !== "survey") throw new Error("no survey");
  for (const humidity of outcome.survey.roomHumidity) {
    expect(humidity).toBeGreaterThan(0.34);
    expect(humidity).toBeLessThan(0.61);
  }
});

test("a weather file that is not there is an issue with a remedy, not an exception", () => {
  const project = { ...demoProject, site: { ...demoProject.site!, weather: { file: "nowhere.epw" } } };
  const outcome = surveyExposure(project, {});
  expect(outcome.kind).toBe("issues");
  if (outcome.kind === "issues") expect(outcome.issues[0]!.remedy).not.toBe("");
});

test("an axis that begins on the first of October runs to the end of September", () => {
  const october = 273;
  const months = monthsFrom(october);
  expect(months.map(({ name }) => name).join(" ")).toBe("Oct Nov Dec Jan Feb Mar Apr May Jun Jul Aug Sep");
  expect(months.at(-1)!.to).toBe(365);
  expect([dateWords(october, 0), dateWords(october, 92), dateWords(october, 364)]).toEqual([
    "1 Oct",
    "1 Jan",
    "30 Sep",
  ]);
});

test("an axis that begins in mid-month shows that month at both ends", () => {
  const months = monthsFrom(14);
  expect([months[0], months.at(-1)]).toEqual([
    { name: "Jan", from: 0, to: 17 },
    { name: "Jan", from: 351, to: 365 },
  ]);
});
