import { publishedChecks, runPublishedCheck, type Progress, type PublishedCheckResult } from "../../solver/index.ts";

/** A published case by its name, step by step. Throws a RangeError that says which there are. */
export function publishedCheckSteps(id: string): Generator<Progress, PublishedCheckResult, "stop" | undefined> {
  const check = publishedChecks.find((candidate) => candidate.id === id);
  if (check === undefined)
    throw new RangeError(`id must be one of ${publishedChecks.map((each) => each.id).join(", ")}, got ${id}`);
  return runPublishedCheck(check);
}
