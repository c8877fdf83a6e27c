import { enthalpyZero_K, type Workspace } from "./workspace.ts";
import { throughFlow } from "./load-cursor.ts";
import { membraneIntervals, type WallModel } from "./wall-model.ts";

/**
 * Vapour, liquid and heat between neighbour nodes, added to the rates and, if asked, to their derivatives. Positive inward.
 *
 * Vapour flows down vapour pressure with the mean permeability of both ends; liquid down the flow potential of its material;
 * heat by conduction and with the enthalpy of what moves. Sources: EN 15026:2007, section 5; Künzel (1995).
 */
export function flowThroughElements(wall: WallModel, work: Workspace, loads: Float64Array, derivatives: boolean): void {
  const { nodes, physics, elementKind, outerSlot, innerSlot, perLength } = wall;
  const { thermalConductance, vapourConductance, liquidConductance, membrane } = wall;
  const { x, rate, humidity, humiditySlope, pressure, pressureByT, pressureByTheta, system } = work;
  const { elementVapour, elementLiquid, elementHeat } = work;
  const { vapour, vapourByT, vapourByTheta, liquid, liquidByEta, etaByT } = work;
  const { conductivity, conductivityByT, conductivityByTheta } = work;
  const { lower, diagonal, upper } = system;
  const latent = physics.latentHeat_Jkg;
  const vapourHeat = physics.sensibleHeat ? physics.vapourHeatCapacity_JkgK : 0;
  const liquidHeat = physics.sensibleHeat ? physics.waterHeatCapacity_JkgK : 0;
  const moves = physics.moisture;
  const through = loads[throughFlow]!;
  const airHeat = through * physics.airVolumetricHeatCapacity_Jm3K;

  const zero = enthalpyZero_K;
  const intervals = membraneIntervals;
  for (let e = 0; e < nodes - 1; e++) {
    const i = 2 * e;
    const j = i + 2;
    const Ti = x[i]!;
    const Tj = x[j]!;
    const drop = Ti - Tj;
    const pressureDrop = pressure[e]! - pressure[e + 1]!;
    let permeance: number;
    let conductance: number;
    let gl = 0;
    // Derivatives: by T and theta of the outer (i) and inner (j) node.
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
    if (elementKind[e] === 0) {
      const a = outerSlot[e]!;
      const b = innerSlot[e]!;
      const inverse = perLength[e]!;
      permeance = 0.5 * (vapour[a]! + vapour[b]!) * inverse;
      conductance = 0.5 * (conductivity[a]! + conductivity[b]!) * inverse;
      gl = (liquid[a]! - liquid[b]!) * inverse;
      if (derivatives) {
        const halfDrop = 0.5 * pressureDrop * inverse;
        gvTi = vapourByT[a]! * halfDrop;
        gvi = vapourByTheta[a]! * halfDrop;
        gvTj = vapourByT[b]! * halfDrop;
        gvj = vapourByTheta[b]! * halfDrop;
        gli = liquidByEta[a]! * inverse;
        glj = -liquidByEta[b]! * inverse;
        glTi = gli * etaByT[a]!;
        glTj = glj * etaByT[b]!;
        const halfFall = 0.5 * drop * inverse;
        qTi = conductivityByT[a]! * halfFall;
        qTj = conductivityByT[b]! * halfFall;
        qi = conductivityByTheta[a]! * halfFall;
        qj = conductivityByTheta[b]! * halfFall;
      }
    } else {
      conductance = thermalConductance[e]!;
      permeance = vapourConductance[e]!;
      if (elementKind[e] === 1) {
        const table = membrane[e]!;
        const y = 0.5 * (humidity[e]! + humidity[e + 1]!) * intervals;
        const k = y >= intervals ? intervals - 1 : y | 0;
        const rise = table[k + 1]! - table[k]!;
        permeance = table[k]! + rise * (y - k);
        const byHumidity = 0.5 * rise * intervals * pressureDrop;
        gvi = byHumidity * humiditySlope[e]!;
        gvj = byHumidity * humiditySlope[e + 1]!;
      } else {
        gli = liquidConductance[e]!;
        glj = -gli;
        gl = gli * (x[i + 1]! - x[j + 1]!);
      }
    }
    let gv = permeance * pressureDrop;
    if (!moves) gv = gl = 0;

    const meanWarm = 0.5 * (Ti + Tj) - zero;
    const hv = latent + vapourHeat * meanWarm;
    const hl = liquidHeat * meanWarm;
    let heat = conductance * drop + hv * gv + hl * gl;
    let water = gv + gl;
    let ga = 0;
    let weightHeat = 0;
    let fromI = 0;
    let fromJ = 0;
    if (through !== 0) {
      // Air through the wall, upwind to the degree that the exact steady profile asks for.
      weightHeat = downwindWeight(airHeat / conductance);
      heat += airHeat * ((1 - weightHeat) * (Ti - zero) + weightHeat * (Tj - zero));
      const perPascal = moves ? through / physics.gasConstantVapour_JkgK : 0;
      const weight = downwindWeight(perPascal / (0.5 * (Ti + Tj)) / Math.max(permeance, 1e-20));
      fromI = (perPascal * (1 - weight)) / Ti;
      fromJ = (perPascal * weight) / Tj;
      ga = fromI * pressure[e]! + fromJ * pressure[e + 1]!;
      water += ga;
      heat += latent * ga;
    }

    elementVapour[e] = gv + ga;
    elementLiquid[e] = gl;
    elementHeat[e] = heat;
    rate[i]! -= heat;
    rate[j]! += heat;
    rate[i + 1]! -= water;
    rate[j + 1]! += water;
    if (!derivatives) continue;

    if (moves) {
      gvTi += permeance * pressureByT[e]!;
      gvi += permeance * pressureByTheta[e]!;
      gvTj -= permeance * pressureByT[e + 1]!;
      gvj -= permeance * pressureByTheta[e + 1]!;
      if (through !== 0) {
        gvTi += fromI * (pressureByT[e]! - pressure[e]! / Ti);
        gvTj += fromJ * (pressureByT[e + 1]! - pressure[e + 1]! / Tj);
        gvi += fromI * pressureByTheta[e]!;
        gvj += fromJ * pressureByTheta[e + 1]!;
      }
    } else gvTi = gvTj = gvi = gvj = glTi = glTj = gli = glj = 0;
    const carried = 0.5 * (vapourHeat * gv + liquidHeat * gl);
    const heatTi = qTi + conductance + hv * gvTi + hl * glTi + carried + airHeat * (1 - weightHeat);
    const heatTj = qTj - conductance + hv * gvTj + hl * glTj + carried + airHeat * weightHeat;
    const heati = qi + hv * gvi + hl * gli;
    const heatj = qj + hv * gvj + hl * glj;
    const k = 4 * e;
    const n = k + 4;
    diagonal[k]! -= heatTi;
    diagonal[k + 1]! -= heati;
    diagonal[k + 2]! -= gvTi + glTi;
    diagonal[k + 3]! -= gvi + gli;
    upper[k] = -heatTj;
    upper[k + 1] = -heatj;
    upper[k + 2] = -gvTj - glTj;
    upper[k + 3] = -gvj - glj;
    lower[n] = heatTi;
    lower[n + 1] = heati;
    lower[n + 2] = gvTi + glTi;
    lower[n + 3] = gvi + gli;
    diagonal[n]! += heatTj;
    diagonal[n + 1]! += heatj;
    diagonal[n + 2]! += gvTj + glTj;
    diagonal[n + 3]! += gvj + glj;
  }
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
