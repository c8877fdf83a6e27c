import type { HourlyLoads } from "../../climate/index.ts";
import type { Case } from "../model/index.ts";
import { polyline } from "../numerics/monotone-curve.ts";
import { fullPoreSuction_Pa, potentialAt, potentialAtSuction, referenceTemperature_K } from "./moisture-potential.ts";
import { potentialOfWater, readTable } from "./property-table.ts";
import type { WallModel } from "./wall-model.ts";

/** Start temperatures and potentials of every node, written into x. */
export function initialState(aCase: Case, wall: WallModel, loads: HourlyLoads, x: Float64Array): void {
  const temperature = initialTemperature(aCase, wall, loads);
  const { nodes, slots, slotNode, slotTable, slotVolume, tables } = wall;
  // A start at 100 % RH has its pores full, and no free water beside.
  const rhoR = wall.physics.waterDensity_kgm3 * wall.physics.gasConstantVapour_JkgK;
  const fullPores = potentialAtSuction(fullPoreSuction_Pa, referenceTemperature_K, rhoR);
  const weight = new Float64Array(nodes).fill(-1);
  for (let i = 0; i < nodes; i++) x[2 * i] = temperature[i]!;
  for (let s = 0; s < slots; s++) {
    const i = slotNode[s]!;
    const table = tables[slotTable[s]!]!;
    const { initial } = aCase.layers[slotTable[s]!]!;
    const shift = table.followsSuction ? Math.log(temperature[i]! / referenceTemperature_K) : 0;
    const potential =
      "relativeHumidity" in initial
        ? Math.min(potentialAt(initial.relativeHumidity), fullPores)
        : potentialOfWater(table, initial.water_kgm3) + shift;
    // Where two layers meet, the one that holds more water at the node sets it.
    const held = slotVolume[s]! * readTable(table, 0, potential - shift);
    if (held <= weight[i]!) continue;
    weight[i] = held;
    x[2 * i + 1] = potential;
  }
  // Nodes between two membranes take what their outer, else their inner neighbour has.
  for (let i = 0; i < nodes; i++) {
    if (weight[i]! >= 0) continue;
    const near = nearestWith(weight, i);
    x[2 * i + 1] = near < 0 ? potentialAt(0.5) : x[2 * near + 1]!;
  }
}

function nearestWith(weight: Float64Array, i: number): number {
  for (let d = 1; d < weight.length; d++) {
    if (i - d >= 0 && weight[i - d]! >= 0) return i - d;
    if (i + d < weight.length && weight[i + d]! >= 0) return i + d;
  }
  return -1;
}

function initialTemperature(aCase: Case, wall: WallModel, loads: HourlyLoads): Float64Array {
  const { nodes, grid } = wall;
  if (aCase.exposure.kind === "lab") {
    const given = aCase.exposure.lab.initialTemperature_C;
    if (typeof given === "number") return new Float64Array(nodes).fill(given + 273.15);
    const curve = polyline(
      given.map(([depth]) => depth),
      given.map(([, T]) => T),
    );
    return Float64Array.from(grid.depth_m, (depth) => curve.at(depth) + 273.15);
  }
  const given = aCase.run.initialTemperature_C;
  if (given !== undefined) return new Float64Array(nodes).fill(given + 273.15);
  return steadyTemperature(wall, loads.outside.temperature_K.start[0]!, loads.inside.temperature_K.start[0]!);
}

/** Straight through the dry resistances between the two airs of the first hour. */
function steadyTemperature(wall: WallModel, outside_K: number, inside_K: number): Float64Array {
  const { nodes, elementKind, innerSlot, slotTable, tables, perLength, thermalConductance } = wall;
  const resistance = new Float64Array(nodes);
  for (let e = 0; e < nodes - 1; e++) {
    const r =
      elementKind[e] === 0
        ? 1 / (perLength[e]! * readTable(tables[slotTable[innerSlot[e]!]!]!, 3, potentialAt(0.5)))
        : 1 / thermalConductance[e]!;
    resistance[e + 1] = resistance[e]! + r;
  }
  const total = resistance[nodes - 1]!;
  return resistance.map((r) => outside_K + ((inside_K - outside_K) * r) / total);
}
