import type { BoundaryReport, ControlRole, Path } from "../../solver/index.ts";
import { controlRoles, type ControlRun } from "./control-roles.ts";

/** "Housewrap" inside a sentence; "OSB" stays as it is. */
const lowered = (text: string): string =>
  /^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;

/** The role's layers, each named once: "housewrap; strand board at the rim joist". */
function layerWords(report: BoundaryReport, role: ControlRole): string {
  const named = new Map<string, string[]>();
  for (const { name: pathName, roles } of report.paths) {
    const played = roles.find((one) => one.role === role);
    if (!played || played.layer === null) continue;
    named.set(played.name, [...(named.get(played.name) ?? []), pathName.toLowerCase()]);
  }
  const [main, ...others] = [...named].sort(([, one], [, other]) => other.length - one.length);
  if (!main) return "no layer is set for it, and none can be deduced";
  return [lowered(main[0]), ...others.map(([name, paths]) => `${lowered(name)} at the ${paths.join(" and ")}`)].join(
    "; ",
  );
}

const nameAt = (report: BoundaryReport, path: string): string =>
  report.paths.find((one) => one.path === path)?.name.toLowerCase() ?? path;

/** The four control lines as the boundary report tells them. */
export function controlRuns(report: BoundaryReport): readonly ControlRun[] {
  return controlRoles.map((role) => {
    const own = report.breaks.filter((one) => one.role === role);
    const breaks = own.filter((one) => one.kind === "break");
    const first = breaks[0];
    const crossed = own.filter((one) => one.kind === "bridge").map((one) => nameAt(report, one.path));
    return {
      role,
      layerIds: report.paths.map(({ roles }) => roles.find((one) => one.role === role)?.layer ?? null),
      brokenBefore: report.paths.map(({ path }) => breaks.some((one) => one.path === path)),
      bridgedBefore: report.paths.map(({ path }) => own.some((one) => one.path === path && one.kind === "bridge")),
      words: first
        ? `${first.statement} ${first.remedy}`
        : `${layerWords(report, role)}${crossed.length > 0 ? `; wood crosses it at the ${crossed.join(" and ")}` : ""}`,
      breaks: breaks.length,
    };
  });
}

/** Roles that nobody set on this path, and the layers that were taken for them. */
export function deducedRoles(
  report: BoundaryReport,
  path: Path,
): Readonly<Partial<Record<ControlRole, string | null>>> {
  const roles = report.paths.find((one) => one.path === path.id)?.roles ?? [];
  return Object.fromEntries(roles.filter(({ by }) => by === "deduced").map(({ role, layer }) => [role, layer]));
}
