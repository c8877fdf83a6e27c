/** Allowed local error of a step. */
export interface Tolerance {
  readonly temperature_K: number;
  readonly humidity: number;
  /** Relative to the water in the node. */
  readonly water: number;
}

/** Of a run that asks for none. */
export const defaultTolerance = 1e-3;

/** Scaled by one number, so that the three weigh about alike in weather: 0.06 K, 0.4 points of RH, 1 % of a node's water at the default. */
export function toleranceOf(scale: number): Tolerance {
  return { temperature_K: 60 * scale, humidity: 4 * scale, water: 10 * scale };
}
