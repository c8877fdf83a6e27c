import * as Comlink from "comlink";
import type { Issue } from "../../climate/index.ts";
import type { Case, NamedTexts } from "../../solver/index.ts";
import { ProgressLine } from "./progress.ts";
import type { Outcome, Ran } from "./run-contract.ts";
import { RunPool } from "./run-pool.ts";

export type CasesOutcome =
  { readonly ok: true; readonly runs: readonly Ran[] } | { readonly ok: false; readonly issues: readonly Issue[] };

/** Runs the cases in worker threads with progress on standard error. Issues of any of them are what comes back. */
export async function runCases(cases: readonly Case[], files: NamedTexts): Promise<CasesOutcome> {
  const label = (aCase: Case): string => `${aCase.option} ${aCase.path}`;
  const progress = new ProgressLine(process.stderr, () => performance.now());
  for (const aCase of cases) progress.expect(label(aCase));
  const pool = new RunPool();
  try {
    const outcomes = await pool.map<Case, Outcome<Omit<Ran, "case">>>(cases, (worker, aCase) => {
      const report = Comlink.proxy((done: number, of: number) => progress.report(label(aCase), done, of));
      return worker.run(aCase, files, report);
    });
    const issues = new Map<string, Issue>();
    const runs: Ran[] = [];
    outcomes.forEach((outcome, place) => {
      if (outcome.kind === "done") runs.push({ case: cases[place]!, ...outcome.value });
      // All paths of a project read the same weather; its issues are told once.
      else for (const issue of outcome.issues) issues.set(`${issue.path} ${issue.message}`, issue);
    });
    return issues.size > 0 ? { ok: false, issues: [...issues.values()] } : { ok: true, runs };
  } finally {
    progress.finish();
    await pool.end();
  }
}
