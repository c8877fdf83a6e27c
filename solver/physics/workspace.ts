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
