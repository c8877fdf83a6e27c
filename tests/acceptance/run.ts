import { vi } from "vitest";
import {
  casesOf,
  findingsOf,
  loadsOf,
  openProject,
  simulate,
  stableJson,
  summarise,
  weatherOf,
  type Case,
  type MemberSummary,
  type Project,
  type RunResult,
} from "../../solver/index.ts";
import type { HourlyLoads, WeatherYear } from "../../climate/index.ts";
import { projectOf, type WallSpec } from "./walls.ts";

/** Runs on the real engine, each distinct wall once in a test file. A file is a dozen or more two-year runs: minutes on a busy machine. */
vi.setConfig({ testTimeout: 600_000, hookTimeout: 900_000 });

const years = new Map<string, WeatherYear>();
const results = new Map<string, { readonly summary: MemberSummary; readonly result: RunResult; readonly case: Case }>();

export function weatherYearOf(aCase: Case): WeatherYear | null {
  if (aCase.exposure.kind !== "site") return null;
  const key = stableJson(aCase.exposure.site.weather);
  const known = years.get(key);
  if (known !== undefined) return known;
  const read = weatherOf(aCase.exposure.site.weather, {});
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  years.set(key, read.value);
  return read.value;
}

export function loadsFor(aCase: Case): HourlyLoads {
  const loads = loadsOf(aCase, weatherYearOf(aCase), {});
  if (!loads.ok) throw new Error(JSON.stringify(loads.issues));
  return loads.value;
}

/** The cases of a project that has gone through its own text, as a user's file does. */
export function casesFrom(project: Project): readonly Case[] {
  const opened = openProject(JSON.stringify(project));
  if (!opened.ok) throw new Error(JSON.stringify(opened.issues));
  const cases = casesOf(opened.value.project);
  if (!cases.ok) throw new Error(JSON.stringify(cases.issues));
  return cases.value;
}

export function runCase(aCase: Case): {
  readonly summary: MemberSummary;
  readonly result: RunResult;
  readonly case: Case;
} {
  const key = stableJson(aCase);
  const known = results.get(key);
  if (known !== undefined) return known;
  const loads = loadsFor(aCase);
  const march = simulate(aCase, loads);
  let step = march.next();
  while (step.done !== true) step = march.next();
  const result = step.value;
  if (result.status !== "finished") throw new Error(`${aCase.path}: ${JSON.stringify(result.failure)}`);
  const outcome = { summary: summarise(aCase, result, findingsOf(aCase, result, { loads })), result, case: aCase };
  results.set(key, outcome);
  return outcome;
}

export const runWall = (spec: WallSpec): MemberSummary => runCase(casesFrom(projectOf(spec))[0]!).summary;
export const caseOfWall = (spec: WallSpec): Case => casesFrom(projectOf(spec))[0]!;
