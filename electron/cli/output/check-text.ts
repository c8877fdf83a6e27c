import { nameOfPath, wholeWall, type CheckLine, type Option, type Project } from "../../../solver/index.ts";

function lineText(line: CheckLine): string {
  const where = [line.edition, line.section, line.row].filter((part) => part !== null && part !== "").join(", ");
  const under = [line.remedy, where === "" ? line.source : where].filter((part) => part !== null);
  return [`  ${line.statement}`, ...under.map((words) => `      ${words}`)].join("\n");
}

/** What an option's drawing already tells: its paths and layers, U, and every check that needs no run. */
export function checkText(option: Option, project: Project, lines: readonly CheckLine[]): string {
  const { U_Wm2K, R_m2KW } = wholeWall(option, project);
  return [
    `${option.id}: ${option.name}`,
    ...option.paths.map(
      (path) => `  path ${path.id} (${nameOfPath(path)}): ${path.layers.map((layer) => layer.id).join(", ")}`,
    ),
    `  Whole wall: U ${U_Wm2K.toFixed(3)} W/(m2 K), R ${R_m2KW.toFixed(2)} m2 K/W`,
    ...lines.map(lineText),
    "",
  ].join("\n");
}
