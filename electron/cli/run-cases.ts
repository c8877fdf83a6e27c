import type { Issue } from "../../climate/index.ts";
import type { Case, NamedTexts, RunResult } from "../../solver/index.ts";
import { ProgressLine } from "./progress.ts";
import { runAll } from "./run-pool.ts";

export interface Ran {
  readonly case: Case;
  readonly result: RunResult;
}

export type CasesOutcome =
  { readonly ok: true; readonly runs: readonly Ran[] } | { readonly ok: false; readonly issues: readonly Issue[] };

/** Runs the cases with progress on standard error. An issue in any of them stops nothing but is what comes back. */
export async function runCases(cases: readonly Case[], files: NamedTexts): Promise<CasesOutcome> {
  const label = (aCase: Case): string => `${aCase.option} ${aCase.path}`;
  const progress = new ProgressLine(process.stderr, () => performance.now());
  for (const aCase of cases) progress.expect(label(aCase));
  const outcomes = await runAll(cases, files, (aCase, done, of) => progress.report(label(aCase), done, of));
  progress.finish();
  const issues = new Map<string, Issue>();
  const runs: Ran[] = [];
  outcomes.forEach((outcome, place) => {
    if (outcome.kind === "result") runs.push({ case: cases[place]!, result: outcome.result });
    // All paths of a project read the same weather; its issues are told once.
    else for (const issue of outcome.issues) issues.set(`${issue.path} ${issue.message}`, issue);
  });
  return issues.size > 0 ? { ok: false, issues: [...issues.values()] } : { ok: true, runs };
}
