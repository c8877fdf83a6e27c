import type { ControlRole } from "../../solver/index.ts";

/** How one control layer runs through the paths of an option. */
export interface ControlRun {
  readonly role: ControlRole;
  /** For each path of the option: the layer that plays the role; null: none does. */
  readonly layerIds: readonly (string | null)[];
  /** For each path: true where the line does not run on from the path before. */
  readonly brokenBefore: readonly boolean[];
  /** For each path: framing crosses it there, as it always does; counted in U, no break. */
  readonly bridgedBefore: readonly boolean[];
  /** Which layers do it, or where it stops and what to do. */
  readonly words: string;
  readonly breaks: number;
}

export const roleLetters: Record<ControlRole, string> = { water: "W", air: "A", vapour: "V", thermal: "T" };
export const roleTitles: Record<ControlRole, string> = {
  water: "Water",
  air: "Air",
  vapour: "Vapour",
  thermal: "Thermal",
};
export const controlRoles: readonly ControlRole[] = ["water", "air", "vapour", "thermal"];
