import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import type { Checked, Issue } from "../../climate/index.ts";
import { materialById } from "../materials/index.ts";
import type { Case, CaseLayer } from "./case.ts";
import { checkProject } from "./check-project.ts";
import { initialOf } from "./initial-state.ts";
import { lookupFor, materialAtThickness, materialOfLayer, type MaterialLookup } from "./layer-material.ts";
import type { Layer, Option, Path, Project } from "./project.ts";
import { stableJson } from "./stable-json.ts";
import { nameOfPath } from "./words.ts";

function caseLayer(layer: Layer, project: Project, lookup: MaterialLookup): CaseLayer {
  const found = materialOfLayer(layer, lookup)!;
  const thickness_m = found.kind === "membrane" ? 0 : layer.thickness_m!;
  const material = materialAtThickness(found, thickness_m);
  const usual =
    typeof layer.material === "string" ? (materialById(layer.material)?.usualAirChangesPerHour ?? null) : null;
  return {
    id: layer.id,
    name: material.name,
    material,
    thickness_m,
    contact: layer.contact
      ? {
          thermal_m2KW: layer.contact.thermal_m2KW ?? 0,
          vapour_m2sPakg: layer.contact.vapour_m2sPakg ?? 0,
          liquid: layer.contact.liquid ?? true,
        }
      : null,
    airChangesPerHour: material.kind === "air" ? (layer.ventilation?.airChangesPerHour ?? usual) : null,
    initial: initialOf(layer, material, project.run),
  };
}

function caseOf(project: Project, option: Option, path: Path, lookup: MaterialLookup): Case {
  const here = new Set(path.layers.map((layer) => layer.id));
  const site = project.site;
  return {
    project: project.name,
    option: option.id,
    optionName: option.name,
    path: path.id,
    pathName: nameOfPath(path),
    pathKind: path.kind,
    layers: path.layers.map((layer) => caseLayer(layer, project, lookup)),
    leaks: (path.leaks ?? []).filter((leak) => here.has(leak.to)),
    probes: (path.probes ?? []).map((probe) => ({
      id: probe.id ?? `d${probe.depth_m.toFixed(3)}`,
      depth_m: probe.depth_m,
      label: probe.label ?? `${(probe.depth_m * 1000).toFixed(0)} mm from outside`,
    })),
    exposure:
      site && project.indoor
        ? { kind: "site", site, face: site.face, indoor: project.indoor, air: project.air ?? null }
        : { kind: "lab", lab: project.lab!, air: project.air ?? null },
    run: project.run,
  };
}

/**
 * Every path of every option as a case: materials looked up, start states settled. Nothing is run.
 * Errors of the project come back as issues, all at once; warnings come with the cases.
 */
export function casesOf(project: Project): Checked<Case[]> {
  const issues: Issue[] = checkProject(project);
  if (issues.some((issue) => issue.severity === "error")) return { ok: false, issues };
  const lookup = lookupFor(project);
  const cases = project.options.flatMap((option) => option.paths.map((path) => caseOf(project, option, path, lookup)));
  return { ok: true, value: cases, issues };
}

/**
 * The key of a case's result, 64 hex digits: equal for equal cases whatever the order of their fields, and free of names that
 * do not change a run (project, option, path). `extra`: what else decides the run, such as the weather's own hash.
 */
export function caseHash(aCase: Case, extra: string): string {
  const deciding: Record<string, unknown> = { ...aCase };
  for (const name of ["project", "optionName", "pathName"]) delete deciding[name];
  return bytesToHex(sha256(utf8ToBytes(`${stableJson(deciding)}\n${extra}`)));
}
