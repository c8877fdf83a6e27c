import { referenceTemperature_K } from "./moisture-potential.ts";
import type { PhysicsSettings } from "./physics-settings.ts";

/**
 * What depends on temperature alone: rows of [p_sat Pa, delta_air kg/(m s Pa), ln(T/T_ref)], read by straight lines.
 * The logarithm shifts curves that follow suction.
 */
export const temperatureStride = 3;
export const coldest_K = 190;
export const hottest_K = 390;
export const temperatureStep_K = 0.05;
export const temperatureIntervals = 4000;

/** Straight lines between nodes 0.05 K apart are off by 1.6e-6 of p_sat and by 9e-9 in the logarithm. */
export function temperatureTable(physics: PhysicsSettings): Float64Array {
  const rows = new Float64Array(temperatureStride * (temperatureIntervals + 1));
  for (let i = 0; i <= temperatureIntervals; i++) {
    const T = coldest_K + i * temperatureStep_K;
    rows[temperatureStride * i] = physics.saturationPressure(T);
    rows[temperatureStride * i + 1] = physics.airPermeability(T);
    rows[temperatureStride * i + 2] = Math.log(T / referenceTemperature_K);
  }
  return rows;
}
