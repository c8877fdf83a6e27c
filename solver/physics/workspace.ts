import { blockTridiagonal, type BlockTridiagonal } from "../numerics/block-tridiagonal.ts";
import { heatEntries, waterEntries } from "./book-entries.ts";
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
  /** d stored/dx per node, row-major 2x2; without derivatives only its diagonal. */
  readonly capacity: Float64Array;
  /** d rate/dx, then overwritten with capacity - factor * d rate/dx for the Newton step. */
  readonly system: BlockTridiagonal;
  // Node states.
  readonly humidity: Float64Array;
  readonly humiditySlope: Float64Array;
  readonly pressure: Float64Array;
  readonly pressureByT: Float64Array;
  readonly pressureByTheta: Float64Array;
  /** Water content of each slot [kg/m3]. */
  readonly water: Float64Array;
  /** Film of water that stands on the face a slot lies at and counts with its layer [kg/m2]. */
  readonly slotFilm: Float64Array;
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
    water: new Float64Array(slots),
    slotFilm: new Float64Array(slots),
    elementVapour: perElement(),
    elementLiquid: perElement(),
    elementHeat: perElement(),
    waterIn: new Float64Array(waterEntries.length),
    heatIn: new Float64Array(heatEntries.length),
    runOff: new Float64Array(3),
    sourceGain: new Float64Array(sources),
  };
}
