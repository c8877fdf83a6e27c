import type { Shelter } from "../films/local-wind.ts";

/** Roughness of the ground, ISO 15927-3 table 1: K_R, roughness length, least height (MEMORY). */
export const terrainCategories = {
  I: { factor: 0.17, roughness_m: 0.01, least_m: 2, words: "open water or flat country without obstacles" },
  II: { factor: 0.19, roughness_m: 0.05, least_m: 4, words: "farmland with hedges and scattered houses" },
  III: { factor: 0.22, roughness_m: 0.3, least_m: 8, words: "suburb, industrial area or forest" },
  IV: { factor: 0.24, roughness_m: 1, least_m: 16, words: "town, buildings over 15 m" },
} as const;

/** Terrain roughness coefficient C_R(z) = K_R ln(z/z0), at least that of the least height. Source: ISO 15927-3:2009 section 4 (MEMORY). */
export function roughnessCoefficient(category: keyof typeof terrainCategories, height_m: number): number {
  const terrain = terrainCategories[category];
  return terrain.factor * Math.log(Math.max(height_m, terrain.least_m) / terrain.roughness_m);
}

/** Upper ends [m] of the distance to the nearest obstacle as high as the wall, and the factor. Source: ISO 15927-3 table 3 (MEMORY). */
const obstruction: readonly (readonly [number, number])[] = [
  [8, 0.2],
  [15, 0.3],
  [25, 0.4],
  [40, 0.5],
  [60, 0.6],
  [80, 0.7],
  [100, 0.8],
  [120, 0.9],
];

/** Obstruction factor O by the distance to the nearest obstacle [m]. */
export function obstructionFactor(distance_m: number): number {
  return obstruction.find(([upTo]) => distance_m <= upTo)?.[1] ?? 1;
}

/** Wall factor W: how much of the free-field rain reaches the wetted part. Source: ISO 15927-3 table 4 (MEMORY, low confidence). */
export const wallFactors = {
  gable: { factor: 0.4, words: "two-storey gable" },
  eaves: { factor: 0.3, words: "two-storey wall under eaves" },
  flatTop: { factor: 0.5, words: "top 2.5 m of a wall under a flat roof" },
  flatBelow: { factor: 0.2, words: "wall further down, or under a pronounced overhang" },
} as const;

/** How our three words read in the standard's terms; obstacles at over 120 m, 50 m and 20 m. A reading, not a rule. */
const reading: Readonly<Record<Shelter, { category: keyof typeof terrainCategories; distance_m: number }>> = {
  severe: { category: "II", distance_m: 200 },
  medium: { category: "III", distance_m: 50 },
  sheltered: { category: "IV", distance_m: 20 },
};

/** C_R C_T O W with flat ground (C_T = 1) and the eaves or gable factor: from free field to wall [-]. */
export function siteFactorIso15927(shelter: Shelter, height_m: number, overhangDepth_m: number | undefined): number {
  const { category, distance_m } = reading[shelter];
  const wall =
    overhangDepth_m !== undefined && overhangDepth_m >= 0.3 ? wallFactors.eaves.factor : wallFactors.gable.factor;
  return roughnessCoefficient(category, height_m) * obstructionFactor(distance_m) * wall;
}
