/**
 * The moisture variable that the solver steps: theta = -ln(-ln RH).
 *
 * RH = exp(-exp(-theta)), and by Kelvin's law suction s = rho_w R_v T exp(-theta). It runs from -1.5 at 1 % RH through 0.37 at 50 %
 * to about 19 at a suction of 1 Pa, so it stays well conditioned where RH hardly moves but water content does. Continuous
 * at layer interfaces, as RH, suction and vapour pressure are.
 */

/** Temperature at which sorption curves are taken to be measured [K]. */
export const referenceTemperature_K = 293.15;

/** Range of every table over theta: RH 1e-7 to a suction below 1 Pa. */
export const lowestPotential = -2.8;
export const highestPotential = 19.6;

/** Dry end that a start state may name: RH below this is taken as this. */
export const driestHumidity = 1e-6;

/** Suction at which all pores that draw water are full [Pa] (pores of 0.3 mm); what lies below it is free water. */
export const fullPoreSuction_Pa = 1e3;

export const humidityAt = (potential: number): number => Math.exp(-Math.exp(-potential));

/** @param relativeHumidity 0..1; 1 gives the table's wet end (suction under 1 Pa). */
export function potentialAt(relativeHumidity: number): number {
  if (!(relativeHumidity >= 0 && relativeHumidity <= 1)) {
    throw new RangeError(`relative humidity must be 0 to 1, got ${relativeHumidity}`);
  }
  const clipped = Math.max(relativeHumidity, driestHumidity);
  const logarithm = -Math.log(clipped);
  return logarithm <= Math.exp(-highestPotential) ? highestPotential : -Math.log(logarithm);
}

/** Potential at a suction [Pa], taken at temperature T [K]. */
export function potentialAtSuction(suction_Pa: number, temperature_K: number, rhoR: number): number {
  if (!(suction_Pa >= 0)) throw new RangeError(`suction must be >= 0 Pa, got ${suction_Pa}`);
  return Math.min(highestPotential, Math.log((rhoR * temperature_K) / Math.max(suction_Pa, 1e-3)));
}
