import type { BlockTridiagonal } from "../numerics/block-tridiagonal.ts";
import { blockTridiagonal } from "../numerics/block-tridiagonal.ts";
import { waterEntries, heatEntries } from "./book-entries.ts";
import { exchangeAtFaces, type FaceHolding } from "./faces.ts";
import { flowThroughElements } from "./element-flows.ts";
import { nodeStates } from "./node-states.ts";
import { slotProperties } from "./slot-properties.ts";
import { exchangeAtSources } from "./source-exchange.ts";
import { lowestPotential } from "./moisture-potential.ts";
import type { WallModel } from "./wall-model.ts";

/** 0 degC, where enthalpy is counted from [K]. */
export const enthalpyZero_K = 273.15;

/**
 * The working memory of a wall: unknowns, storage, rates and their derivatives. Made once; nothing is allocated in the march.
 *
 * Unknowns x: per node temperature T [K] and moisture potential theta. Stored y: per node enthalpy [J/m2] and water [kg/m2].
 * Rates F: what flows into each node, so that dy/dt = F(x, loads).
 */
export interface Workspace {
  /** Loads at the instant, as `load-cursor.ts` lays them out. */
  readonly loads: Float64Array;
  readonly x: Float64Array;
  readonly stored: Float64Array;
  readonly rate: Float64Array;
  /** d stored/dx per node, row-major 2x2. */
  readonly capacity: Float64Array;
  /** d rate/dx, then overwritten with capacity - factor * d rate/dx for the Newton step. */
  readonly system: BlockTridiagonal;
  // Node states.
  readonly humidity: Float64Array;
  readonly humiditySlope: Float64Array;
  readonly pressure: Float64Array;
  readonly pressureByT: Float64Array;
  readonly pressureByTheta: Float64Array;
  readonly air: Float64Array;
  readonly airByT: Float64Array;
  // Slot properties.
  readonly water: Float64Array;
  readonly waterByEta: Float64Array;
  readonly liquid: Float64Array;
  readonly liquidByEta: Float64Array;
  readonly etaByT: Float64Array;
  readonly vapour: Float64Array;
  readonly vapourByT: Float64Array;
  readonly vapourByTheta: Float64Array;
  readonly conductivity: Float64Array;
  readonly conductivityByT: Float64Array;
  readonly conductivityByTheta: Float64Array;
  // Flows, positive inward.
  readonly elementVapour: Float64Array;
  readonly elementLiquid: Float64Array;
  readonly elementHeat: Float64Array;
  /** Rates of the books. */
  readonly waterIn: Float64Array;
  readonly heatIn: Float64Array;
  /** Rain that ran off instead of being taken up [kg/(m2 s)]: outside, inside, at leaks. */
  readonly runOff: Float64Array;
  /** Water gained at each source, in the order air leaks, rain leaks, cavities [kg/(m2 s)]. */
  readonly sourceGain: Float64Array;
}

export function workspace(wall: WallModel): Workspace {
  const { nodes, slots } = wall;
  const perNode = () => new Float64Array(nodes);
  const perSlot = () => new Float64Array(slots);
  const perElement = () => new Float64Array(nodes - 1);
  const sources = wall.sources.airLeaks.length + wall.sources.rainLeaks.length + wall.sources.cavities.length;
  return {
    loads: new Float64Array(0),
    x: new Float64Array(2 * nodes),
    stored: new Float64Array(2 * nodes),
    rate: new Float64Array(2 * nodes),
    capacity: new Float64Array(4 * nodes),
    system: blockTridiagonal(nodes),
    humidity: perNode(),
    humiditySlope: perNode(),
    pressure: perNode(),
    pressureByT: perNode(),
    pressureByTheta: perNode(),
    air: perNode(),
    airByT: perNode(),
    water: perSlot(),
    waterByEta: perSlot(),
    liquid: perSlot(),
    liquidByEta: perSlot(),
    etaByT: perSlot(),
    vapour: perSlot(),
    vapourByT: perSlot(),
    vapourByTheta: perSlot(),
    conductivity: perSlot(),
    conductivityByT: perSlot(),
    conductivityByTheta: perSlot(),
    elementVapour: perElement(),
    elementLiquid: perElement(),
    elementHeat: perElement(),
    waterIn: new Float64Array(waterEntries.length),
    heatIn: new Float64Array(heatEntries.length),
    runOff: new Float64Array(3),
    sourceGain: new Float64Array(sources),
  };
}

/**
 * Storage, rates and, if asked, derivatives at the state `x` under the loads given.
 * Returns the first node whose temperature left the range of the tables, or -1.
 *
 * Source of the balances: EN 15026:2007, section 5; Künzel (1995).
 */
