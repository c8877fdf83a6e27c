import { wallFilms } from "./steady-layer.ts";
import type { Films } from "./steady-layer.ts";

/** A homogeneous slab, or a resistance without storage (air space, membrane). */
export type PeriodicLayer =
  | {
      readonly thickness_m: number;
      readonly conductivity_WmK: number;
      readonly density_kgm3: number;
      readonly heatCapacity_JkgK: number;
    }
  | { readonly resistance_m2KW: number };

/** A number with its lead in time, 0 to one period [h]. */
export interface Oscillation {
  readonly amplitude: number;
  readonly lead_h: number;
}

export interface PeriodicWall {
  readonly uValue_Wm2K: number;
  /** Heat flow at one face per kelvin of swing at the other [W/(m2 K)]. */
  readonly transmittance_Wm2K: number;
  /** transmittance / U. */
  readonly decrementFactor: number;
  /** How much later the inner face answers the outdoor swing [h]. */
  readonly lag_h: number;
  readonly insideAdmittance_Wm2K: Oscillation;
  readonly outsideAdmittance_Wm2K: Oscillation;
  /** Areal heat capacities [kJ/(m2 K)]. */
  readonly insideCapacity_kJm2K: number;
  readonly outsideCapacity_kJm2K: number;
}

type Complex = readonly [re: number, im: number];
type Matrix = readonly [z11: Complex, z12: Complex, z21: Complex, z22: Complex];

const add = (a: Complex, b: Complex): Complex => [a[0] + b[0], a[1] + b[1]];
const times = (a: Complex, b: Complex): Complex => [a[0] * b[0] - a[1] * b[1], a[0] * b[1] + a[1] * b[0]];
const over = (a: Complex, b: Complex): Complex => {
  const square = b[0] * b[0] + b[1] * b[1];
  return [(a[0] * b[0] + a[1] * b[1]) / square, (a[1] * b[0] - a[0] * b[1]) / square];
};
const scaled = (a: Complex, factor: number): Complex => [a[0] * factor, a[1] * factor];
const modulus = (a: Complex): number => Math.hypot(a[0], a[1]);

const product = (a: Matrix, b: Matrix): Matrix => [
  add(times(a[0], b[0]), times(a[1], b[2])),
  add(times(a[0], b[1]), times(a[1], b[3])),
  add(times(a[2], b[0]), times(a[3], b[2])),
  add(times(a[2], b[1]), times(a[3], b[3])),
];

const resistanceMatrix = (resistance_m2KW: number): Matrix => [
  [1, 0],
  [-resistance_m2KW, 0],
  [0, 0],
  [1, 0],
];

function layerMatrix(layer: PeriodicLayer, period_s: number): Matrix {
  if ("resistance_m2KW" in layer) return resistanceMatrix(layer.resistance_m2KW);
  const conductivity = layer.conductivity_WmK;
  const depth_m = Math.sqrt((conductivity * period_s) / (Math.PI * layer.density_kgm3 * layer.heatCapacity_JkgK));
  const xi = layer.thickness_m / depth_m;
  const sinhCos = Math.sinh(xi) * Math.cos(xi);
  const coshSin = Math.cosh(xi) * Math.sin(xi);
  const diagonal: Complex = [Math.cosh(xi) * Math.cos(xi), Math.sinh(xi) * Math.sin(xi)];
  return [
    diagonal,
    scaled([sinhCos + coshSin, coshSin - sinhCos], -depth_m / (2 * conductivity)),
    scaled([sinhCos - coshSin, sinhCos + coshSin], -conductivity / depth_m),
    diagonal,
  ];
}

/**
 * How a wall answers a steady swing of temperature: transfer matrices of its layers, films included.
 *
 * @param layers outside first
 * @param period_h length of the swing [h], > 0
 * Source: ISO 13786, transfer matrix method (MEMORY; determinant 1 and the light-wall limit hold).
 * Checked: tests/solver/physics/steady/periodic-wall.test.ts, to the printed digits.
 */
export function periodicWall(layers: readonly PeriodicLayer[], period_h = 24, films: Films = wallFilms): PeriodicWall {
  if (!(period_h > 0)) throw new RangeError(`period_h must be > 0, got ${period_h}`);
  const period_s = period_h * 3600;
  // The standard multiplies from the room outwards: each further layer stands on the left.
  let z = resistanceMatrix(films.inside_m2KW);
  for (const layer of [...layers].reverse()) z = product(layerMatrix(layer, period_s), z);
  z = product(resistanceMatrix(films.outside_m2KW), z);

  const layersResistance = layers.reduce(
    (sum, layer) =>
      sum + ("resistance_m2KW" in layer ? layer.resistance_m2KW : layer.thickness_m / layer.conductivity_WmK),
    0,
  );
  const uValue_Wm2K = 1 / (films.outside_m2KW + films.inside_m2KW + layersResistance);
  const hoursPerRadian = period_h / (2 * Math.PI);
  const lead = (value: Complex): number => {
    const hours = Math.atan2(value[1], value[0]) * hoursPerRadian;
    return hours < 0 ? hours + period_h : hours;
  };
  const transmittance = over([-1, 0], z[1]);
  const insideAdmittance = scaled(over(z[0], z[1]), -1);
  const outsideAdmittance = scaled(over(z[3], z[1]), -1);
  const capacity = (diagonal: Complex): number =>
    ((period_s / (2 * Math.PI)) * modulus(over(add(diagonal, [-1, 0]), z[1]))) / 1000;
  return {
    uValue_Wm2K,
    transmittance_Wm2K: modulus(transmittance),
    decrementFactor: modulus(transmittance) / uValue_Wm2K,
    lag_h: period_h - lead(transmittance) === period_h ? 0 : period_h - lead(transmittance),
    insideAdmittance_Wm2K: { amplitude: modulus(insideAdmittance), lead_h: lead(insideAdmittance) },
    outsideAdmittance_Wm2K: { amplitude: modulus(outsideAdmittance), lead_h: lead(outsideAdmittance) },
    insideCapacity_kJm2K: capacity(z[0]),
    outsideCapacity_kJm2K: capacity(z[3]),
  };
}
