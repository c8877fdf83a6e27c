import { enthalpyZero_K, type Workspace } from "./workspace.ts";
import { lowestPotential, referenceTemperature_K } from "./moisture-potential.ts";
import { tableIntervals, tableStep, tableStride, warmFrom_K, warmNodes, warmStep_K } from "./property-table.ts";
import type { WallModel } from "./wall-model.ts";

/** Material properties at every slot, read from the tables with their slopes, and what the slots store. */
export function slotProperties(wall: WallModel, work: Workspace, derivatives: boolean): void {
  const { slots, slotNode, slotVolume, rows, slotRow, slotFollowsSuction, slotAbsoluteVapour, slotHeat } = wall;
  const { warm, slotWarm } = wall;
  const { x, air, airByT, stored, capacity } = work;
  const { water, waterByEta, liquid, liquidByEta, etaByT } = work;
  const { vapour, vapourByT, vapourByTheta, conductivity, conductivityByT, conductivityByTheta } = work;
  const waterHeat = wall.physics.waterHeatCapacity_JkgK;
  const perStep = 1 / tableStep;
  // Locals: the loop runs millions of times, and a binding of another module is not always a constant to the engine.
  const lowest = lowestPotential;
  const intervals = tableIntervals;
  const stride = tableStride;
  const zero = enthalpyZero_K;
  const warmFrom = warmFrom_K;
  const warmStep = warmStep_K;
  const lastWarm = warmNodes - 2;
  for (let s = 0; s < slots; s++) {
    const i = slotNode[s]!;
    const T = x[2 * i]!;
    let eta = x[2 * i + 1]!;
    let byT = 0;
    if (slotFollowsSuction[s] === 1) {
      eta -= Math.log(T / referenceTemperature_K);
      byT = -1 / T;
    }
    const y = (eta - lowest) * perStep;
    // Beyond its ends the table goes on along its last straight line.
    const k = y < 0 ? 0 : y >= intervals ? intervals - 1 : y | 0;
    const share = y - k;
    const at = slotRow[s]! + k * stride;
    const w0 = rows[at]!;
    const psi0 = rows[at + 1]!;
    const v0 = rows[at + 2]!;
    const l0 = rows[at + 3]!;
    const dw = rows[at + 4]! - w0;
    const dPsi = rows[at + 5]! - psi0;
    const dv = rows[at + 6]! - v0;
    const dl = rows[at + 7]! - l0;
    const w = w0 + dw * share;
    const wByTheta = dw * perStep;
    water[s] = w;
    liquid[s] = psi0 + dPsi * share;
    // Transport factors hold their end values.
    const inside = share < 0 ? 0 : share > 1 ? 1 : share;
    const vapourFactor = v0 + dv * inside;
    const absolute = slotAbsoluteVapour[s] === 1;
    const still = absolute ? 1 : air[i]!;
    vapour[s] = vapourFactor * still;
    const wet = l0 + dl * inside;
    const warmAt = slotWarm[s]!;
    let factor = 1;
    let rise = 0;
    if (warmAt >= 0) {
      const z = (T - warmFrom) / warmStep;
      const n = z < 0 ? 0 : z > lastWarm ? lastWarm : z | 0;
      rise = warm[warmAt + n + 1]! - warm[warmAt + n]!;
      factor = warm[warmAt + n]! + rise * (z - n);
    }
    conductivity[s] = wet * factor;
    const volume = slotVolume[s]!;
    const degrees = T - zero;
    const heat = slotHeat[s]! + waterHeat * w;
    const dwdT = wByTheta * byT;
    stored[2 * i]! += volume * heat * degrees;
    stored[2 * i + 1]! += volume * w;
    capacity[4 * i]! += volume * (heat + waterHeat * dwdT * degrees);
    capacity[4 * i + 3]! += volume * wByTheta;
    if (!derivatives) continue;
    capacity[4 * i + 1]! += volume * waterHeat * wByTheta * degrees;
    capacity[4 * i + 2]! += volume * dwdT;
    waterByEta[s] = wByTheta;
    liquidByEta[s] = dPsi * perStep;
    etaByT[s] = byT;
    const vapourSlope = inside === share ? dv * perStep : 0;
    const wetSlope = inside === share ? dl * perStep : 0;
    vapourByTheta[s] = vapourSlope * still;
    vapourByT[s] = vapourSlope * byT * still + (absolute ? 0 : vapourFactor * airByT[i]!);
    conductivityByTheta[s] = wetSlope * factor;
    conductivityByT[s] = wetSlope * byT * factor + (wet * rise) / warmStep;
  }
}
