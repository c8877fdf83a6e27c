/** How open the ground around the house is, in words. */
export type Shelter = "sheltered" | "medium" | "severe";

interface Terrain {
  readonly exponent: number;
  readonly layer_m: number;
  readonly words: string;
}

/**
 * Boundary layers. Source: ASHRAE Handbook Fundamentals, airflow around buildings, table of atmospheric boundary layer parameters
 * (0.14/270 m open, 0.22/370 m suburban, 0.33/460 m large city; MEMORY).
 */
export const terrains: Readonly<Record<Shelter, Terrain>> = {
  severe: { exponent: 0.14, layer_m: 270, words: "open country, shore or hilltop" },
  medium: { exponent: 0.22, layer_m: 370, words: "suburb, woods or small town" },
  sheltered: { exponent: 0.33, layer_m: 460, words: "among taller houses or trees" },
};

/**
 * Wind at a height near the house over the station's wind (10 m, open ground) [-].
 * @param height_m  above ground; below 1 m counts as 1 m
 * Source: ASHRAE Handbook Fundamentals: U_H = U_met (270/10)^0.14 (H/layer)^exponent.
 */
export function windFactor(shelter: Shelter, height_m: number): number {
  const terrain = terrains[shelter];
  return (270 / 10) ** 0.14 * (Math.max(1, height_m) / terrain.layer_m) ** terrain.exponent;
}
