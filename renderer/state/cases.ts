import type { Issue } from "../../climate/index.ts";
import { caseHash, casesOf, type Case, type Project } from "../../solver/index.ts";

export interface PlannedCase {
  readonly option: string;
  readonly path: string;
  /** Null where issues keep the case from being made. */
  readonly case: Case | null;
  readonly key: string | null;
  readonly issues: readonly Issue[];
}

/**
 * Every option and path of a project as a case to run, or the reasons why it cannot be run. `filesMark` changes when the text
 * behind a file name does.
 */
export function planCases(project: Project, filesMark: string): readonly PlannedCase[] {
  const made = casesOf(project);
  if (made.ok) {
    return made.value.map((aCase) => ({
      option: aCase.option,
      path: aCase.path,
      case: aCase,
      key: caseHash(aCase, filesMark),
      issues: made.issues,
    }));
  }
  return project.options.flatMap((option) =>
    option.paths.map((path) => ({ option: option.id, path: path.id, case: null, key: null, issues: made.issues })),
  );
}
