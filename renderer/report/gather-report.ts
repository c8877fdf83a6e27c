import type { Issue } from "../../climate/index.ts";
import {
  findingsOf,
  loadsOf,
  reportInputOf,
  usualSettings,
  weatherOf,
  type Case,
  type Edition,
  type NamedTexts,
  type Project,
  type ReportInput,
  type RunResult,
  type UnitSystem,
} from "../../solver/index.ts";

/** Runs that have finished, and how they are to be spoken of. */
export interface ReportOrder {
  readonly project: Project;
  readonly runs: readonly { readonly case: Case; readonly result: RunResult }[];
  readonly edition: Edition;
  readonly units: UnitSystem;
  readonly versions: Readonly<Record<string, string>>;
}

export type ReportOutcome =
  | { readonly kind: "input"; readonly input: ReportInput }
  | { readonly kind: "issues"; readonly issues: readonly Issue[] };

/** Reads weather and loads again and judges each run: what a report is made from, without the answers to questions. */
export function gatherReport(
  { project, runs, edition, units, versions }: ReportOrder,
  files: NamedTexts,
): ReportOutcome {
  const first = runs[0];
  if (first === undefined || project.site === undefined)
    return cannot("A report needs a wall on a site that has been run.");
  const weather = weatherOf(project.site.weather, files);
  if (!weather.ok) return { kind: "issues", issues: weather.issues };
  const issues: Issue[] = [];
  const judged = runs.flatMap((run) => {
    const loads = loadsOf(run.case, weather.value, files);
    if (loads.ok)
      return [
        { ...run, loads: loads.value, findings: findingsOf(run.case, run.result, { units, loads: loads.value }) },
      ];
    issues.push(...loads.issues);
    return [];
  });
  if (issues.length > 0) return { kind: "issues", issues };
  const { label, kind, sha256 } = weather.value;
  return {
    kind: "input",
    input: reportInputOf({
      project,
      runs: judged.map(({ case: aCase, result, findings }) => ({ case: aCase, result, findings })),
      weather: { label, kind, sha256 },
      loads: judged[0]!.loads,
      code: { ...usualSettings, edition },
      versions,
      units,
    }),
  };
}

const cannot = (message: string): ReportOutcome => ({
  kind: "issues",
  issues: [{ path: "site", message, remedy: "Choose a place on the Exposure sheet.", severity: "error" }],
});
