import type { PhysicsSettings } from "./physics-settings.ts";

/** Saturation pressure and still-air permeability over temperature: rows of [p_sat Pa, delta_air kg/(m s Pa)], read by straight lines. */
export const coldest_K = 190;
export const hottest_K = 390;
export const temperatureStep_K = 0.05;
export const temperatureIntervals = 4000;

/** Straight lines between nodes 0.05 K apart are off by 1.6e-6 of p_sat. */
export function temperatureTable(physics: PhysicsSettings): Float64Array {
  const rows = new Float64Array(2 * (temperatureIntervals + 1));
  for (let i = 0; i <= temperatureIntervals; i++) {
    const T = coldest_K + i * temperatureStep_K;
    rows[2 * i] = physics.saturationPressure(T);
    rows[2 * i + 1] = physics.airPermeability(T);
  }
  return rows;
}