export function evaluate(
  wall: WallModel,
  work: Workspace,
  loads: Float64Array,
  holding: FaceHolding,
  derivatives: boolean,
): number {
  const outOfRange = nodeStates(wall, work);
  if (outOfRange >= 0) return outOfRange;
  work.stored.fill(0);
  work.capacity.fill(0);
  slotProperties(wall, work, derivatives);
  films(wall, work);
  work.rate.fill(0);
  work.waterIn.fill(0);
  work.heatIn.fill(0);
  work.runOff.fill(0);
  if (derivatives) {
    // Off-diagonal blocks are written whole by the elements.
    work.system.diagonal.fill(0);
  }
  flowThroughElements(wall, work, loads, derivatives);
  exchangeAtFaces(wall, work, loads, holding, derivatives);
  exchangeAtSources(wall, work, loads, derivatives);
  if (!wall.physics.sensibleHeat) carryOwnHeat(wall, work, derivatives);
  return -1;
}

/** Water film per unit of potential [kg/m2]: 0.1 mm when rain begins to run off, what clings to a wall (ASSUMED). */
const filmPerPotential_kgm2 = 0.03;
/** What a coat of paint or a foil holds itself: about 0.1 kg/m2 of it, and a little water that comes and goes (ASSUMED). */
const skinHeat_Jm2K = 100;
const skinWaterPerPotential_kgm2 = 3e-4;
/** How sharply a film begins, per unit of potential. */
const filmSharpness = 2.5;

function films(wall: WallModel, work: Workspace): void {
  const { filmNodes, filmFrom, skinNodes } = wall;
  const { x, stored, capacity } = work;
  const waterHeat = wall.physics.waterHeatCapacity_JkgK;
  for (let n = 0; n < skinNodes.length; n++) {
    const i = skinNodes[n]!;
    stored[2 * i]! += skinHeat_Jm2K * (x[2 * i]! - enthalpyZero_K);
    stored[2 * i + 1]! += skinWaterPerPotential_kgm2 * (x[2 * i + 1]! - lowestPotential);
    capacity[4 * i]! += skinHeat_Jm2K;
    capacity[4 * i + 3]! += skinWaterPerPotential_kgm2;
  }
  for (let n = 0; n < filmNodes.length; n++) {
    const i = filmNodes[n]!;
    const beyond = x[2 * i + 1]! - filmFrom[n]!;
    const grown = Math.exp(filmSharpness * Math.min(beyond, 10));
    const film =
      beyond > 10 ? filmPerPotential_kgm2 * beyond : (filmPerPotential_kgm2 / filmSharpness) * Math.log1p(grown);
    const slope = beyond > 10 ? filmPerPotential_kgm2 : (filmPerPotential_kgm2 * grown) / (1 + grown);
    const warm = x[2 * i]! - enthalpyZero_K;
    stored[2 * i]! += waterHeat * film * warm;
    stored[2 * i + 1]! += film;
    capacity[4 * i]! += waterHeat * film;
    capacity[4 * i + 1]! += waterHeat * slope * warm;
    capacity[4 * i + 3]! += slope;
  }
}

/**
 * Where a case lets moving water carry latent heat only, water arrives at the temperature of the node it reaches: its own enthalpy
 * is added there, so that (rho c + c_w w) dT/dt is what remains.
 */
function carryOwnHeat(wall: WallModel, work: Workspace, derivatives: boolean): void {
  const { nodes } = wall;
  const { rate, x, system } = work;
  const waterHeat = wall.physics.waterHeatCapacity_JkgK;
  let sum = 0;
  for (let i = 0; i < nodes; i++) {
    const warm = x[2 * i]! - enthalpyZero_K;
    const arriving = rate[2 * i + 1]!;
    rate[2 * i]! += waterHeat * warm * arriving;
    sum += waterHeat * warm * arriving;
    if (!derivatives) continue;
    const k = 4 * i;
    const factor = waterHeat * warm;
    system.lower[k]! += factor * system.lower[k + 2]!;
    system.lower[k + 1]! += factor * system.lower[k + 3]!;
    system.diagonal[k]! += factor * system.diagonal[k + 2]! + waterHeat * arriving;
    system.diagonal[k + 1]! += factor * system.diagonal[k + 3]!;
    system.upper[k]! += factor * system.upper[k + 2]!;
    system.upper[k + 1]! += factor * system.upper[k + 3]!;
  }
  work.heatIn[heatEntries.length - 1]! += sum;
}
