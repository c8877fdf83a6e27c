/**
 * Air changes of a vented cavity open top and bottom, from wind and warmth. [1/h]
 *
 * Pressure 0.5 rho (dCp) v^2 + rho g H dT/T drives air through two openings in series and along the cavity.
 * Openings and pressure coefficient are assumptions for lap siding on furring and are meant to be replaced by the user's own rate:
 * field studies report 1 to 10 changes behind brick and 100 to 1000 behind sidings.
 *
 * @param windSpeed_ms  wind near the wall, >= 0
 * @param warmth_K      cavity less outdoor air, either sign
 * @param depth_m       depth of the cavity, > 0
 * Source: orifice flow, ASHRAE Handbook - Fundamentals, ventilation and infiltration (MEMORY); sizes ASSUMED.
 */
export function cavityAirChanges(windSpeed_ms: number, warmth_K: number, depth_m: number): number {
  const wind = 0.5 * airDensity_kgm3 * pressureCoefficient * windSpeed_ms * windSpeed_ms;
  const stack = (airDensity_kgm3 * gravity_ms2 * height_m * Math.abs(warmth_K)) / meanTemperature_K;
  const opening_m = Math.min(openingDepth_m, depth_m);
  // Two openings in series: the pressure drop is shared, so the effective area falls by the root of two.
  const flow_m2s = (discharge * opening_m * Math.sqrt((2 * (wind + stack)) / airDensity_kgm3)) / Math.SQRT2;
  return (3600 * flow_m2s) / (height_m * depth_m);
}

const airDensity_kgm3 = 1.2;
const gravity_ms2 = 9.81;
const meanTemperature_K = 285;
/** Discharge of a sharp-edged opening. */
const discharge = 0.6;
/** Storey-high cavity, ASSUMED. */
const height_m = 2.5;
/** Clear depth of each opening per metre of width behind screens, ASSUMED. */
const openingDepth_m = 0.006;
/** Difference of wind pressure between the two openings of one face, ASSUMED. */
const pressureCoefficient = 0.1;
