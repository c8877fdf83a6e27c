import { enthalpyZero_K, type Workspace } from "./balance.ts";
import { throughFlow } from "./load-cursor.ts";
import { membraneIntervals, type WallModel } from "./wall-model.ts";

/**
 * Vapour, liquid and heat between neighbour nodes, added to the rates and, if asked, to their derivatives. Positive inward.
 *
 * Vapour flows down vapour pressure with the mean permeability of both ends; liquid down the flow potential of its material;
 * heat by conduction and with the enthalpy of what moves. Sources: EN 15026:2007, section 5; Künzel (1995).
 */
export function flowThroughElements(wall: WallModel, work: Workspace, loads: Float64Array, derivatives: boolean): void {
  const { nodes, physics, elementKind, outerSlot, innerSlot, length } = wall;
  const { x, rate, pressure, pressureByT, pressureByTheta, system } = work;
  const { vapour, vapourByT, vapourByTheta, liquid, liquidByEta, etaByT } = work;
  const { conductivity, conductivityByT, conductivityByTheta } = work;
  const { lower, diagonal, upper } = system;
  const latent = physics.latentHeat_Jkg;
  const vapourHeat = physics.sensibleHeat ? physics.vapourHeatCapacity_JkgK : 0;
  const liquidHeat = physics.sensibleHeat ? physics.waterHeatCapacity_JkgK : 0;
  const through = loads[throughFlow]!;

  for (let e = 0; e < nodes - 1; e++) {
    const i = 2 * e;
    const j = i + 2;
    const Ti = x[i]!;
    const Tj = x[j]!;
    const drop = Ti - Tj;
    const pressureDrop = pressure[e]! - pressure[e + 1]!;
    let gv: number;
    let gvTi: number;
    let gvTj: number;
    let gvi: number;
    let gvj: number;
    let gl = 0;
    let glTi = 0;
    let glTj = 0;
    let gli = 0;
    let glj = 0;
    let q: number;
    let qTi: number;
    let qTj: number;
    let qi = 0;
    let qj = 0;
    let heatConductance: number;
    let vapourConductance: number;
    if (elementKind[e] === 0) {
      const a = outerSlot[e]!;
      const b = innerSlot[e]!;
      const perLength = 1 / length[e]!;
      const permeability = 0.5 * (vapour[a]! + vapour[b]!) * perLength;
      const halfDrop = 0.5 * pressureDrop * perLength;
      gv = permeability * pressureDrop;
      gvTi = vapourByT[a]! * halfDrop + permeability * pressureByT[e]!;
      gvi = vapourByTheta[a]! * halfDrop + permeability * pressureByTheta[e]!;
      gvTj = vapourByT[b]! * halfDrop - permeability * pressureByT[e + 1]!;
      gvj = vapourByTheta[b]! * halfDrop - permeability * pressureByTheta[e + 1]!;
      gl = (liquid[a]! - liquid[b]!) * perLength;
      gli = liquidByEta[a]! * perLength;
      glj = -liquidByEta[b]! * perLength;
      glTi = gli * etaByT[a]!;
      glTj = glj * etaByT[b]!;
      const lambda = 0.5 * (conductivity[a]! + conductivity[b]!) * perLength;
      const halfFall = 0.5 * drop * perLength;
      heatConductance = lambda;
      vapourConductance = permeability;
      q = lambda * drop;
      qTi = conductivityByT[a]! * halfFall + lambda;
      qTj = conductivityByT[b]! * halfFall - lambda;
      qi = conductivityByTheta[a]! * halfFall;
      qj = conductivityByTheta[b]! * halfFall;
    } else {
      const thermal = wall.thermalConductance[e]!;
      q = thermal * drop;
      qTi = thermal;
      qTj = -thermal;
      let permeance = wall.vapourConductance[e]!;
      let byHumidity = 0;
      if (elementKind[e] === 1) {
        const table = wall.membrane[e]!;
        const y = 0.5 * (work.humidity[e]! + work.humidity[e + 1]!) * membraneIntervals;
        const k = y >= membraneIntervals ? membraneIntervals - 1 : y | 0;
        const rise = table[k + 1]! - table[k]!;
        permeance = table[k]! + rise * (y - k);
        byHumidity = 0.5 * rise * membraneIntervals * pressureDrop;
      } else {
        const conductance = wall.liquidConductance[e]!;
        gl = conductance * (x[i + 1]! - x[j + 1]!);
        gli = conductance;
        glj = -conductance;
      }
      heatConductance = thermal;
      vapourConductance = permeance;
      gv = permeance * pressureDrop;
      gvTi = permeance * pressureByT[e]!;
      gvTj = -permeance * pressureByT[e + 1]!;
      gvi = permeance * pressureByTheta[e]! + byHumidity * work.humiditySlope[e]!;
      gvj = -permeance * pressureByTheta[e + 1]! + byHumidity * work.humiditySlope[e + 1]!;
    }

    if (!physics.moisture) gv = gvTi = gvTj = gvi = gvj = gl = glTi = glTj = gli = glj = 0;
    const meanWarm = 0.5 * (Ti + Tj) - enthalpyZero_K;
    const hv = latent + vapourHeat * meanWarm;
    const hl = liquidHeat * meanWarm;
    const carried = 0.5 * (vapourHeat * gv + liquidHeat * gl);
    let heat = q + hv * gv + hl * gl;
    let heatTi = qTi + hv * gvTi + hl * glTi + carried;
    let heatTj = qTj + hv * gvTj + hl * glTj + carried;
    let heati = qi + hv * gvi + hl * gli;
    let heatj = qj + hv * gvj + hl * glj;
    let water = gv + gl;
    let waterTi = gvTi + glTi;
    let waterTj = gvTj + glTj;
    let wateri = gvi + gli;
    let waterj = gvj + glj;

    if (through !== 0) {
      const carriesVapour = physics.moisture ? through : 0;
      // Air through the wall, upwind to the degree that the exact steady profile asks for.
      const airHeat = through * physics.airVolumetricHeatCapacity_Jm3K;
      const weightHeat = downwindWeight(airHeat / heatConductance);
      heat += airHeat * ((1 - weightHeat) * (Ti - enthalpyZero_K) + weightHeat * (Tj - enthalpyZero_K));
      heatTi += airHeat * (1 - weightHeat);
      heatTj += airHeat * weightHeat;
      const R = physics.gasConstantVapour_JkgK;
      const perPascal = carriesVapour / R;
      const weight = downwindWeight(perPascal / (0.5 * (Ti + Tj)) / Math.max(vapourConductance, 1e-20));
      const fromI = (perPascal * (1 - weight)) / Ti;
      const fromJ = (perPascal * weight) / Tj;
      const g = fromI * pressure[e]! + fromJ * pressure[e + 1]!;
      const gTi = fromI * (pressureByT[e]! - pressure[e]! / Ti);
      const gTj = fromJ * (pressureByT[e + 1]! - pressure[e + 1]! / Tj);
      const gi = fromI * pressureByTheta[e]!;
      const gj = fromJ * pressureByTheta[e + 1]!;
      water += g;
      waterTi += gTi;
      waterTj += gTj;
      wateri += gi;
      waterj += gj;
      heat += latent * g;
      heatTi += latent * gTi;
      heatTj += latent * gTj;
      heati += latent * gi;
      heatj += latent * gj;
    }

    work.elementVapour[e] = water - gl;
    work.elementLiquid[e] = gl;
    work.elementHeat[e] = heat;
    rate[i]! -= heat;
    rate[j]! += heat;
    rate[i + 1]! -= water;
    rate[j + 1]! += water;
    if (!derivatives) continue;
    const k = 4 * e;
    const n = k + 4;
    diagonal[k]! -= heatTi;
    diagonal[k + 1]! -= heati;
    diagonal[k + 2]! -= waterTi;
    diagonal[k + 3]! -= wateri;
    upper[k]! -= heatTj;
    upper[k + 1]! -= heatj;
    upper[k + 2]! -= waterTj;
    upper[k + 3]! -= waterj;
    lower[n]! += heatTi;
    lower[n + 1]! += heati;
    lower[n + 2]! += waterTi;
    lower[n + 3]! += wateri;
    diagonal[n]! += heatTj;
    diagonal[n + 1]! += heatj;
    diagonal[n + 2]! += waterTj;
    diagonal[n + 3]! += waterj;
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
