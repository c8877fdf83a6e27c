import { expect } from "vitest";
import type { Project, RunResult } from "../../../solver/index.ts";
import {
  publishedChecks,
  runLabProject,
  runPublishedCheck,
  type PublishedCheck,
  type PublishedCheckResult,
} from "../../../solver/studies/published-checks/index.ts";

/** Drives a run to its end. */
export function drive<T>(run: Generator<unknown, T, "stop" | undefined>): T {
  for (;;) {
    const step = run.next();
    if (step.done) return step.value;
  }
}

export function checkNamed(id: string): PublishedCheck {
  const found = publishedChecks.find((check) => check.id === id);
  if (!found) throw new Error(`no published check "${id}"`);
  return found;
}

/** The one result of a project of one path. Throws what a run that could not go on says of it. */
export function runOne(project: Project): RunResult {
  const [result] = drive(runLabProject(project));
  if (!result) throw new Error(`${project.name} gave no result`);
  if (result.failure) throw new Error(`hour ${result.failure.hour}, ${result.failure.layer}: ${result.failure.cause}`);
  return result;
}

/** The same project on a grid `gridFineness` times as fine and with steps held to `tolerance`. */
export const refined = (project: Project, gridFineness: number, tolerance?: number): Project => ({
  ...project,
  run: { ...project.run, gridFineness, ...(tolerance === undefined ? {} : { tolerance }) },
});

/** Runs a check as it ships and asserts each row; the message lists every row that misses. */
export function expectCheckHolds(id: string): PublishedCheckResult {
  const result = drive(runPublishedCheck(checkNamed(id)));
  const misses = result.rows
    .filter((row) => !row.holds)
    .map((row) => `${row.what}: ${row.got} for ${row.expected} within ${row.tolerance} ${row.unit}`);
  expect(result.failures).toEqual([]);
  expect(misses).toEqual([]);
  expect(result.rows.length).toBeGreaterThan(0);
  expect(result.holds).toBe(true);
  return result;
}

/** Asserts each comparing row of a check on a refined run, within `share` of the check's own tolerance. Books keep theirs. */
export function expectRefinedHolds(id: string, share: number, gridFineness: number, tolerance: number): void {
  const check = checkNamed(id);
  const results = drive(runLabProject(refined(check.project(), gridFineness, tolerance)));
  expect(results.map((result) => result.failure).filter((failure) => failure !== null)).toEqual([]);
  const rows = check.compare(results);
  const misses = rows
    .filter((row) => !(Math.abs(row.got - row.expected) <= (row.unit === "of turnover" ? 1 : share) * row.tolerance))
    .map((row) => `${row.what}: ${row.got} for ${row.expected} within ${share * row.tolerance} ${row.unit}`);
  expect(misses).toEqual([]);
}
