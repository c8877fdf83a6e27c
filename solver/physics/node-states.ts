import type { Workspace } from "./workspace.ts";
import { humidityAt, lowestPotential } from "./moisture-potential.ts";
import { tableIntervals, tableStep } from "./property-table.ts";
import { coldest_K, temperatureIntervals, temperatureStep_K } from "./temperature-table.ts";
import type { WallModel } from "./wall-model.ts";

/** RH over the potential, on the grid of the property tables. */
const humidityTable = Float64Array.from({ length: tableIntervals + 1 }, (_, i) =>
  humidityAt(lowestPotential + i * tableStep),
);

/** RH, vapour pressure and still-air permeability at every node. Returns a node out of the temperature tables' range, or -1. */
export function nodeStates(wall: WallModel, work: Workspace): number {
  const { nodes, temperature } = wall;
  const { x, humidity, humiditySlope, pressure, pressureByT, pressureByTheta, air, airByT } = work;
  const perStep = 1 / tableStep;
  const perKelvin = 1 / temperatureStep_K;
  const lowest = lowestPotential;
  const intervals = tableIntervals;
  const coldest = coldest_K;
  const warmest = temperatureIntervals;
  for (let i = 0; i < nodes; i++) {
    const y = (x[2 * i + 1]! - lowest) * perStep;
    // Beyond its dry end the table goes on along its last straight line; at its wet end RH stays under 1. Never without a slope.
    const m = y < 0 ? 0 : y >= intervals ? intervals - 1 : y | 0;
    const low = humidityTable[m]!;
    const rise = humidityTable[m + 1]! - low;
    const phi = y > intervals ? low + rise : low + rise * (y - m);
    const slope = rise * perStep;
    const z = (x[2 * i]! - coldest) * perKelvin;
    if (!(z > 0 && z < warmest)) return i;
    const k = z | 0;
    const share = z - k;
    const p0 = temperature[2 * k]!;
    const dp = temperature[2 * k + 2]! - p0;
    const d0 = temperature[2 * k + 1]!;
    const dd = temperature[2 * k + 3]! - d0;
    const saturation = p0 + dp * share;
    humidity[i] = phi;
    humiditySlope[i] = slope;
    pressure[i] = phi * saturation;
    pressureByT[i] = phi * dp * perKelvin;
    pressureByTheta[i] = slope * saturation;
    air[i] = d0 + dd * share;
    airByT[i] = dd * perKelvin;
  }
  return -1;
}
