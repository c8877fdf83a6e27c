import type { Material } from "../materials/index.ts";
import { conductivityCurve } from "./conductivity.ts";
import { liquidSlope } from "./liquid-transport.ts";
import { highestPotential, humidityAt, lowestPotential } from "./moisture-potential.ts";
import type { PhysicsSettings } from "./physics-settings.ts";
import { sorptionCurve, type SorptionCurve } from "./sorption-curve.ts";
import { vapourCurve } from "./vapour-transport.ts";

/**
 * Every property of a material over the moisture potential, on one even grid, read by straight lines. Exact at the nodes;
 * between them a curve of second derivative c is off by at most c/8 times the square of the step (0.0055): 4e-6 of w where w changes
 * tenfold per unit. Reading costs the same for a formula and for measured points, and value and slope agree, as Newton needs.
 */
export const tableIntervals = 4096;
export const tableStep = (highestPotential - lowestPotential) / tableIntervals;

/** Numbers a node holds, in this order: w, Psi, vapour, lambda. */
export const tableStride = 4;

/** RH over the potential, on the same grid. */
export const humidityTable = Float64Array.from({ length: tableIntervals + 1 }, (_, i) =>
  humidityAt(lowestPotential + i * tableStep),
);

export interface PropertyTable {
  /** (tableIntervals + 1) rows of [w kg/m3, Psi kg/(m s), vapour factor, lambda W/(m K)]. */
  readonly rows: Float64Array;
  /** The same for slots at the faces of the layer: of a material that draws no water they hold none that stands free. */
  readonly rowsAtFace: Float64Array;
  /** Vapour factor is a permeability [kg/(m s Pa)] rather than a multiple of still air's. */
  readonly absoluteVapour: boolean;
  /** Water content and liquid flow follow suction, so they feel temperature at a given RH. */
  readonly followsSuction: boolean;
  readonly movesLiquid: boolean;
  readonly dryHeatCapacity_Jm3K: number;
  /** Factor on lambda over temperature: even grid from 200 K in steps of 0.5 K; null: always 1. */
  readonly warm: Float64Array | null;
  readonly drawsWater: boolean;
}

export const warmFrom_K = 200;
export const warmStep_K = 0.5;
export const warmNodes = 401;

/** Still air at 20 degC, for air spaces: density times heat capacity [J/(m3 K)]. */
const airHeatCapacity_Jm3K = 1206;

export function propertyTable(material: Material, physics: PhysicsSettings): PropertyTable {
  const rhoR = physics.waterDensity_kgm3 * physics.gasConstantVapour_JkgK;
  const sorption = sorptionCurve(material, rhoR);
  const vapour = vapourCurve(material, sorption);
  const conductivity = conductivityCurve(material);
  const slope = liquidSlope(material, sorption, rhoR);
  const rows = new Float64Array((tableIntervals + 1) * tableStride);
  let psi = 0;
  let slopeBefore = slope === null ? 0 : slope(lowestPotential);
  for (let i = 0; i <= tableIntervals; i++) {
    const theta = lowestPotential + i * tableStep;
    if (slope !== null && i > 0) {
      const middle = slope(theta - tableStep / 2);
      const here = slope(theta);
      psi += (tableStep / 6) * (slopeBefore + 4 * middle + here);
      slopeBefore = here;
    }
    const at = i * tableStride;
    const water = sorption.waterAt(theta);
    rows[at] = water;
    rows[at + 1] = psi;
    rows[at + 2] = vapour.at(theta);
    rows[at + 3] = conductivity.wet(sorption.boundWaterAt(theta));
  }
  return {
    rows,
    rowsAtFace: sorption.drawsWater ? rows : atFace(rows, sorption),
    absoluteVapour: vapour.absolute,
    followsSuction: sorption.followsSuction,
    movesLiquid: slope !== null,
    dryHeatCapacity_Jm3K:
      material.kind === "air" ? airHeatCapacity_Jm3K : (material.density_kgm3 ?? 0) * (material.heatCapacity_JkgK ?? 0),
    warm: warmTable(conductivity.warm),
    drawsWater: sorption.drawsWater,
  };
}

function atFace(rows: Float64Array, sorption: SorptionCurve): Float64Array {
  const copy = rows.slice();
  for (let i = 0; i <= tableIntervals; i++)
    copy[i * tableStride] = sorption.waterAtFace(lowestPotential + i * tableStep);
  return copy;
}

function warmTable(warm: (T: number) => number): Float64Array | null {
  const table = Float64Array.from({ length: warmNodes }, (_, i) => warm(warmFrom_K + i * warmStep_K));
  return table.every((factor) => factor === 1) ? null : table;
}

/** Value of one property (0 w, 1 Psi, 2 vapour, 3 lambda) at a potential: for start states, probes and tests. */
export function readTable(table: PropertyTable, property: 0 | 1 | 2 | 3, potential: number): number {
  const x = (potential - lowestPotential) / tableStep;
  const i = Math.min(Math.max(Math.floor(x), 0), tableIntervals - 1);
  const at = i * tableStride + property;
  const here = table.rows[at]!;
  return here + (table.rows[at + tableStride]! - here) * (x - i);
}

/** Potential at which the material holds `water_kgm3`; the dry or wet end of the table beyond its range. */
export function potentialOfWater(table: PropertyTable, water_kgm3: number): number {
  let low = 0;
  let high = tableIntervals;
  if (water_kgm3 <= table.rows[0]!) return lowestPotential;
  if (water_kgm3 >= table.rows[high * tableStride]!) return highestPotential;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (table.rows[middle * tableStride]! <= water_kgm3) low = middle;
    else high = middle;
  }
  const below = table.rows[low * tableStride]!;
  const above = table.rows[high * tableStride]!;
  return lowestPotential + tableStep * (low + (above > below ? (water_kgm3 - below) / (above - below) : 0));
}
