import { beforeEach, describe, expect, it } from "vitest";
import { answersOf } from "../../../renderer/report/asked-answers.ts";
import type { Ask } from "../../../renderer/questions/asking/asks-store.ts";
import { keepRun } from "../../../renderer/questions/asking/member-cache.ts";
import { casesOf, demoProject, summarise, type Case, type Study } from "../../../solver/index.ts";
import { flatResult } from "../../solver/studies/fake-result.ts";

const made = casesOf(demoProject);
if (!made.ok) throw new Error("the demo makes cases");
const bay = made.value[0]!;

const ask = (change: Partial<Ask> = {}): Ask => ({
  study: small,
  mark: "",
  signature: "s",
  project: demoProject,
  status: "finished",
  startedAt: 1,
  seconds: 1,
  failure: null,
  ...change,
});
/** A study of one member, whose answer tells when it was asked. */
const named = (id: string, answer: string, aCase: Case = bay): Study<unknown> => ({
  id,
  members: [{ key: "only", label: "only", case: aCase }],
  reduce: (done) => ({ answer, runs: done.size }),
});
const small = named("humidity:A/bay", "first");

describe("answers that a report takes over", () => {
  beforeEach(() => {
    keepRun(bay, "", { summary: summarise(bay, flatResult(bay), []), air: null });
  });

  it("are those of finished questions of this very project", () => {
    expect(answersOf([ask()], demoProject)).toEqual({ humidity: { answer: "first", runs: 1 } });
    expect(answersOf([ask()], { ...demoProject })).toEqual({});
    for (const status of ["running", "paused", "stopped", "failed"] as const)
      expect(answersOf([ask({ status })], demoProject)).toEqual({});
  });

  it("are left out where a run of theirs is no longer kept", () => {
    expect(answersOf([ask({ mark: "another file" })], demoProject)).toEqual({});
  });

  it("are the later of two of one kind, and one of each kind", () => {
    const later = ask({ study: named("humidity:A/bay", "second"), startedAt: 5 });
    const drying = ask({ study: named("drying:A/bay", "third"), startedAt: 3 });
    expect(answersOf([later, ask(), drying], demoProject)).toEqual({
      humidity: { answer: "second", runs: 1 },
      drying: { answer: "third", runs: 1 },
    });
  });

  it("are of the kinds that a report knows", () => {
    expect(answersOf([ask({ study: named("weather:A", "x") })], demoProject)).toEqual({});
  });
});
