import type { Project } from "./project.ts";

/** The text of a project file: every field it holds, those unknown to this version included; two spaces, newline at the end. */
export function writeProject(project: Project): string {
  return `${JSON.stringify(project, null, 2)}\n`;
}
