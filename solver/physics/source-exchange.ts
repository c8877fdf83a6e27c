import { enthalpyZero_K, type Workspace } from "./workspace.ts";
import { heatIndex, waterIndex } from "./book-entries.ts";
import { cavityAirChanges } from "./cavity-ventilation.ts";
import { uptakeShare, uptakeSlope } from "./faces.ts";
import { insideOffset, load, windSpeed } from "./load-cursor.ts";
import { leakExponent } from "./sources.ts";
import type { WallModel } from "./wall-model.ts";

/** Ratio of the gas constants of air and vapour [-] and heat capacity of air [J/(kg K)]. */
const molarRatio = 0.62198;
const airHeatCapacity_JkgK = 1006;
/** Of dry air [J/(kg K)]; moist outdoor air is lighter by less than 1 %. */
const gasConstantAir_JkgK = 287.055;

/** Leaking air, leaking rain and ventilated cavities: exchange with a node inside the wall. */
export function exchangeAtSources(wall: WallModel, work: Workspace, loads: Float64Array, derivatives: boolean): void {
  const { airLeaks, rainLeaks, cavities } = wall.sources;
  let source = 0;
  for (let n = 0; n < airLeaks.length; n++) {
    const leak = airLeaks[n]!;
    let flow = leak.fixed_kgm2s;
    if (leak.coefficient > 0) {
      const drop = loads[insideOffset + load.airPressure]! - loads[load.airPressure]!;
      flow = leak.coefficient * Math.sign(drop) * Math.pow(Math.abs(drop), leakExponent);
    }
    // Outward flow brings room air to the node, inward flow outdoor air.
    const from = flow >= 0 ? insideOffset : 0;
    exchangeAir(wall, work, loads, leak.node, from, Math.abs(flow), airLeakBook, source++, derivatives);
  }
  for (let n = 0; n < rainLeaks.length; n++) {
    leakRain(wall, work, loads, rainLeaks[n]!.node, rainLeaks[n]!.share, source++, derivatives);
  }
  for (let n = 0; n < cavities.length; n++) {
    const cavity = cavities[n]!;
    const changes =
      cavity.airChangesPerHour ??
      cavityAirChanges(loads[windSpeed]!, work.x[2 * cavity.node]! - loads[load.temperature]!, cavity.depth_m);
    const density = wall.physics.barometricPressure_Pa / (gasConstantAir_JkgK * loads[load.temperature]!);
    const flow = (density * changes * cavity.depth_m) / 3600;
    exchangeAir(wall, work, loads, cavity.node, 0, flow, cavityBook, source++, derivatives);
  }
}

const airLeakBook = { water: waterIndex["air leak"], heat: heatIndex["air leak"] };
const cavityBook = { water: waterIndex["cavity air"], heat: heatIndex["cavity air"] };

/**
 * Air of mass flow m [kg/(m2 s)] that arrives with the state of a side and leaves with the state of the node. Humidity ratio is taken as
 * 0.622 p/P, so what it brings is m 0.622/P (p_air - p_node) of vapour and its enthalpy.
 */
function exchangeAir(
  wall: WallModel,
  work: Workspace,
  loads: Float64Array,
  node: number,
  from: number,
  flow: number,
  book: { water: number; heat: number },
  source: number,
  derivatives: boolean,
): void {
  const { physics } = wall;
  const { x, rate, pressure, pressureByT, pressureByTheta, system } = work;
  const T = x[2 * node]!;
  const airT = loads[from + load.temperature]!;
  const perPascal = (flow * molarRatio) / physics.barometricPressure_Pa;
  const g = perPascal * (loads[from + load.vapourPressure]! - pressure[node]!);
  const vapourHeat = physics.sensibleHeat ? physics.vapourHeatCapacity_JkgK : 0;
  const hv = physics.latentHeat_Jkg + vapourHeat * (0.5 * (airT + T) - enthalpyZero_K);
  const heat = flow * airHeatCapacity_JkgK * (airT - T) + hv * g;
  work.waterIn[book.water]! += g;
  work.heatIn[book.heat]! += heat;
  work.sourceGain[source] = g;
  rate[2 * node]! += heat;
  rate[2 * node + 1]! += g;
  if (!derivatives) return;
  const k = 4 * node;
  const gT = -perPascal * pressureByT[node]!;
  const gTheta = -perPascal * pressureByTheta[node]!;
  system.diagonal[k]! += -flow * airHeatCapacity_JkgK + hv * gT + 0.5 * vapourHeat * g;
  system.diagonal[k + 1]! += hv * gTheta;
  system.diagonal[k + 2]! += gT;
  system.diagonal[k + 3]! += gTheta;
}

function leakRain(
  wall: WallModel,
  work: Workspace,
  loads: Float64Array,
  node: number,
  share: number,
  source: number,
  derivatives: boolean,
): void {
  const { physics } = wall;
  const arriving = share * loads[load.rain]!;
  work.sourceGain[source] = 0;
  if (!(arriving > 0)) return;
  const theta = work.x[2 * node + 1]!;
  const taken = arriving * uptakeShare(theta);
  const warm = physics.sensibleHeat ? physics.waterHeatCapacity_JkgK * (loads[load.temperature]! - enthalpyZero_K) : 0;
  work.runOff[2]! += arriving - taken;
  work.waterIn[waterIndex["rain leak"]]! += taken;
  work.heatIn[heatIndex["rain leak"]]! += warm * taken;
  work.sourceGain[source] = taken;
  work.rate[2 * node]! += warm * taken;
  work.rate[2 * node + 1]! += taken;
  if (!derivatives) return;
  const k = 4 * node;
  const byTheta = arriving * uptakeSlope(theta);
  work.system.diagonal[k + 1]! += warm * byTheta;
  work.system.diagonal[k + 3]! += byTheta;
}
