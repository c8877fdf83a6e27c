import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { newFolder, wall } from "./wall.ts";

test("checks runs a published case and tells figure by figure how it compares", async () => {
  const { code, out } = await wall(["checks", "slab-two-temperatures", "--json"]);
  expect(code).toBe(0);
  const { checks } = JSON.parse(out) as {
    checks: { source: string; holds: boolean; rows: { expected: number; got: number; tolerance: number }[] }[];
  };
  expect(checks).toHaveLength(1);
  expect(checks[0]!.source).toMatch(/Carslaw and Jaeger/);
  for (const { expected, got, tolerance } of checks[0]!.rows)
    expect(Math.abs(got - expected)).toBeLessThanOrEqual(tolerance);
});

test("checks of an unknown name says which there are", async () => {
  const { code, err } = await wall(["checks", "perpetual-motion"]);
  expect(code).toBe(64);
  expect(err).toContain("hamstad-2");
});

test("drying wets a layer and tells how long it takes and which way the water leaves", async () => {
  const { code, out } = await wall([
    "drying",
    "demo",
    "--layer",
    "sheathing",
    "--moisture",
    "25",
    "--option",
    "A",
    "--json",
  ]);
  expect(code).toBe(0);
  const { answers } = JSON.parse(out) as {
    answers: { lead: string; rows: { times: { threshold_percent: number; first_days: number | null }[] }[] }[];
  };
  const days = (threshold: number): number =>
    answers[0]!.rows[0]!.times.find((time) => time.threshold_percent === threshold)?.first_days ?? Infinity;
  expect(days(20)).toBeGreaterThan(0);
  expect(days(16)).toBeGreaterThanOrEqual(days(20));
  expect(answers[0]!.lead).toMatch(/^[A-Z].*\d.*\.$/);
});

test("report writes a page that fetches nothing, and a PDF of it", async () => {
  const folder = await newFolder();
  const words = ["report", "demo", "--option", "B", "--years", "1", "--out"];
  const html = await wall([...words, join(folder, "report.html")]);
  expect(html.code).toBe(0);
  const page = await readFile(join(folder, "report.html"), "utf8");
  expect(page).toContain("Larch Hollow house");
  expect(page).not.toMatch(/<script|src="https?:|url\(https?:/);
  const pdf = await wall([...words, join(folder, "report.pdf")]);
  expect(pdf.code).toBe(0);
  expect((await readFile(join(folder, "report.pdf"))).subarray(0, 5).toString()).toBe("%PDF-");
});

test("report wants a file name whose ending it knows", async () => {
  for (const words of [
    ["report", "demo"],
    ["report", "demo", "--out", "report.docx"],
  ]) {
    const { code, err } = await wall(words);
    expect(code).toBe(64);
    expect(err).toMatch(/\.html, \.pdf, \.txt, \.csv or \.json/);
  }
});
