import type { Workspace } from "./balance.ts";
import { lowestPotential, referenceTemperature_K } from "./moisture-potential.ts";
import { tableIntervals, tableStep, tableStride, warmFrom_K, warmStep_K } from "./property-table.ts";
import type { WallModel } from "./wall-model.ts";

/** Material properties at every slot, read from the tables with their slopes. */
export function slotProperties(wall: WallModel, work: Workspace): void {
  const { slots, slotNode, slotTable, tables } = wall;
  const { x, air, airByT } = work;
  const { water, waterByEta, liquid, liquidByEta, etaByT } = work;
  const { vapour, vapourByT, vapourByTheta, conductivity, conductivityByT, conductivityByTheta } = work;
  const perStep = 1 / tableStep;
  for (let s = 0; s < slots; s++) {
    const i = slotNode[s]!;
    const table = tables[slotTable[s]!]!;
    const T = x[2 * i]!;
    let eta = x[2 * i + 1]!;
    let byT = 0;
    if (table.followsSuction) {
      eta -= Math.log(T / referenceTemperature_K);
      byT = -1 / T;
    }
    const y = (eta - lowestPotential) * perStep;
    // Beyond its ends the table goes on along its last straight line.
    const k = y < 0 ? 0 : y >= tableIntervals ? tableIntervals - 1 : y | 0;
    const share = y - k;
    const at = k * tableStride;
    const rows = table.rows;
    const w0 = rows[at]!;
    const psi0 = rows[at + 1]!;
    const v0 = rows[at + 2]!;
    const l0 = rows[at + 3]!;
    const dw = rows[at + 4]! - w0;
    const dPsi = rows[at + 5]! - psi0;
    const dv = rows[at + 6]! - v0;
    const dl = rows[at + 7]! - l0;
    water[s] = w0 + dw * share;
    waterByEta[s] = dw * perStep;
    liquid[s] = psi0 + dPsi * share;
    liquidByEta[s] = dPsi * perStep;
    etaByT[s] = byT;
    // Transport factors hold their end values.
    const inside = share < 0 ? 0 : share > 1 ? 1 : share;
    const vapourFactor = v0 + dv * inside;
    const vapourSlope = inside === share ? dv * perStep : 0;
    const wet = l0 + dl * inside;
    const wetSlope = inside === share ? dl * perStep : 0;
    if (table.absoluteVapour) {
      vapour[s] = vapourFactor;
      vapourByTheta[s] = vapourSlope;
      vapourByT[s] = vapourSlope * byT;
    } else {
      const still = air[i]!;
      vapour[s] = vapourFactor * still;
      vapourByTheta[s] = vapourSlope * still;
      vapourByT[s] = vapourSlope * byT * still + vapourFactor * airByT[i]!;
    }
    if (table.warm === null) {
      conductivity[s] = wet;
      conductivityByTheta[s] = wetSlope;
      conductivityByT[s] = wetSlope * byT;
    } else {
      const warm = table.warm;
      const z = (T - warmFrom_K) / warmStep_K;
      const last = warm.length - 2;
      const n = z < 0 ? 0 : z > last ? last : z | 0;
      const rise = warm[n + 1]! - warm[n]!;
      const factor = warm[n]! + rise * (z - n);
      conductivity[s] = wet * factor;
      conductivityByTheta[s] = wetSlope * factor;
      conductivityByT[s] = wetSlope * byT * factor + (wet * rise) / warmStep_K;
    }
  }
}
