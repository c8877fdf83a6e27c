import { describe, expect, it } from "vitest";
import type { Case, Member, MemberSummary, Study } from "../../../solver/index.ts";
import { knownMembers } from "../../../renderer/questions/asking/known-members.ts";

const caseNamed = (name: string): Case => ({ project: name }) as unknown as Case;
const member = (key: string): Member => ({ key, label: key, case: caseNamed(key) });
const summaryOf = (name: string): MemberSummary => ({ caseHash: name, status: "finished" }) as unknown as MemberSummary;

/** Asks for a, b; then for c once both are known; then for nothing. */
const search: Study<readonly string[]> = {
  id: "search",
  members: [member("a"), member("b")],
  next: (done) => (done.has("c") ? [] : [member("c")]),
  reduce: (done) => [...done.keys()],
};

const having =
  (...names: string[]) =>
  (aCase: Case): MemberSummary | undefined =>
    names.includes(aCase.project) ? summaryOf(aCase.project) : undefined;

describe("members that a session knows already", () => {
  it("are not asked for again, and the others are", () => {
    const { done, missing, of } = knownMembers(search, having("b"));
    expect([...done.keys()]).toEqual(["b"]);
    expect(missing.map(({ key }) => key)).toEqual(["a"]);
    expect(of).toBe(2);
  });

  it("lead on to the next step of a search only when the step before is whole", () => {
    expect(knownMembers(search, having("a", "b")).missing.map(({ key }) => key)).toEqual(["c"]);
    expect(knownMembers(search, having("a", "c")).missing.map(({ key }) => key)).toEqual(["b"]);
  });

  it("answer a question that was asked before without a run", () => {
    const { done, missing } = knownMembers(search, having("a", "b", "c"));
    expect(missing).toEqual([]);
    expect(search.reduce(done)).toEqual(["a", "b", "c"]);
  });
});
