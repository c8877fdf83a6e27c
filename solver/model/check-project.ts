import type { Issue } from "../../climate/index.ts";
import { materialById, materialIssues, type Material, type MaterialNeeds } from "../materials/index.ts";
import { checkExposure } from "./check-exposure.ts";
import { checkLayer } from "./check-layer.ts";
import { lookupFor, materialOfLayer, needsOf } from "./layer-material.ts";
import type { Path, Project } from "./project.ts";
import { withoutName, type Key, type Report } from "./report-issue.ts";
import { dottedPath, placeInWords } from "./schema-issues.ts";

/** Area shares may miss one by rounding of their last digit. */
const shareSlack = 0.005;

function repeated(ids: readonly (string | undefined)[]): { id: string; index: number }[] {
  const seen = new Set<string>();
  return ids.flatMap((id, index) => {
    if (id === undefined) return [];
    if (seen.has(id)) return [{ id, index }];
    seen.add(id);
    return [];
  });
}

function checkPath(path: Path, keys: readonly Key[], project: Project, report: Report): void {
  const lookup = lookupFor(project);
  for (const { id, index } of repeated(path.layers.map((layer) => layer.id)))
    report(
      [...keys, "layers", index, "id"],
      `id "${id}" is used by two layers of this path`,
      "Give each layer an id of its own.",
    );
  path.layers.forEach((layer, index) => checkLayer(layer, [...keys, "layers", index], project, lookup, report));
  const depth = path.layers.reduce(
    (sum, layer) =>
      sum + (materialOfLayer(layer, lookup)?.kind === "membrane" ? 0 : Math.max(0, layer.thickness_m ?? 0)),
    0,
  );
  if (!path.layers.some((layer) => materialOfLayer(layer, lookup)?.kind !== "membrane"))
    report(
      [...keys, "layers"],
      "this path has no layer with a thickness",
      "Add at least one board, insulation or masonry layer.",
    );
  path.probes?.forEach((probe, index) => {
    if (probe.depth_m > depth + 1e-9)
      report(
        [...keys, "probes", index, "depth_m"],
        `depth is ${(probe.depth_m * 1000).toFixed(1)} mm, the wall is ${(depth * 1000).toFixed(1)} mm thick`,
        `Enter a depth between 0 and ${depth.toFixed(4)} m.`,
      );
  });
  for (const { id, index } of repeated((path.probes ?? []).map((probe) => probe.id)))
    report([...keys, "probes", index, "id"], `id "${id}" is used by two probes`, "Give each probe an id of its own.");
  const here = new Set(path.layers.map((layer) => layer.id));
  path.leaks?.forEach((leak, index) => {
    if (!here.has(leak.to))
      report(
        [...keys, "leaks", index, "to"],
        `the air leak arrives at "${leak.to}", which is no layer of this path`,
        `Choose one of: ${[...here].slice(0, 12).join(", ")}.`,
      );
    if (leak.flow_m3hm2 === "driven" && !project.air && project.site)
      report(
        [...keys, "leaks", index, "flow_m3hm2"],
        "the leak is driven by stack, fan and wind, and the project says nothing of air tightness",
        'Add "air": { "ach50": ... } or give the flow in m3/(h m2).',
      );
    if (typeof leak.flow_m3hm2 === "number" && leak.flow_m3hm2 > 100)
      report(
        [...keys, "leaks", index, "flow_m3hm2"],
        `leakage flow is ${leak.flow_m3hm2} m3/(h m2)`,
        "Enter at most 100 m3/(h m2); 0.05 to 0.6 is usual.",
      );
  });
}

function checkOption(project: Project, index: number, report: Report): void {
  const option = project.options[index]!;
  const keys: Key[] = ["options", index];
  for (const { id, index: at } of repeated(option.paths.map((path) => path.id)))
    report(
      [...keys, "paths", at, "id"],
      `id "${id}" is used by two paths of this option`,
      "Give each path an id of its own.",
    );
  const shares = option.paths.map((path) => path.areaShare);
  const given = shares.filter((share) => share !== undefined);
  const sum = given.reduce((total, share) => total + share, 0);
  if (given.length === shares.length && option.paths.length > 1 && Math.abs(sum - 1) > shareSlack)
    report([...keys, "paths"], `the area shares of its paths add up to ${sum.toFixed(3)}`, "Make them add up to 1.");
  else if (sum > 1 + shareSlack)
    report(
      [...keys, "paths"],
      `the area shares of its paths add up to ${sum.toFixed(3)}`,
      "Make them add up to 1 at most.",
    );
  option.paths.forEach((path, at) => {
    path.tieIns?.to?.forEach((other, n) => {
      if (!option.paths.some((neighbour) => neighbour.id === other))
        report(
          [...keys, "paths", at, "tieIns", "to", n],
          `the tie-in leads to "${other}", which is no path of this option`,
          `Choose one of: ${option.paths.map((p) => p.id).join(", ")}.`,
        );
    });
    checkPath(path, [...keys, "paths", at], project, report);
  });
}

/** Problems with a user's own material, catalogue names that it hides included. */
function checkMaterials(materials: readonly Material[], needs: MaterialNeeds, report: Report): void {
  for (const { id, index } of repeated(materials.map((material) => material.id)))
    report(["materials", index, "id"], `id "${id}" is used by two materials`, "Give each material an id of its own.");
  materials.forEach((material, index) => {
    if (materialById(material.id))
      report(
        ["materials", index, "id"],
        `"${material.id}" is also the id of a catalogue material; the project's own is used`,
        "Choose another id to use both.",
        "warning",
      );
    for (const issue of materialIssues(material, needs))
      report(
        ["materials", index, ...issue.path.split(".").filter(Boolean)],
        withoutName(issue.message, material.name),
        issue.remedy,
        issue.severity,
      );
  });
}

/**
 * Everything about a project that the schema alone cannot see: names that lead nowhere, thicknesses nobody builds, shares that
 * do not add up, faces that lack a humidity. All at once, each with its place and what would be valid.
 */
export function checkProject(project: Project): Issue[] {
  const issues: Issue[] = [];
  const report: Report = (keys, message, remedy, severity = "error") => {
    const place = placeInWords(project, keys);
    issues.push({
      path: dottedPath(project, keys),
      message: place ? `${place}: ${message}` : message,
      remedy,
      severity,
    });
  };
  for (const { id, index } of repeated(project.options.map((option) => option.id)))
    report(["options", index, "id"], `two options are named ${id}`, "Name options A, B, C ... each once.");
  checkExposure(project, report);
  checkMaterials(project.materials ?? [], needsOf(project), report);
  project.options.forEach((_, index) => checkOption(project, index, report));
  return issues;
}
