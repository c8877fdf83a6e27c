import { erf, erfc, scaledErfc } from "./error-function.ts";

/** Material constants of a conduction problem. */
export interface Conductor {
  /** [W/(m K)] */
  readonly conductivity_WmK: number;
  /** Density times heat capacity [J/(m3 K)]. */
  readonly volumetricHeatCapacity_Jm3K: number;
}

/** Thermal diffusivity [m2/s]. */
export const diffusivity = (material: Conductor): number =>
  material.conductivity_WmK / material.volumetricHeatCapacity_Jm3K;

/**
 * Half-space whose face jumps from the start value to another at time 0; value at depth x and time t > 0.
 * Source: Carslaw and Jaeger, Conduction of Heat in Solids (2nd ed. 1959), 2.4.
 */
export const halfSpaceStep = (x_m: number, time_s: number, a_m2s: number, start: number, face: number): number =>
  face + (start - face) * erf(x_m / (2 * Math.sqrt(a_m2s * time_s)));

/**
 * Half-space behind a film, air jumps from the start value to another at time 0.
 * Source: Carslaw and Jaeger (1959), 2.7; written with exp(z^2) erfc(z) so that long times do not overflow.
 */
export function halfSpaceFilm(
  x_m: number,
  time_s: number,
  material: Conductor,
  film_Wm2K: number,
  start: number,
  air: number,
): number {
  const root = Math.sqrt(diffusivity(material) * time_s);
  const z = x_m / (2 * root);
  const film = (film_Wm2K * root) / material.conductivity_WmK;
  return start + (air - start) * (erfc(z) - Math.exp(-z * z) * scaledErfc(z + film));
}

/**
 * Slab of `thickness` at a uniform start, both faces held from time 0 on. Diffusion of any kind with constant coefficients.
 * Source: Carslaw and Jaeger (1959), 3.4; Crank, The Mathematics of Diffusion (2nd ed. 1975), 4.3.1.
 */
export function slabTwoFaces(
  x_m: number,
  time_s: number,
  a_m2s: number,
  thickness_m: number,
  start: number,
  atZero: number,
  atThickness: number,
): number {
  let sum = atZero + ((atThickness - atZero) * x_m) / thickness_m;
  for (let n = 1; n < 100_000; n += 1) {
    const k = (n * Math.PI) / thickness_m;
    const decay = Math.exp(-a_m2s * k * k * time_s);
    if (decay < 1e-17) break;
    const sign = n % 2 === 0 ? 1 : -1;
    const b = (2 / (n * Math.PI)) * (start - atZero - sign * (start - atThickness));
    sum += b * Math.sin(k * x_m) * decay;
  }
  return sum;
}

/** n-th root (n from 1) of b tan b = Bi, by bisection. */
export function filmRoot(n: number, biot: number): number {
  let low = (n - 1) * Math.PI;
  let high = low + Math.PI / 2;
  const sign = n % 2 === 1 ? 1 : -1;
  for (let k = 0; k < 100; k += 1) {
    const middle = (low + high) / 2;
    if (sign * (middle * Math.sin(middle) - biot * Math.cos(middle)) > 0) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/**
 * Slab with an adiabatic face at x = 0 and a film at x = thickness, air jumps at time 0.
 * Source: Carslaw and Jaeger (1959), 3.11.
 */
export function slabFilm(
  x_m: number,
  time_s: number,
  material: Conductor,
  thickness_m: number,
  film_Wm2K: number,
  start: number,
  air: number,
): number {
  const biot = (film_Wm2K * thickness_m) / material.conductivity_WmK;
  const fourier = (diffusivity(material) * time_s) / thickness_m ** 2;
  let sum = 0;
  for (let n = 1; n < 100_000; n += 1) {
    const b = filmRoot(n, biot);
    const decay = Math.exp(-b * b * fourier);
    if (decay < 1e-17) break;
    sum += ((4 * Math.sin(b)) / (2 * b + Math.sin(2 * b))) * Math.cos((b * x_m) / thickness_m) * decay;
  }
  return air + (start - air) * sum;
}

/**
 * Steady conduction with an air flow through a slab, faces held.
 * @param velocity_ms air volume flow density, positive from x = 0 to x = thickness
 * Source: solution of lambda T'' = (rho c)_air v T'; Carslaw and Jaeger (1959), 1.7 (moving medium).
 */
export function conductionWithAirFlow(
  x_m: number,
  velocity_ms: number,
  airVolumetricHeatCapacity_Jm3K: number,
  conductivity_WmK: number,
  thickness_m: number,
  atZero: number,
  atThickness: number,
): number {
  const peclet = (velocity_ms * airVolumetricHeatCapacity_Jm3K * thickness_m) / conductivity_WmK;
  const share =
    Math.abs(peclet) < 1e-12 ? x_m / thickness_m : Math.expm1((peclet * x_m) / thickness_m) / Math.expm1(peclet);
  return atZero + (atThickness - atZero) * share;
}
