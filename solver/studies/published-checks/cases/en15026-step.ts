import type { RunResult } from "../../../run/index.ts";
import { en15026Physics, loadBearing } from "../benchmark-materials.ts";
import { closedFace, labProject } from "../lab-project.ts";
import { profiles, uptake } from "../points/en15026-step.ts";
import { bookRows, checkRow, stateAt, type CheckRow, type Place, type PublishedCheck } from "../published-check.ts";

/** Heat has moved some 30 m after a year: a shorter wall would feel its far face. */
const thickness_m = 40;
/** A fifth of the 2.5 % that the standard allows. */
const share = 0.005;
const tolerance_K = 0.05;
const days = [7, 30, 365] as const;
/** Depths of the profile after 7 days at which the profiles of all three days must coincide over x/sqrt(t) [m]. */
const similarDepths_m = [0.002, 0.004, 0.0075, 0.0125, 0.02, 0.5, 1.5];
const similarDepth = (depth_m: number, day: number): number => depth_m * Math.sqrt(day / days[0]);

const place = (depth_m: number): Place => (depth_m === 0 ? { layer: "half-space", side: "outside" } : { depth_m });

function profileRows(result: RunResult): CheckRow[] {
  return profiles.flatMap(([day, depth_m, T_C, RH, w]) => {
    const got = stateAt(result, place(depth_m), day * 24);
    const where = `after ${day} days at ${depth_m} m`;
    return [
      checkRow(`T ${where}`, "degC", T_C, got.T_C, tolerance_K),
      checkRow(`RH ${where}`, "%", RH, 100 * got.RH, share * RH),
      checkRow(`Water ${where}`, "kg/m3", w, got.w_kgm3, share * w),
    ];
  });
}

/** No table needed: the answer depends on x/sqrt(t) alone. */
function similarityRows(result: RunResult): CheckRow[] {
  return similarDepths_m.flatMap((depth_m) => {
    const late = stateAt(result, { depth_m: similarDepth(depth_m, 365) }, 365 * 24);
    return [days[0], days[1]].flatMap((day) => {
      const early = stateAt(result, { depth_m: similarDepth(depth_m, day) }, day * 24);
      const where = `of day ${day} on that of day 365, at ${depth_m * 1000} mm scaled to 7 days`;
      return [
        checkRow(`T ${where}`, "degC", late.T_C, early.T_C, tolerance_K),
        checkRow(`Water ${where}`, "kg/m3", late.w_kgm3, early.w_kgm3, share * late.w_kgm3),
      ];
    });
  });
}

export const en15026StepCheck: PublishedCheck = {
  id: "en15026-step",
  title: "Half-space that turns warm and damp",
  source:
    "EN 15026:2007, benchmark annex; definition from quotations of the standard, answer by an independent similarity solution",
  flag: "COMPUTED",
  compares:
    "T, RH and water content at 34 depths after 7, 30 and 365 days, uptake, and that the profiles coincide over x/sqrt(t)",
  tolerance: "0.5 % of RH and water content, 0.05 K: a fifth of the 2.5 % that the standard allows.",
  slow: true,
  project: () =>
    labProject({
      name: "Half-space that turns warm and damp",
      materials: [loadBearing],
      layers: [{ id: "half-space", material: loadBearing.id, thickness_m }],
      outside: { temperature_C: 30, relativeHumidity: 0.95, heatFilm_Wm2K: "held", vapourFilm_kgm2sPa: "held" },
      inside: closedFace(20),
      physics: en15026Physics,
      duration_h: 365 * 24,
      initialTemperature_C: 20,
      initialRelativeHumidity: 0.5,
      depths_m: [
        ...profiles.map(([, depth_m]) => depth_m).filter((depth_m) => depth_m > 0),
        ...similarDepths_m.flatMap((depth_m) => days.map((day) => similarDepth(depth_m, day))),
      ],
    }),
  compare: ([result]) => [
    ...profileRows(result!),
    ...uptake
      .filter(([day]) => day === 365)
      .map(([day, water]) =>
        checkRow(`Water taken up after ${day} days`, "kg/m2", water, result!.water.stored, share * water),
      ),
    ...similarityRows(result!),
    ...bookRows(result!, { heat: true, water: true }),
  ],
};
