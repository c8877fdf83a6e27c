import fc from "fast-check";
import { expect, test } from "vitest";
import {
  boundary,
  casesOf,
  demoProject,
  openProject,
  starterWalls,
  wallChecks,
  wholeWall,
  writeProject,
} from "../../../solver/model/index.ts";

const files = [demoProject, ...starterWalls.map((wall) => wall.project)].map(writeProject);

/** Values that people and broken programs put into files. */
const odd = fc.oneof(
  fc.constantFrom<unknown>(
    null,
    true,
    "",
    "0",
    -1,
    0,
    1e-9,
    1e9,
    -1e300,
    0.5,
    [],
    {},
    [[]],
    "osb_111",
    "driven",
    "held",
    "__proto__",
    "\u0000",
    "A".repeat(300),
    { city: "nowhere" },
    [1, 2, 3],
    140,
    5.5,
  ),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.string({ maxLength: 12 }),
);

interface Step {
  readonly kind: "set" | "delete" | "duplicate" | "swap" | "add";
  readonly at: number;
  readonly value: unknown;
}
const steps = fc.array(
  fc.record({
    kind: fc.constantFrom("set" as const, "delete" as const, "duplicate" as const, "swap" as const, "add" as const),
    at: fc.nat(),
    value: odd,
  }),
  { minLength: 1, maxLength: 6 },
);

/** Every place of a parsed file: its holder and key. */
function placesOf(root: unknown): { holder: Record<string, unknown> | unknown[]; key: string | number }[] {
  const found: { holder: Record<string, unknown> | unknown[]; key: string | number }[] = [];
  const walk = (value: unknown): void => {
    if (typeof value !== "object" || value === null) return;
    const keys = Array.isArray(value) ? value.keys() : Object.keys(value);
    for (const key of keys) {
      found.push({ holder: value as Record<string, unknown>, key });
      walk((value as Record<string | number, unknown>)[key]);
    }
  };
  walk(root);
  return found;
}

function mutate(root: unknown, step: Step): void {
  const places = placesOf(root);
  if (places.length === 0) return;
  const { holder, key } = places[step.at % places.length]!;
  const bag = holder as Record<string | number, unknown>;
  if (step.kind === "set") bag[key] = step.value;
  else if (step.kind === "delete") {
    if (Array.isArray(holder)) holder.splice(Number(key), 1);
    else delete bag[key];
  } else if (step.kind === "duplicate" && Array.isArray(holder))
    holder.push(JSON.parse(JSON.stringify(holder[Number(key)] ?? null)));
  else if (step.kind === "swap") {
    const other = places[(step.at * 7 + 3) % places.length]!;
    bag[key] = JSON.parse(
      JSON.stringify((other.holder as Record<string | number, unknown>)[other.key] ?? null),
    ) as unknown;
  } else if (step.kind === "add" && !Array.isArray(holder)) bag[`x${step.at % 5}`] = step.value;
}

/** An answer, or issues that each have a place, a message and a remedy. Whatever opened must also be checked, cut into cases and written back. */
function judge(text: string): "opened" | "refused" {
  const opened = openProject(text);
  for (const issue of opened.issues) {
    expect(issue.message.length).toBeGreaterThan(3);
    expect(issue.remedy.length).toBeGreaterThan(3);
    expect(issue.message).not.toMatch(/undefined|\[object/);
  }
  if (!opened.ok) {
    expect(opened.issues.some((issue) => issue.severity === "error")).toBe(true);
    return "refused";
  }
  const { project } = opened.value;
  expect(casesOf(project).ok).toBe(true);
  for (const option of project.options) {
    wholeWall(option, project);
    boundary(option, project);
    wallChecks(project, option);
  }
  const again = openProject(writeProject(project));
  expect(again.ok).toBe(true);
  return "opened";
}

test("1,600 projects with changed, lost, doubled and exchanged values: an answer or a list of issues, never a crash", () => {
  const tally = { opened: 0, refused: 0 };
  fc.assert(
    fc.property(fc.nat(files.length - 1), steps, (file, changes) => {
      const root: unknown = JSON.parse(files[file]!);
      for (const change of changes) mutate(root, change);
      tally[judge(JSON.stringify(root))]++;
    }),
    { numRuns: 1600, seed: 20240607 },
  );
  // Both ends must be met, or the test would say nothing.
  expect(tally.opened).toBeGreaterThan(100);
  expect(tally.refused).toBeGreaterThan(400);
});

test("400 files with cut, doubled and replaced stretches of text: an answer or a list of issues, never a crash", () => {
  fc.assert(
    fc.property(
      fc.nat(files.length - 1),
      fc.nat(),
      fc.nat(400),
      fc.string({ maxLength: 8 }),
      fc.boolean(),
      (file, at, length, put, cut) => {
        const text = files[file]!;
        const start = at % text.length;
        judge(cut ? text.slice(0, start) : text.slice(0, start) + put + text.slice(start + length));
      },
    ),
    { numRuns: 400, seed: 20240608 },
  );
});
