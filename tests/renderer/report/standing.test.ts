import { describe, expect, it } from "vitest";
import { standingOf } from "../../../renderer/report/standing.ts";
import type { RunEntry, RunSlot } from "../../../renderer/state/run-view.ts";
import { demoProject, type Case, type RunResult } from "../../../solver/index.ts";

const aCase = (option: string, path: string): Case => ({ option, path }) as Case;
const result = (name: string): RunResult => ({ caseHash: name }) as RunResult;
const places = demoProject.options.flatMap((option) => option.paths.map((path) => [option.id, path.id] as const));
const nameOf = ([option, path]: readonly [string, string]): string => `${option}/${path}`;

type Change = {
  readonly status?: RunEntry["status"];
  readonly slot?: Partial<RunSlot>;
  readonly entry?: Partial<RunEntry>;
};

/** A board on which every path is current, but for the changed ones. */
function board(changes: Readonly<Record<string, Change>> = {}) {
  const slots: Record<string, RunSlot> = {};
  const entries: Record<string, RunEntry> = {};
  for (const place of places) {
    const name = nameOf(place);
    const change = changes[name];
    slots[name] = {
      key: `key ${name}`,
      case: aCase(...place),
      issues: [],
      earlier: null,
      editSince: null,
      ...change?.slot,
    };
    const status = change?.status ?? "finished";
    entries[`key ${name}`] = {
      case: aCase(...place),
      status,
      progress: null,
      result: status === "finished" ? result(name) : null,
      failure: null,
      issues: [],
      ...change?.entry,
    };
  }
  return { slots, entries };
}
const first = nameOf(places[0]!);

describe("what a report waits for", () => {
  it("is ready with every run in the order of options and paths when the whole board is current", () => {
    const standing = standingOf(demoProject.options, board());
    if (standing.kind !== "ready") throw new Error(standing.kind);
    expect(standing.runs.map((run) => run.result.caseHash)).toEqual(places.map(nameOf));
  });

  it("changes its signature with the key of any run, and with the options chosen", () => {
    const signature = (standing: ReturnType<typeof standingOf>): string =>
      standing.kind === "ready" ? standing.signature : standing.kind;
    const whole = signature(standingOf(demoProject.options, board()));
    const { slots, entries } = board();
    const edited = {
      slots: { ...slots, [first]: { ...slots[first]!, key: "another" } },
      entries: { ...entries, another: entries[`key ${first}`]! },
    };
    expect(signature(standingOf(demoProject.options, edited))).not.toBe(whole);
    expect(signature(standingOf(demoProject.options.slice(0, 1), board()))).not.toBe(whole);
  });

  it("counts the paths that are current and names the edit that made the others old", () => {
    const standing = standingOf(
      demoProject.options,
      board({
        [first]: {
          status: "running",
          slot: {
            earlier: { result: result("old"), case: aCase(...places[0]!) },
            editSince: "Change thickness, layer 3",
          },
        },
      }),
    );
    expect(standing).toEqual({
      kind: "waiting",
      done: places.length - 1,
      of: places.length,
      edit: "Change thickness, layer 3",
    });
  });

  it("does not take a stopped, a failed or an impossible run for a result, and says what to do", () => {
    const sentence = (change: Change): string => {
      const standing = standingOf(demoProject.options, board({ [first]: change }));
      return standing.kind === "broken" ? standing.sentence : standing.kind;
    };
    expect(sentence({ status: "stopped", entry: { result: result("half") } })).toMatch(/was stopped\. Run it again/);
    expect(
      sentence({ status: "failed", entry: { failure: { message: "It could not be solved.", remedy: "Undo." } } }),
    ).toMatch(/It could not be solved\. Undo\./);
    const issues = [{ path: "p", message: "Thickness is 0.", remedy: "Enter more.", severity: "error" as const }];
    expect(sentence({ slot: { issues } })).toBe("Thickness is 0. Enter more.");
  });

  it("says that no option is chosen", () => {
    expect(standingOf([], board())).toMatchObject({ kind: "nothing" });
  });
});
