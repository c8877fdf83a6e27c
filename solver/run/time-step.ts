import { solve } from "../numerics/block-tridiagonal.ts";
import { holdFixedFields, solveStage } from "./stage.ts";
import type { StageFlows, Stepper } from "./stepper.ts";

/**
 * One step of the two-stage singly diagonally implicit Runge-Kutta scheme of second order, L-stable, stiffly accurate.
 * Source: R. Alexander, SIAM J. Numer. Anal. 14 (1977) 1006-1021; gamma = 1 - 1/sqrt(2).
 *
 * Heat and moisture are solved together in each stage. What is stepped is the stored enthalpy and water. The iteration of a stage
 * ends when it is close, not when it is exact: what it leaves over of a layer's balance is spread over that layer's nodes by their
 * capacity and so carried into the next step, never lost. (Carried node by node it would upset thin slices when the next step is
 * much shorter.)
 */
export const gamma = 1 - Math.SQRT1_2;

/** Leading error of the scheme on y' = k y: |1/6 - 2 gamma + ... | h^3 y''', from the series of exp(z) - (1 + (1 - 2 gamma) z)/(1 - gamma z)^2. */
const errorConstant = 0.0404;

/**
 * Right after a load has jumped the rates before it say nothing of the step, and the rates at it are out of all proportion at held
 * faces; the first difference of the two stages then stands in, with this weight. It asks for shorter steps than need be.
 */
const afterJump = 0.1;

/** Water errors are seen against what the node holds, and at least against this. */
const leastWater_kgm2 = 0.03;

/**
 * Tries a step of h seconds over [k, tau0..tau1]. Returns the error in units of the tolerance, or Infinity when an iteration failed.
 * The trial state, stored amounts and stage flows stand in the stepper for `accept`.
 */
export function tryStep(s: Stepper, k: number, tau0: number, tau1: number, h: number, last: boolean): number {
  const { wall, work, cursor, target, stored, rate, rate1, slope, change } = s;
  const { x } = work;
  const size = 2 * wall.nodes;
  cursor.read(k, tau0 + gamma * (tau1 - tau0));
  target.set(stored);
  for (let i = 0; i < size; i++) x[i] = s.x[i]! + gamma * slope[i]! * h;
  if (!solveStage(s, gamma * h, true, "rates")) return Infinity;
  rate1.set(work.rate);
  keepFlows(s, s.first);
  for (let i = 0; i < size; i++) {
    target[i] = stored[i]! + (1 - gamma) * h * rate1[i]!;
    x[i] = s.x[i]! + (x[i]! - s.x[i]!) / gamma;
  }
  cursor.read(k, tau1);
  if (!solveStage(s, gamma * h, false, last ? "end" : "state")) return Infinity;
  keepFlows(s, s.second);
  const rate2 = work.rate;
  for (let i = 0; i < size; i++) {
    s.trialStored[i] = stored[i]! + h * ((1 - gamma) * rate1[i]! + gamma * rate2[i]!);
    const later = (rate2[i]! - rate1[i]!) / (1 - gamma);
    // Second divided difference of the rates over the step: half of y''' h^2.
    change[i] = s.smooth ? 2 * errorConstant * h * (later - (rate1[i]! - rate[i]!) / gamma) : afterJump * h * later;
  }
  holdFixedFields(s, change);
  solve(work.system, wall.nodes, change);
  return errorNorm(s);
}

/** Makes the trial state the accepted one. */
export function accept(s: Stepper, h: number): void {
  const { work, x, slope } = s;
  spreadLeftOver(s);
  for (let i = 0; i < x.length; i++) slope[i] = (work.x[i]! - x[i]!) / h;
  x.set(work.x);
  s.rate.set(work.rate);
  s.smooth = true;
  weigh(s);
}

/** Weighs the unknowns by the state in the workspace, for errors of steps and iterations. */
export function weigh(s: Stepper): void {
  const { wall, work, weight, tolerance } = s;
  const byT = 1 / tolerance.temperature_K;
  const byHumidity = 1 / tolerance.humidity;
  const byWater = 1 / tolerance.water;
  for (let i = 0; i < wall.nodes; i++) {
    weight[2 * i] = byT;
    const held = work.stored[2 * i + 1]! + leastWater_kgm2;
    weight[2 * i + 1] = Math.max(work.humiditySlope[i]! * byHumidity, (work.capacity[4 * i + 3]! / held) * byWater);
  }
}

/** The storage the next step starts from: what the state holds, and what the step left over, spread by capacity within each solid layer. */
function spreadLeftOver(s: Stepper): void {
  const { work, wall, stored, trialStored, leftOver, spread } = s;
  const { solids, nodes } = wall;
  const { capacity } = work;
  leftOver.fill(0);
  for (let i = 0; i < nodes; i++) {
    const a = 4 * solids[2 * i]!;
    const b = 4 * solids[2 * i + 1]!;
    const heat = 0.5 * (trialStored[2 * i]! - work.stored[2 * i]!);
    const water = 0.5 * (trialStored[2 * i + 1]! - work.stored[2 * i + 1]!);
    const forHeat = 0.5 * capacity[4 * i]!;
    const forWater = 0.5 * capacity[4 * i + 3]!;
    leftOver[a]! += heat;
    leftOver[b]! += heat;
    leftOver[a + 1]! += water;
    leftOver[b + 1]! += water;
    leftOver[a + 2]! += forHeat;
    leftOver[b + 2]! += forHeat;
    leftOver[a + 3]! += forWater;
    leftOver[b + 3]! += forWater;
  }
  for (let g = 0; g < leftOver.length; g += 4) {
    leftOver[g] = wall.physics.heat && leftOver[g + 2]! > 0 ? leftOver[g]! / leftOver[g + 2]! : 0;
    leftOver[g + 1] = wall.physics.moisture && leftOver[g + 3]! > 0 ? leftOver[g + 1]! / leftOver[g + 3]! : 0;
  }
  let moved = 0;
  for (let i = 0; i < nodes; i++) {
    const a = 4 * solids[2 * i]!;
    const b = 4 * solids[2 * i + 1]!;
    stored[2 * i] = work.stored[2 * i]! + 0.5 * (leftOver[a]! + leftOver[b]!) * capacity[4 * i]!;
    stored[2 * i + 1] = work.stored[2 * i + 1]! + 0.5 * (leftOver[a + 1]! + leftOver[b + 1]!) * capacity[4 * i + 3]!;
    // Spreading moves water between the nodes of a layer: counted as flow, so that every plane's budget closes.
    moved += trialStored[2 * i + 1]! - stored[2 * i + 1]!;
    if (i < nodes - 1) spread[i] = moved;
  }
}

function errorNorm(s: Stepper): number {
  const { change, weight } = s;
  let worst = 0;
  for (let i = 0; i < change.length; i++) {
    const counts = Math.abs(change[i]!) * weight[i]!;
    if (!(counts <= worst)) worst = counts;
  }
  return worst;
}

function keepFlows(s: Stepper, flows: StageFlows): void {
  const { work, wall } = s;
  flows.water.set(work.waterIn);
  flows.heat.set(work.heatIn);
  flows.runOff.set(work.runOff);
  flows.vapour.set(work.elementVapour);
  flows.liquid.set(work.elementLiquid);
  flows.source.set(work.sourceGain);
  flows.heatFromRoom = wall.nodes > 1 ? -work.elementHeat[wall.nodes - 2]! : 0;
}
