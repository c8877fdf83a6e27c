import type { ControlRole, Option, Path, Project } from "../../solver/index.ts";
import { nameOfPath } from "../../solver/index.ts";
import { controlRoles, roleTitles, type ControlRun } from "./control-roles.ts";

/** The layer that is set to play a role in a path. */
const setLayer = (path: Path, role: ControlRole): string | null =>
  path.layers.find((layer) => layer.roles?.includes(role))?.id ?? null;

export function controlRuns(option: Option, project: Project): readonly ControlRun[] {
  void project;
  return controlRoles.map((role) => {
    const layerIds = option.paths.map((path) => setLayer(path, role));
    const missing = option.paths.filter((_, index) => layerIds[index] === null);
    return {
      role,
      layerIds,
      brokenBefore: layerIds.map((id) => id === null),
      breaks: missing.length,
      words:
        missing.length === 0
          ? `${roleTitles[role]} control runs through`
          : `no layer is set for it in ${missing.map(nameOfPath).join(", ").toLowerCase()}`,
    };
  });
}
