import { throughFlow } from "./load-cursor.ts";
import { lowestPotential } from "./moisture-potential.ts";
import {
  humidityTable,
  tableIntervals,
  tableStep,
  tableStride,
  warmFrom_K,
  warmNodes,
  warmStep_K,
} from "./property-table.ts";
import { coldest_K, temperatureIntervals, temperatureStep_K, temperatureStride } from "./temperature-table.ts";
import {
  absoluteVapourFlag,
  followsSuctionFlag,
  membraneIntervals,
  slotIndices,
  type WallModel,
} from "./wall-model.ts";
import { enthalpyZero_K, type Workspace } from "./workspace.ts";

/**
 * One pass through the wall from outside to inside: states of the nodes, properties of the materials at them, what they store, and the
 * flows between neighbours, with all derivatives if asked. Writes storage and rates whole; faces and sources add to them.
 * Returns the first node whose temperature left the range of the tables, or -1.
 *
 * Vapour flows down vapour pressure with the mean permeability of both ends; liquid down the flow potential of its material;
 * heat by conduction and with the enthalpy of what moves. Sources: EN 15026:2007, section 5; Künzel (1995).
 *
 * One pass rather than one for each of these: three quarters of a march are spent here, and what a node knows is still in
 * registers when its neighbour asks.
 */
