import { casesOf, type Project } from "../../model/index.ts";
import { loadsOf, simulate, type Progress, type RunLog, type RunResult } from "../../run/index.ts";
import type { CheckRow, PublishedCheck } from "./published-check.ts";

/** Today's figures of one check, computed where it is asked for. */
export interface PublishedCheckResult {
  readonly id: string;
  readonly rows: readonly CheckRow[];
  /** Every row holds and every run went to its end. */
  readonly holds: boolean;
  /** The row that uses the largest part of its tolerance, and that part. */
  readonly closest: { readonly row: CheckRow; readonly share: number } | null;
  /** Runs that could not go on: hour, layer and cause. */
  readonly failures: readonly string[];
  readonly logs: readonly RunLog[];
}

/** A published check's own project has errors: the check, not the user, is wrong. */
export class UnusableProjectError extends Error {
  override readonly name = "UnusableProjectError";
}

/** Runs every path of every option of a laboratory project, in order. Throws UnusableProjectError with the issues. */
export function* runLabProject(project: Project): Generator<Progress, RunResult[], "stop" | undefined> {
  const cases = casesOf(project);
  if (!cases.ok) throw new UnusableProjectError(`${project.name}: ${JSON.stringify(cases.issues)}`);
  const results: RunResult[] = [];
  for (const aCase of cases.value) {
    const loads = loadsOf(aCase, null, {});
    if (!loads.ok) throw new UnusableProjectError(`${project.name}: ${JSON.stringify(loads.issues)}`);
    results.push(yield* simulate(aCase, loads.value));
  }
  return results;
}

const shareOf = (row: CheckRow): number => {
  const share = Math.abs(row.got - row.expected) / row.tolerance;
  return Number.isNaN(share) ? Infinity : share;
};

/** Runs a check and compares; yields the progress of its runs. Send "stop" to end early: the check then does not hold. */
export function* runPublishedCheck(
  check: PublishedCheck,
): Generator<Progress, PublishedCheckResult, "stop" | undefined> {
  const results = yield* runLabProject(check.project());
  const failures = results.flatMap((result) =>
    result.status === "finished"
      ? []
      : [
          result.failure
            ? `hour ${result.failure.hour}, ${result.failure.layer}: ${result.failure.cause}`
            : `stopped after ${result.hours} h`,
        ],
  );
  const rows = failures.length === 0 ? check.compare(results) : [];
  const closest = rows.reduce<PublishedCheckResult["closest"]>((worst, row) => {
    const share = shareOf(row);
    return worst === null || share > worst.share ? { row, share } : worst;
  }, null);
  return {
    id: check.id,
    rows,
    holds: failures.length === 0 && rows.length > 0 && rows.every((row) => row.holds),
    closest,
    failures,
    logs: results.map((result) => result.log),
  };
}
