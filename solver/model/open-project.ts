import type { Checked, Issue } from "../../climate/index.ts";
import { checkProject } from "./check-project.ts";
import { scanJson } from "./json-scan.ts";
import { migrate } from "./migrations/migrate.ts";
import { formatVersion, projectSchema, type Project } from "./project.ts";
import { schemaIssues } from "./schema-issues.ts";
import { longestText, structureIssues } from "./structure-limits.ts";
import { withoutFaults } from "./without-faults.ts";

export interface OpenedProject {
  readonly project: Project;
  /** True for a file of a newer version: it may be looked at, not saved over. */
  readonly readOnly: boolean;
  /** Why it opened read-only. */
  readonly reason?: string;
}

const refuse = (...issues: Issue[]): Checked<OpenedProject> => ({ ok: false, issues });
const error = (path: string, message: string, remedy: string): Issue => ({ path, message, remedy, severity: "error" });

/**
 * Reads the text of a project file. Never throws, whatever the text: an answer, or every problem at once with its place
 * and what to do. Fields that this version does not know stay where they are.
 */
export function openProject(text: string): Checked<OpenedProject> {
  if (text.length > longestText)
    return refuse(
      error(
        "file",
        `the file is ${(text.length / 1e6).toFixed(0)} MB long`,
        `Keep a project within ${longestText / 1e6} MB; thin out its tables.`,
      ),
    );
  const plain = text.startsWith("\uFEFF") ? text.slice(1) : text;
  const scan = scanJson(plain);
  if (!scan.ok)
    return refuse(
      error(`line ${scan.line}, column ${scan.column}`, `not a project file: ${scan.message}`, scan.remedy),
    );
  const raw: unknown = JSON.parse(plain);
  if (typeof raw !== "object" || raw === null || Array.isArray(raw))
    return refuse(
      error("file", "the file holds no project", 'A project file starts with { "format": "wallyear", ... }.'),
    );
  const file = raw as Record<string, unknown>;
  if (file["format"] !== "wallyear")
    return refuse(
      error(
        "format",
        `format is ${JSON.stringify(file["format"])?.slice(0, 60) ?? "missing"}`,
        'This is no wallyear project; its first field must be "format": "wallyear".',
      ),
    );
  const limits = structureIssues(file);
  if (limits.length > 0) return refuse(...limits);

  const version = file["formatVersion"];
  if (typeof version !== "number" || !Number.isInteger(version) || version < 0)
    return refuse(
      error(
        "formatVersion",
        `format version is ${JSON.stringify(version)?.slice(0, 60) ?? "missing"}`,
        `Write "formatVersion": ${formatVersion}.`,
      ),
    );
  const newer = version > formatVersion;
  const current = newer ? { ...file, formatVersion } : migrate(file);
  const reason = `This file was written in format version ${version}; this program knows version ${formatVersion}. It opens for reading only, and what the newer version added is not taken into account.`;

  const parsed = projectSchema.safeParse(current);
  if (!parsed.success) {
    const found = schemaIssues(current, parsed.error.issues);
    const rest = withoutFaults(current, parsed.error.issues);
    const more = rest
      ? checkProject(rest).filter(
          (issue) => !found.some((own) => issue.path.startsWith(own.path) || own.path.startsWith(`${issue.path}.`)),
        )
      : [];
    const all = [...found, ...more];
    return refuse(
      ...(newer ? [error("formatVersion", reason, "Open it with the newer version of the program.")] : []),
      ...all,
    );
  }
  const issues = checkProject(parsed.data);
  if (issues.some((issue) => issue.severity === "error")) return { ok: false, issues };
  // A newer file keeps its own version number, so that writing it elsewhere does not pass it off as an old one.
  const project = newer ? ({ ...parsed.data, formatVersion: version } as unknown as Project) : parsed.data;
  return {
    ok: true,
    value: newer ? { project, readOnly: true, reason } : { project, readOnly: false },
    issues: newer
      ? [
          {
            path: "formatVersion",
            message: reason,
            remedy: "Open it with the newer version to change it.",
            severity: "warning",
          },
          ...issues,
        ]
      : issues,
  };
}
