import type { Issue } from "../../../climate/index.ts";

/** Issues for people: place and what is wrong, then what to do; errors first. */
export function issueLines(issues: readonly Issue[]): string {
  const ordered = [...issues].sort((a, b) => Number(a.severity === "warning") - Number(b.severity === "warning"));
  return ordered
    .map(
      (issue) =>
        `${issue.severity === "error" ? "Error" : "Note"} at ${issue.path}: ${issue.message}\n    ${issue.remedy}\n`,
    )
    .join("");
}