export function sweep(wall: WallModel, work: Workspace, loads: Float64Array, derivatives: boolean): number {
  const { nodes, physics, temperature, rows, warm, slotIndex, slotNumber, slotEnd } = wall;
  const { elementKind, perLength, thermalConductance, vapourConductance, liquidConductance, membrane } = wall;
  const { x, stored, capacity, rate, water, humidity, humiditySlope, pressure, pressureByT, pressureByTheta } = work;
  const { elementVapour, elementLiquid, elementHeat } = work;
  const { lower, diagonal, upper } = work.system;
  const latent = physics.latentHeat_Jkg;
  const waterHeat = physics.waterHeatCapacity_JkgK;
  const vapourHeat = physics.sensibleHeat ? physics.vapourHeatCapacity_JkgK : 0;
  const liquidHeat = physics.sensibleHeat ? waterHeat : 0;
  const moves = physics.moisture;
  const through = loads[throughFlow]!;
  const airHeat = through * physics.airVolumetricHeatCapacity_Jm3K;
  const gasConstant = physics.gasConstantVapour_JkgK;
  // Locals: the loop runs millions of times, and a binding of another module is not always a constant to the engine.
  const perStep = 1 / tableStep;
  const perKelvin = 1 / temperatureStep_K;
  const lowest = lowestPotential;
  const intervals = tableIntervals;
  const stride = tableStride;
  const relative = humidityTable;
  const coldest = coldest_K;
  const warmest = temperatureIntervals;
  const temperatureRow = temperatureStride;
  const zero = enthalpyZero_K;
  const warmFrom = warmFrom_K;
  const perWarmStep = 1 / warmStep_K;
  const lastWarm = warmNodes - 2;
  const suctionFlag = followsSuctionFlag;
  const absoluteFlag = absoluteVapourFlag;
  const indices = slotIndices;
  const membraneSteps = membraneIntervals;

  // Of the node before: its state, and its material towards this one.
  let TBefore = 0;
  let thetaBefore = 0;
  let phiBefore = 0;
  let slopeBefore = 0;
  let pBefore = 0;
  let pByTBefore = 0;
  let pByThetaBefore = 0;
  let psiBefore = 0;
  let psiByThetaBefore = 0;
  let psiByTBefore = 0;
  let vapourBefore = 0;
  let vapourByThetaBefore = 0;
  let vapourByTBefore = 0;
  let lambdaBefore = 0;
  let lambdaByThetaBefore = 0;
  let lambdaByTBefore = 0;
  // Materials at a node: the last is the one towards the next node, the first the one towards the node before. Nodes without a material
  // have thin elements around them, which do not ask.
  let psi = 0;
  let psiByTheta = 0;
  let psiByT = 0;
  let vapour = 0;
  let vapourByTheta = 0;
  let vapourByT = 0;
  let lambda = 0;
  let lambdaByTheta = 0;
  let lambdaByT = 0;
  let psiHere = 0;
  let psiByThetaHere = 0;
  let psiByTHere = 0;
  let vapourHere = 0;
  let vapourByThetaHere = 0;
  let vapourByTHere = 0;
  let lambdaHere = 0;
  let lambdaByThetaHere = 0;
  let lambdaByTHere = 0;
  // What flows into the node before from the element outside of it, and that by the node's own unknowns.
  let heatBefore = 0;
  let waterBefore = 0;
  let d0 = 0;
  let d1 = 0;
  let d2 = 0;
  let d3 = 0;
  let s = 0;

  for (let i = 0; i < nodes; i++) {
    const T = x[2 * i]!;
    const theta = x[2 * i + 1]!;

    // State. Beyond its dry end the table of RH goes on along its last straight line; at its wet end RH stays under 1.
    const y = (theta - lowest) * perStep;
    const m = y < 0 ? 0 : y >= intervals ? intervals - 1 : y | 0;
    const low = relative[m]!;
    const rise = relative[m + 1]! - low;
    const phi = y > intervals ? low + rise : low + rise * (y - m);
    const slope = rise * perStep;
    const z = (T - coldest) * perKelvin;
    if (!(z > 0 && z < warmest)) return i;
    const zk = z | 0;
    const zShare = z - zk;
    const row = zk * temperatureRow;
    const p0 = temperature[row]!;
    const dp = temperature[row + 3]! - p0;
    const air0 = temperature[row + 1]!;
    const dAir = temperature[row + 4]! - air0;
    const saturation = p0 + dp * zShare;
    const air = air0 + dAir * zShare;
    const p = phi * saturation;
    humidity[i] = phi;
    humiditySlope[i] = slope;
    pressure[i] = p;
    let airByT = 0;
    let pByT = 0;
    let pByTheta = 0;
    if (derivatives) {
      airByT = dAir * perKelvin;
      pByT = phi * dp * perKelvin;
      pByTheta = slope * saturation;
      pressureByT[i] = pByT;
      pressureByTheta[i] = pByTheta;
    }

    let storedHeat = 0;
    let storedWater = 0;
    let c0 = 0;
    let c1 = 0;
    let c2 = 0;
    let c3 = 0;
    const degrees = T - zero;
    const first = s;
    const end = slotEnd[i]!;
    for (; s < end; s++) {
      const flags = slotIndex[indices * s + 2]!;
      let k = m;
      let share = y - m;
      let byT = 0;
      if ((flags & suctionFlag) !== 0) {
        const log0 = temperature[row + 2]!;
        const dLog = temperature[row + 5]! - log0;
        const suctionY = (theta - (log0 + dLog * zShare) - lowest) * perStep;
        k = suctionY < 0 ? 0 : suctionY >= intervals ? intervals - 1 : suctionY | 0;
        share = suctionY - k;
        byT = -dLog * perKelvin;
      }
      const at = slotIndex[indices * s]! + k * stride;
      const w0 = rows[at]!;
      const psi0 = rows[at + 1]!;
      const v0 = rows[at + 2]!;
      const l0 = rows[at + 3]!;
      const dw = rows[at + 4]! - w0;
      const dPsi = rows[at + 5]! - psi0;
      const dv = rows[at + 6]! - v0;
      const dl = rows[at + 7]! - l0;
      // Beyond its ends the table of water goes on along its last straight line; transport factors hold their end values.
      const inside = share < 0 ? 0 : share > 1 ? 1 : share;
      const w = w0 + dw * share;
      const wByTheta = dw * perStep;
      water[s] = w;
      psi = psi0 + dPsi * share;
      const vapourFactor = v0 + dv * inside;
      const absolute = (flags & absoluteFlag) !== 0;
      const still = absolute ? 1 : air;
      vapour = vapourFactor * still;
      const wet = l0 + dl * inside;
      let factor = 1;
      let warmRise = 0;
      const warmAt = slotIndex[indices * s + 1]!;
      if (warmAt >= 0) {
        const u = (T - warmFrom) * perWarmStep;
        const n = u < 0 ? 0 : u > lastWarm ? lastWarm : u | 0;
        warmRise = warm[warmAt + n + 1]! - warm[warmAt + n]!;
        factor = warm[warmAt + n]! + warmRise * (u - n);
      }
      lambda = wet * factor;
      const volume = slotNumber[2 * s]!;
      const heat = slotNumber[2 * s + 1]! + waterHeat * w;
      const dwdT = wByTheta * byT;
      storedHeat += volume * heat * degrees;
      storedWater += volume * w;
      c0 += volume * (heat + waterHeat * dwdT * degrees);
      c3 += volume * wByTheta;
      if (derivatives) {
        c1 += volume * waterHeat * wByTheta * degrees;
        c2 += volume * dwdT;
        psiByTheta = dPsi * perStep;
        psiByT = psiByTheta * byT;
        const vapourSlope = inside === share ? dv * perStep : 0;
        const wetSlope = inside === share ? dl * perStep : 0;
        vapourByTheta = vapourSlope * still;
        vapourByT = vapourByTheta * byT + (absolute ? 0 : vapourFactor * airByT);
        lambdaByTheta = wetSlope * factor;
        lambdaByT = lambdaByTheta * byT + wet * warmRise * perWarmStep;
      }
      if (s === first) {
        psiHere = psi;
        vapourHere = vapour;
        lambdaHere = lambda;
        if (derivatives) {
          psiByThetaHere = psiByTheta;
          psiByTHere = psiByT;
          vapourByThetaHere = vapourByTheta;
          vapourByTHere = vapourByT;
          lambdaByThetaHere = lambdaByTheta;
          lambdaByTHere = lambdaByT;
        }
      }
    }
    stored[2 * i] = storedHeat;
    stored[2 * i + 1] = storedWater;
    capacity[4 * i] = c0;
    capacity[4 * i + 1] = c1;
    capacity[4 * i + 2] = c2;
    capacity[4 * i + 3] = c3;

    if (i > 0) {
      const e = i - 1;
      const drop = TBefore - T;
      const pressureDrop = pBefore - p;
      let permeance: number;
      let conductance: number;
      let gl: number;
      // Slope of a membrane's permeance over the mean RH, or conductance of a joint for liquid.
      let ofThin = 0;
      const kind = elementKind[e]!;
      const inverse = perLength[e]!;
      if (kind === 0) {
        permeance = 0.5 * (vapourBefore + vapourHere) * inverse;
        conductance = 0.5 * (lambdaBefore + lambdaHere) * inverse;
        gl = (psiBefore - psiHere) * inverse;
      } else {
        conductance = thermalConductance[e]!;
        permeance = vapourConductance[e]!;
        gl = 0;
        if (kind === 1) {
          const table = membrane[e]!;
          const u = 0.5 * (phiBefore + phi) * membraneSteps;
          const k = u >= membraneSteps ? membraneSteps - 1 : u | 0;
          const step = table[k + 1]! - table[k]!;
          permeance = table[k]! + step * (u - k);
          ofThin = step * membraneSteps;
        } else {
          ofThin = liquidConductance[e]!;
          gl = ofThin * (thetaBefore - theta);
        }
      }
      let gv = permeance * pressureDrop;
      if (!moves) gv = gl = 0;

      const meanWarm = 0.5 * (TBefore + T) - zero;
      const hv = latent + vapourHeat * meanWarm;
      const hl = liquidHeat * meanWarm;
      const carried = 0.5 * (vapourHeat * gv + liquidHeat * gl);
      let heat = conductance * drop + hv * gv + hl * gl;
      let flow = gv + gl;
      let weightHeat = 0;
      let fromI = 0;
      let fromJ = 0;
      if (through !== 0) {
        // Air through the wall, upwind to the degree that the exact steady profile asks for.
        weightHeat = downwindWeight(airHeat / conductance);
        heat += airHeat * ((1 - weightHeat) * (TBefore - zero) + weightHeat * (T - zero));
        const perPascal = moves ? through / gasConstant : 0;
        const weight = downwindWeight(perPascal / (0.5 * (TBefore + T)) / Math.max(permeance, 1e-20));
        fromI = (perPascal * (1 - weight)) / TBefore;
        fromJ = (perPascal * weight) / T;
        const ga = fromI * pBefore + fromJ * p;
        gv += ga;
        flow += ga;
        heat += latent * ga;
      }
      elementVapour[e] = gv;
      elementLiquid[e] = gl;
      elementHeat[e] = heat;
      rate[2 * e] = heatBefore - heat;
      rate[2 * e + 1] = waterBefore - flow;
      heatBefore = heat;
      waterBefore = flow;

      if (derivatives) {
        // Of vapour, liquid, conduction and air, by T and theta of the outer (i) and inner (j) node.
        let gvTi = 0;
        let gvTj = 0;
        let gvi = 0;
        let gvj = 0;
        let glTi = 0;
        let glTj = 0;
        let gli = 0;
        let glj = 0;
        let qTi = 0;
        let qTj = 0;
        let qi = 0;
        let qj = 0;
        let airTi = 0;
        let airTj = 0;
        let airi = 0;
        let airj = 0;
        if (moves) {
          gvTi = permeance * pByTBefore;
          gvi = permeance * pByThetaBefore;
          gvTj = -permeance * pByT;
          gvj = -permeance * pByTheta;
          if (through !== 0) {
            airTi = fromI * (pByTBefore - pBefore / TBefore);
            airTj = fromJ * (pByT - p / T);
            airi = fromI * pByThetaBefore;
            airj = fromJ * pByTheta;
          }
        }
        if (kind === 0) {
          const halfFall = 0.5 * drop * inverse;
          qTi = lambdaByTBefore * halfFall;
          qTj = lambdaByTHere * halfFall;
          qi = lambdaByThetaBefore * halfFall;
          qj = lambdaByThetaHere * halfFall;
          if (moves) {
            const halfDrop = 0.5 * pressureDrop * inverse;
            gvTi += vapourByTBefore * halfDrop;
            gvi += vapourByThetaBefore * halfDrop;
            gvTj += vapourByTHere * halfDrop;
            gvj += vapourByThetaHere * halfDrop;
            gli = psiByThetaBefore * inverse;
            glj = -psiByThetaHere * inverse;
            glTi = psiByTBefore * inverse;
            glTj = -psiByTHere * inverse;
          }
        } else if (moves && kind === 1) {
          gvi += 0.5 * ofThin * pressureDrop * slopeBefore;
          gvj += 0.5 * ofThin * pressureDrop * slope;
        } else if (moves) {
          gli = ofThin;
          glj = -ofThin;
        }
        const heatTi =
          qTi + conductance + hv * gvTi + hl * glTi + carried + airHeat * (1 - weightHeat) + latent * airTi;
        const heatTj = qTj - conductance + hv * gvTj + hl * glTj + carried + airHeat * weightHeat + latent * airTj;
        const heati = qi + hv * gvi + hl * gli + latent * airi;
        const heatj = qj + hv * gvj + hl * glj + latent * airj;
        const flowTi = gvTi + glTi + airTi;
        const flowTj = gvTj + glTj + airTj;
        const flowi = gvi + gli + airi;
        const flowj = gvj + glj + airj;
        const k = 4 * e;
        diagonal[k] = d0 - heatTi;
        diagonal[k + 1] = d1 - heati;
        diagonal[k + 2] = d2 - flowTi;
        diagonal[k + 3] = d3 - flowi;
        upper[k] = -heatTj;
        upper[k + 1] = -heatj;
        upper[k + 2] = -flowTj;
        upper[k + 3] = -flowj;
        lower[k + 4] = heatTi;
        lower[k + 5] = heati;
        lower[k + 6] = flowTi;
        lower[k + 7] = flowi;
        d0 = heatTj;
        d1 = heatj;
        d2 = flowTj;
        d3 = flowj;
      }
    }

    TBefore = T;
    thetaBefore = theta;
    phiBefore = phi;
    slopeBefore = slope;
    pBefore = p;
    psiBefore = psi;
    vapourBefore = vapour;
    lambdaBefore = lambda;
    if (derivatives) {
      pByTBefore = pByT;
      pByThetaBefore = pByTheta;
      psiByThetaBefore = psiByTheta;
      psiByTBefore = psiByT;
      vapourByThetaBefore = vapourByTheta;
      vapourByTBefore = vapourByT;
      lambdaByThetaBefore = lambdaByTheta;
      lambdaByTBefore = lambdaByT;
    }
  }
  const last = nodes - 1;
  rate[2 * last] = heatBefore;
  rate[2 * last + 1] = waterBefore;
  if (derivatives) {
    diagonal[4 * last] = d0;
    diagonal[4 * last + 1] = d1;
    diagonal[4 * last + 2] = d2;
    diagonal[4 * last + 3] = d3;
  }
  return -1;
}

/**
 * Weight of the downwind node in the carried value, for a Péclet number Pe of the element, positive inward: 1/Pe - 1/(exp(Pe) - 1).
 * It makes one-dimensional steady flow exact at the nodes; 1/2 without flow, 0 or 1 at high flow.
 */
export function downwindWeight(peclet: number): number {
  if (Math.abs(peclet) < 1e-3) return 0.5 - peclet / 12;
  if (peclet > 500) return 1 / peclet;
  if (peclet < -500) return 1 + 1 / peclet;
  return 1 / peclet - 1 / Math.expm1(peclet);
}
