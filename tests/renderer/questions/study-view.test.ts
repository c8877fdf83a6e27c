import { describe, expect, it } from "vitest";
import type { Case, MemberSummary, Project, Study } from "../../../solver/index.ts";
import type { Ask } from "../../../renderer/questions/asking/asks-store.ts";
import type { KnownMembers } from "../../../renderer/questions/asking/known-members.ts";
import { studyView } from "../../../renderer/questions/asking/study-view.ts";

const study = (answer: string): Study<string> => ({
  id: "one",
  members: [{ key: "a", label: "a", case: {} as Case }],
  reduce: (done) => `${answer} of ${done.size}`,
});
const known = (done: number, missing: number): KnownMembers => ({
  done: new Map(Array.from({ length: done }, (_, index) => [`m${index}`, {} as MemberSummary])),
  missing: Array.from({ length: missing }, (_, index) => ({ key: `x${index}`, label: "", case: {} as Case })),
  of: done + missing,
});
const asked = (change: Partial<Ask>): Ask => ({
  study: study("before"),
  mark: "",
  signature: "s",
  project: {} as Project,
  status: "running",
  startedAt: 5,
  seconds: null,
  failure: null,
  ...change,
});
const now = (done: number, missing: number, signature = "s") => ({
  study: study("now"),
  signature,
  known: known(done, missing),
});

describe("how an answer stands", () => {
  it("is empty when nothing is known and nothing was asked", () => {
    expect(studyView(now(0, 2), null, null, false)).toMatchObject({ status: "empty", answer: null });
  });

  it("gives what is known so far while the members run", () => {
    const view = studyView(now(1, 2), { ask: asked({}), known: known(1, 2) }, null, false);
    expect(view).toMatchObject({ status: "running", answer: "now of 1", done: 1, of: 3, startedAt: 5 });
  });

  it("keeps what was found when it was stopped", () => {
    const view = studyView(now(1, 2), { ask: asked({ status: "stopped" }), known: known(1, 2) }, null, false);
    expect(view).toMatchObject({ status: "stopped", answer: "now of 1" });
  });

  it("shows the earlier answer, and the edit that made it stale, until it is asked again", () => {
    const before = { ask: asked({ status: "finished", signature: "old" }), known: known(3, 0) };
    expect(studyView(now(0, 3), before, "Change thickness, layer 3", true)).toMatchObject({
      status: "stale",
      answer: "before of 3",
      staleBecause: "Change thickness, layer 3",
    });
    expect(studyView(now(0, 3), before, null, false)).toMatchObject({ status: "stale", staleBecause: null });
  });

  it("takes no answer over from the document before", () => {
    const before = { ask: asked({ status: "finished", signature: "old" }), known: known(3, 0) };
    expect(studyView(now(0, 3), before, null, true)).toMatchObject({ status: "empty", answer: null });
  });

  it("is finished as soon as every member is known, whoever ran them", () => {
    const before = { ask: asked({ status: "stopped", signature: "old" }), known: known(1, 2) };
    expect(studyView(now(3, 0), before, "an edit", true)).toMatchObject({ status: "finished", answer: "now of 3" });
  });

  it("goes on by itself when a changed limit asks for more of the same question", () => {
    const before = { ask: asked({ status: "finished" }), known: known(3, 0) };
    expect(studyView(now(3, 1), before, null, false).status).toBe("paused");
  });

  it("says why it failed", () => {
    const failure = { message: "The weather could not be read.", remedy: "Choose a file." };
    const view = studyView(now(0, 2), { ask: asked({ status: "failed", failure }), known: known(0, 2) }, null, false);
    expect(view).toMatchObject({ status: "failed", failure });
  });
});
