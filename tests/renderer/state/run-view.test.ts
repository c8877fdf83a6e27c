import { expect, test } from "vitest";
import { runViewOf, type RunEntry, type RunSlot } from "../../../renderer/state/run-view.ts";
import type { Case, RunResult } from "../../../solver/index.ts";

const aCase = { option: "A", path: "bay" } as Case;
const old = { caseHash: "old" } as RunResult;
const fresh = { caseHash: "new" } as RunResult;

const slot = (change: Partial<RunSlot> = {}): RunSlot => ({
  key: "new",
  case: aCase,
  issues: [],
  earlier: { result: old, case: aCase },
  editSince: "Change layer 3",
  ...change,
});
const entry = (change: Partial<RunEntry>): RunEntry => ({
  case: aCase,
  status: "finished",
  progress: null,
  result: null,
  failure: null,
  issues: [],
  ...change,
});

test("a wall that was never run is empty and says why", () => {
  const issues = [{ path: "site", message: "m", remedy: "r", severity: "error" as const }];
  expect(runViewOf(slot({ earlier: null, key: null, issues }), undefined)).toMatchObject({ status: "empty", issues });
  expect(runViewOf(undefined, undefined).status).toBe("empty");
});

test("while it runs, the result of the wall before stays in view with the edit's name", () => {
  const progress = { done: 10, of: 100, startedAt: 0 };
  expect(runViewOf(slot(), entry({ status: "running", progress }))).toMatchObject({
    status: "running",
    progress,
    result: old,
    staleBecause: "Change layer 3",
  });
});

test("an old result is never shown as that of the edited wall", () => {
  expect(runViewOf(slot(), undefined)).toMatchObject({ status: "stale", result: old, staleBecause: "Change layer 3" });
  expect(runViewOf(slot(), entry({ result: fresh }))).toMatchObject({ status: "finished", result: fresh });
  expect(runViewOf(slot(), entry({ result: fresh })).staleBecause).toBeUndefined();
});

test("what a stopped or failed run had computed is kept", () => {
  expect(runViewOf(slot(), entry({ status: "stopped", result: fresh }))).toMatchObject({
    status: "stopped",
    result: fresh,
  });
  const failure = { message: "m", remedy: "r" };
  expect(runViewOf(slot(), entry({ status: "failed", result: fresh, failure }))).toMatchObject({
    status: "failed",
    result: fresh,
    failure,
  });
});

test("a run stopped before it began leaves the old result stale, not stopped", () => {
  expect(runViewOf(slot(), entry({ status: "stopped" })).status).toBe("stale");
  expect(runViewOf(slot({ earlier: null }), entry({ status: "stopped" })).status).toBe("empty");
});
