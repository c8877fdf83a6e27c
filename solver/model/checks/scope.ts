import type { Project } from "../project.ts";
import { checkLine, type CheckLine } from "./check-line.ts";

/** A face that leans further than this from upright is a roof or a floor [degrees]. */
const steepest_deg = 60;
const overhanging_deg = 120;

/** Why an assembly is outside the scope of the program, in words; null for a wall above grade. */
export function outOfScope(
  project: Pick<Project, "site">,
): { readonly field: "tilt_deg" | "belowGrade"; readonly message: string; readonly remedy: string } | null {
  const face = project.site?.face;
  if (!face) return null;
  if (face.belowGrade)
    return {
      field: "belowGrade",
      message: "earth lies against this wall; walls below grade are outside the scope of this program",
      remedy: "Ask for a foundation design; the program judges walls above grade only.",
    };
  if (face.tilt_deg < steepest_deg)
    return {
      field: "tilt_deg",
      message: `the face leans to ${face.tilt_deg} degrees from level, which is a roof; roofs are outside the scope of this program`,
      remedy: `Give a wall a tilt of ${steepest_deg} to ${overhanging_deg} degrees; 90 is upright.`,
    };
  if (face.tilt_deg > overhanging_deg)
    return {
      field: "tilt_deg",
      message: `the face leans to ${face.tilt_deg} degrees from level, which is the underside of a floor; floors are outside the scope of this program`,
      remedy: `Give a wall a tilt of ${steepest_deg} to ${overhanging_deg} degrees; 90 is upright.`,
    };
  return null;
}

/** The refusal as a check line. */
export function scopeLines(project: Pick<Project, "site">): CheckLine[] {
  const found = outOfScope(project);
  if (!found) return [];
  return [
    checkLine({
      id: "scope",
      subject: "scope",
      verdict: "outOfScope",
      holds: false,
      statement: `Out of scope: ${found.message}.`,
      remedy: found.remedy,
      source: "Scope of the program",
      flag: "ASSUMED",
    }),
  ];
}
