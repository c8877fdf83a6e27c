import { boundary } from "../boundary/boundary.ts";
import type { Amendments } from "../codes/retarder-verdict.ts";
import type { Option, Project } from "../project.ts";
import { checkLine, type CheckLine, type CodeSettings } from "./check-line.ts";
import { codeLines } from "./code-lines.ts";
import { moistureLines } from "./moisture-lines.ts";
import { ratioLine } from "./ratio-line.ts";
import { scopeLines } from "./scope.ts";
import { wallFacts } from "./wall-facts.ts";

/** The edition that is read when nobody chose one. */
export const usualSettings: CodeSettings = { edition: "IRC 2021" };

/** What the project itself says of the code to read, with the usual edition where it is silent. */
export function codeSettingsOf(project: Pick<Project, "codes">): CodeSettings {
  const { edition, amendments, canadianHeatingDegreeDays } = project.codes ?? {};
  return {
    edition: edition ?? usualSettings.edition,
    ...(amendments ? { amendments: amendments as Amendments } : {}),
    ...(canadianHeatingDegreeDays === undefined ? {} : { canadianHeatingDegreeDays }),
  };
}

function boundaryLines(option: Option, project: Project): readonly CheckLine[] {
  return boundary(option, project).breaks.map((one) =>
    checkLine({
      id: one.kind === "bridge" ? "boundaryBridge" : "boundary",
      subject: "boundary",
      path: one.path,
      verdict: "caution",
      holds: one.kind === "bridge" ? null : false,
      statement: one.statement,
      remedy: one.remedy,
      row: one.role,
      source: "The four control layers traced from path to path; common practice, no source",
      flag: "ASSUMED",
    }),
  );
}

/**
 * Everything that can be said of an option without running it: code tables (vapour and energy on two lines), the ratio rule, layers
 * that trap water, breaks of the boundary. An assembly outside the scope of the program gets that one line and no verdict.
 */
export function wallChecks(
  project: Project,
  option: Option,
  settings: CodeSettings = codeSettingsOf(project),
): readonly CheckLine[] {
  const refused = scopeLines(project);
  if (refused.length > 0) return refused;
  const facts = wallFacts(option, project);
  return [
    ...codeLines(facts, option, project, settings),
    ...ratioLine(facts, settings, project.site?.climateZone),
    ...moistureLines(option, project),
    ...boundaryLines(option, project),
  ];
}
