import { projectSchema, type Project } from "../../solver/index.ts";
import type { Issue } from "../../climate/index.ts";

type ReadProject =
  | { readonly ok: true; readonly value: Project; readonly readOnly: boolean; readonly issues: readonly Issue[] }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** A project from the text of its file. */
export function readProject(text: string): ReadProject {
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch {
    const message = "The file is not JSON.";
    return { ok: false, issues: [{ path: "", message, remedy: "Choose a .wallyear.json file.", severity: "error" }] };
  }
  const read = projectSchema.safeParse(parsed);
  if (read.success) return { ok: true, value: read.data, readOnly: false, issues: [] };
  return {
    ok: false,
    issues: read.error.issues.map((issue) => ({
      path: issue.path.join("."),
      message: `${issue.path.join(".")}: ${issue.message}.`,
      remedy: "",
      severity: "error",
    })),
  };
}

export const writeProject = (project: Project): string => `${JSON.stringify(project, null, 2)}\n`;
