import type { Case } from "../model/index.ts";

/** Allowed local error of a step. */
export interface Tolerance {
  readonly temperature_K: number;
  readonly humidity: number;
  /** Relative to the water in the node. */
  readonly water: number;
}

/**
 * Scale of a run that asks for none. In weather the grid's error is several times that of the steps at 2e-3 (interfaces within 0.01 K and
 * 0.02 points of RH, root mean square); in a laboratory loads jump and published figures are compared at any hour.
 */
export const defaultTolerance = (aCase: Case): number => (aCase.exposure.kind === "lab" ? 1e-3 : 2e-3);

/** Scaled by one number, so that the three weigh about alike in weather: 0.06 K, 0.4 points of RH, 1 % of a node's water at 1e-3. */
export function toleranceOf(scale: number): Tolerance {
  return { temperature_K: 60 * scale, humidity: 4 * scale, water: 10 * scale };
}
