import type { Issue } from "../../climate/index.ts";
import type { Material } from "./material.ts";

type Points = readonly (readonly [number, number])[];

/** First index whose value breaks the wanted order against the one before it, or -1. */
const breaks = (points: Points, sign: 1 | -1): number =>
  points.findIndex(([, y], i) => i > 0 && sign * (y - points[i - 1]![1]) < 0);
const unsorted = (points: Points): number => points.findIndex(([x], i) => i > 0 && x <= points[i - 1]![0]);

/** Water content at free saturation must fit into the pores; rounding of published pairs is let through [kg/m3]. */
const poreSlack_kgm3 = 1;

/** What a run asks of its materials: a laboratory case may leave out heat or moisture. */
export interface MaterialNeeds {
  readonly heat: boolean;
  readonly moisture: boolean;
}

/**
 * What is wrong with a material as a material: curves that run backwards, more water than pores, wet tighter than dry, properties
 * that are missing. `path` names the property. An empty list means that the solver can take it.
 */
export function materialIssues(material: Material, needs: MaterialNeeds = { heat: true, moisture: true }): Issue[] {
  const issues: Issue[] = [];
  const say = (path: string, message: string, remedy: string, severity: Issue["severity"] = "error"): void => {
    issues.push({ path, message: `${material.name}: ${message}`, remedy, severity });
  };
  if (material.kind === "bulk" && needs.heat) {
    if (material.density_kgm3 === undefined)
      say("density_kgm3", "density is missing", "Enter the dry density in kg/m3.");
    if (material.heatCapacity_JkgK === undefined)
      say("heatCapacity_JkgK", "heat capacity is missing", "Enter the dry heat capacity in J/(kg K).");
    if (material.conductivity_WmK === undefined)
      say("conductivity_WmK", "thermal conductivity is missing", "Enter the dry conductivity in W/(m K).");
  }
  if (material.kind === "bulk" && needs.moisture) {
    if (material.vapour === undefined && material.permeance_kgm2sPa === undefined)
      say("vapour", "vapour resistance is missing", "Enter a vapour resistance factor or a permeability.");
    if (material.sorption === undefined)
      say(
        "sorption",
        "sorption curve is missing",
        'Give points of [relative humidity, kg/m3], or { "slope_kgm3": ... }.',
      );
  }
  if (material.kind === "membrane" && needs.moisture && material.permeance_kgm2sPa === undefined)
    say("permeance_kgm2sPa", "permeance is missing", "Enter the permeance in kg/(m2 s Pa), 5.72e-11 for 1 perm.");
  if (
    material.kind === "air" &&
    needs.heat &&
    material.thermalResistance_m2KW === undefined &&
    material.conductivity_WmK === undefined
  )
    say(
      "thermalResistance_m2KW",
      "thermal resistance is missing",
      "Enter m2 K/W; 0.18 for an ordinary space of 25 mm.",
    );

  const { sorption } = material;
  const saturation = material.freeSaturation_kgm3;
  if (sorption && "relativeHumidity" in sorption) {
    const points = sorption.relativeHumidity;
    const back = unsorted(points);
    const falling = breaks(points, 1);
    if (back > 0)
      say(
        "sorption",
        `sorption point ${back + 1} is not at a higher humidity than the one before`,
        "Sort the points by relative humidity.",
      );
    if (points.some(([humidity]) => humidity < 0 || humidity > 1))
      say(
        "sorption",
        "a sorption point lies outside 0 to 1 relative humidity",
        "Give humidities between 0 and 1, 0.8 for 80 %.",
      );
    if (points.some(([, water]) => water < 0))
      say("sorption", "a sorption point is below 0 kg/m3", "Give water contents of 0 or more.");
    if (falling > 0)
      say(
        "sorption",
        `water content falls from ${points[falling - 1]![1]} to ${points[falling]![1]} kg/m3 at ${(100 * points[falling]![0]).toFixed(0)} % RH`,
        "Let water content rise with humidity.",
      );
    const most = Math.max(...points.map(([, water]) => water));
    if (saturation !== undefined && most > saturation)
      say(
        "freeSaturation_kgm3",
        `free saturation ${saturation} kg/m3 is below the sorption curve, ${most} kg/m3`,
        `Enter at least ${most} kg/m3.`,
      );
  }
  if (sorption && "suction_Pa" in sorption) {
    const points = sorption.suction_Pa;
    const back = unsorted(points);
    const rising = breaks(points, -1);
    if (back > 0)
      say(
        "sorption",
        `retention point ${back + 1} is not at a higher suction than the one before`,
        "Sort the points by suction.",
      );
    if (rising > 0)
      say(
        "sorption",
        `water content rises with suction at ${points[rising]![0]} Pa`,
        "Let water content fall with suction.",
      );
  }
  if (
    saturation !== undefined &&
    material.porosity !== undefined &&
    saturation > 1000 * material.porosity + poreSlack_kgm3
  )
    say(
      "freeSaturation_kgm3",
      `free saturation ${saturation} kg/m3 is more than its pores hold, ${(1000 * material.porosity).toFixed(0)} kg/m3`,
      `Enter at most ${(1000 * material.porosity).toFixed(0)} kg/m3, or correct the porosity.`,
    );

  const factor = material.vapour && "resistanceFactor" in material.vapour ? material.vapour.resistanceFactor : null;
  if (Array.isArray(factor)) {
    const back = unsorted(factor);
    const rising = breaks(factor, -1);
    if (back > 0)
      say(
        "vapour",
        `vapour point ${back + 1} is not at a higher humidity than the one before`,
        "Sort the points by relative humidity.",
      );
    if (factor.some(([, mu]) => !(mu > 0)))
      say("vapour", "a vapour resistance factor is 0 or less", "Enter values above 0; still air is 1.");
    if (rising > 0)
      say(
        "vapour",
        `it is tighter wet (${factor[rising]![1]}) than dry (${factor[rising - 1]![1]})`,
        "A vapour resistance factor may not rise with humidity.",
      );
  }
  const open: [string, unknown][] = [
    ["permeance_kgm2sPa", material.permeance_kgm2sPa],
    [
      "vapour",
      material.vapour && "permeability_kgmsPa" in material.vapour ? material.vapour.permeability_kgmsPa : null,
    ],
  ];
  for (const [path, value] of open) {
    if (!Array.isArray(value)) continue;
    const points = value as Points;
    if (unsorted(points) > 0)
      say(path, "the points are not sorted by humidity", "Sort the points by relative humidity.");
    if (points.some(([, y]) => y < 0)) say(path, "a value is below 0", "Enter values of 0 or more.");
    if (breaks(points, 1) > 0) say(path, "it is tighter wet than dry", "Permeance may not fall with humidity.");
  }
  if (
    material.liquid &&
    "absorption_kgm2s05" in material.liquid &&
    material.liquid.absorption_kgm2s05 > 0 &&
    saturation === undefined &&
    !(sorption && "saturation_kgm3" in sorption)
  )
    say(
      "freeSaturation_kgm3",
      "a water absorption coefficient needs the free saturation",
      "Enter the free saturation in kg/m3.",
    );
  return issues;
}
