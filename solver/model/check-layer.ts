import { materialIssues } from "../materials/index.ts";
import { withoutName, type Key, type Report } from "./report-issue.ts";
import { materialOfLayer, needsOf, type MaterialLookup } from "./layer-material.ts";
import { nearestNames } from "./nearest-names.ts";
import type { Layer, Project } from "./project.ts";

/** Thickest layer of a building wall, and of a laboratory case that stands for half a space [m]. */
const thickest_m = 2;
const thickestLab_m = 100;
/** Thinnest meshed layer [m]; anything less is a coat or a film. */
const thinnest_m = 1e-4;
const deepestAirSpace_m = 0.5;

/** "140 mm" for 0.14; small and absurd values keep their digits. */
const inMillimetres = (thickness_m: number): string => `${Number((thickness_m * 1000).toPrecision(6))} mm`;

/** What the person may have meant by a number that is too large for metres. */
function slip(value: number): string {
  const guesses = [
    ...(value / 1000 >= 0.005 && value / 1000 <= 1 ? [`${value} mm is ${Number((value / 1000).toPrecision(4))}`] : []),
    ...(value <= 24 ? [`${value} in. is ${Number((value * 0.0254).toPrecision(4))}`] : []),
  ];
  return guesses.length > 0 ? ` Thickness is in metres: ${guesses.join(", ")}.` : "";
}

/** Checks one layer: its material is known, its thickness can be built, its start state can be reached. */
export function checkLayer(
  layer: Layer,
  keys: readonly Key[],
  project: Project,
  lookup: MaterialLookup,
  report: Report,
): void {
  const material = materialOfLayer(layer, lookup);
  if (!material) {
    const name = typeof layer.material === "string" ? layer.material : layer.material.id;
    const near = nearestNames(name, project);
    report(
      [...keys, "material"],
      `material "${name}" is not in the catalogue nor in the project`,
      near.length > 0
        ? `Did you mean ${near.join(" or ")}? Else write the material out.`
        : "Choose a material from the catalogue or write it out.",
    );
    return;
  }
  if (typeof layer.material !== "string")
    for (const issue of materialIssues(layer.material, needsOf(project)))
      report(
        [...keys, "material", ...issue.path.split(".").filter(Boolean)],
        withoutName(issue.message, layer.material.name),
        issue.remedy,
        issue.severity,
      );
  const thickness = layer.thickness_m;
  const at = [...keys, "thickness_m"];
  if (material.kind === "membrane") {
    if (thickness !== undefined && thickness < 0)
      report(
        at,
        `thickness is ${inMillimetres(thickness)}`,
        "Leave it out: a membrane or coating counts by its permeance.",
      );
    else if (thickness !== undefined && thickness > 0.05)
      report(
        at,
        `thickness is ${inMillimetres(thickness)}, and this is a membrane or coating`,
        "Leave the thickness out, or choose a board.",
      );
    return;
  }
  const limit = project.lab ? thickestLab_m : material.kind === "air" ? deepestAirSpace_m : thickest_m;
  if (thickness === undefined) report(at, "thickness is missing", "Enter the thickness in metres, 0.14 for 140 mm.");
  else if (!(thickness > 0)) report(at, `thickness is ${inMillimetres(thickness)}`, "Enter a value above 0 mm.");
  else if (thickness > limit)
    report(at, `thickness is ${Number(thickness.toPrecision(6))} m`, `Enter at most ${limit} m.${slip(thickness)}`);
  else if (thickness < thinnest_m)
    report(
      at,
      `thickness is ${inMillimetres(thickness)}`,
      `Enter at least ${inMillimetres(thinnest_m)}, or choose a membrane or coating.`,
    );
  if (layer.ventilation && material.kind !== "air")
    report(
      [...keys, "ventilation"],
      "air changes are given for a layer that is no air space",
      "Choose an air space, or remove the air changes.",
    );
  if (typeof layer.ventilation?.airChangesPerHour === "number" && layer.ventilation.airChangesPerHour > 5000)
    report(
      [...keys, "ventilation", "airChangesPerHour"],
      `air changes are ${layer.ventilation.airChangesPerHour} per hour`,
      "Enter at most 5000 per hour; 1 to 10 behind brick, 100 to 1000 behind siding.",
    );

  const initial = layer.initial;
  if (!initial) return;
  const water =
    "water_kgm3" in initial
      ? (initial.water_kgm3 as number)
      : "moistureContent_percent" in initial
        ? ((initial.moistureContent_percent as number) / 100) * (material.density_kgm3 ?? NaN)
        : null;
  if (water === null) return;
  if (Number.isNaN(water))
    report(
      [...keys, "initial"],
      "moisture content in % needs the material's density",
      "Give the material a density, or the water in kg/m3.",
    );
  const most = material.freeSaturation_kgm3 ?? (material.porosity ? 1000 * material.porosity : Infinity);
  if (water > most) {
    const density = material.density_kgm3;
    report(
      [...keys, "initial"],
      `start water is ${water.toFixed(1)} kg/m3, and the material holds ${most.toFixed(1)} kg/m3 at most`,
      `Enter at most ${most.toFixed(1)} kg/m3${density ? `, ${((100 * most) / density).toFixed(1)} % by mass` : ""}.`,
    );
  }
}
