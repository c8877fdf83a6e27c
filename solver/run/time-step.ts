import { factor, solve } from "../numerics/block-tridiagonal.ts";
import { evaluate } from "../physics/balance.ts";
import type { Workspace } from "../physics/workspace.ts";
import type { FaceHolding } from "../physics/faces.ts";
import type { LoadCursor } from "../physics/load-cursor.ts";
import type { WallModel } from "../physics/wall-model.ts";

/**
 * One step of the two-stage singly diagonally implicit Runge-Kutta scheme of second order, L-stable, stiffly accurate.
 * Source: R. Alexander, SIAM J. Numer. Anal. 14 (1977) 1006-1021; gamma = 1 - 1/sqrt(2).
 *
 * Heat and moisture are solved together in each stage by Newton's method. What is stepped is the stored enthalpy and water. The
 * iteration ends when it is close, not when it is exact: what it leaves over of a layer's balance is spread over that layer's nodes
 * by their capacity and so carried into the next step, never lost. (Carried node by node it would upset thin slices when the
 * next step is much shorter.)
 */
export const gamma = 1 - Math.SQRT1_2;

/** Leading error of the scheme on y' = k y: |1/6 - 2 gamma + ... | h^3 y''', from the series of exp(z) - (1 + (1 - 2 gamma) z)/(1 - gamma z)^2. */
const errorConstant = 0.0404;

/**
 * Right after a load has jumped the rates before it say nothing of the step, and the rates at it are out of all proportion at held
 * faces; the first difference of the two stages then stands in, with this weight. It asks for shorter steps than need be.
 */
const afterJump = 0.1;

const mostIterations = 14;
/** A change of an iterate under this ends the iteration: the next one would be its square. */
const settledTemperature_K = 2e-4;
const settledPotential = 2.5e-5;
/**
 * The last step of a run goes on until its remainder is this small in every node: the books then show the balance and not the
 * last remainder.
 */
const lastWater_kgm2 = 1e-10;
const lastHeat_Jm2 = 1e-3;
/** A factored system serves for steps this much longer or shorter, while each change is under this share of the one before. */
const reuseWithin = 0.25;
const wellContracting = 0.25;
/** Water errors are seen against what the node holds, and at least against this. */
const leastWater_kgm2 = 0.03;
/** Steps of an iterate are cut to these. */
const longestTemperature_K = 25;
const longestPotential = 1.5;

export interface Tolerance {
  readonly temperature_K: number;
  readonly humidity: number;
  /** Relative to the water in the node. */
  readonly water: number;
  /** How far iterations are carried, 1 at the default: a finer tolerance wants finer answers. */
  readonly settling: number;
}

/** Of a run that asks for none. */
export const defaultTolerance = 1e-3;

/** Allowed local error of a step, scaled by one number. */
export function toleranceOf(scale: number): Tolerance {
  return {
    temperature_K: 40 * scale,
    humidity: 4 * scale,
    water: 10 * scale,
    settling: Math.min(1, scale / defaultTolerance),
  };
}

/** What a stage left behind, for the books. */
export interface StageFlows {
  readonly water: Float64Array;
  readonly heat: Float64Array;
  readonly runOff: Float64Array;
  readonly vapour: Float64Array;
  readonly liquid: Float64Array;
  readonly source: Float64Array;
  heatFromRoom: number;
}

export interface Stepper {
  readonly wall: WallModel;
  readonly work: Workspace;
  readonly cursor: LoadCursor;
  readonly holding: FaceHolding;
  readonly tolerance: Tolerance;
  /** Accepted state, stored amounts and rates at its end. */
  readonly x: Float64Array;
  readonly stored: Float64Array;
  readonly rate: Float64Array;
  readonly first: StageFlows;
  readonly second: StageFlows;
  /** Trial state. */
  readonly trial: Float64Array;
  readonly target: Float64Array;
  readonly trialStored: Float64Array;
  readonly rate1: Float64Array;
  readonly change: Float64Array;
  /** Per solid layer: heat and water left over, and capacities. */
  readonly leftOver: Float64Array;
  readonly step: Float64Array;
  iterations: number;
  /** Factor of the rates for which the system was last factored. */
  factoredFor: number;
  /** False: some load jumped at the start of the step, `rate` does not belong to it. */
  smooth: boolean;
  /** Node where the last failed step broke, and why. */
  troubleNode: number;
  trouble: string;
}

export function stepper(
  wall: WallModel,
  work: Workspace,
  cursor: LoadCursor,
  holding: FaceHolding,
  tolerance: Tolerance,
): Stepper {
  const size = 2 * wall.nodes;
  const vector = () => new Float64Array(size);
  const flows = (): StageFlows => ({
    water: new Float64Array(work.waterIn.length),
    heat: new Float64Array(work.heatIn.length),
    runOff: new Float64Array(work.runOff.length),
    vapour: new Float64Array(wall.nodes - 1),
    liquid: new Float64Array(wall.nodes - 1),
    source: new Float64Array(work.sourceGain.length),
    heatFromRoom: 0,
  });
  return {
    wall,
    work,
    cursor,
    holding,
    tolerance,
    x: vector(),
    stored: vector(),
    rate: vector(),
    first: flows(),
    second: flows(),
    trial: vector(),
    target: vector(),
    trialStored: vector(),
    rate1: vector(),
    change: vector(),
    leftOver: new Float64Array(4 * wall.groups),
    step: vector(),
    iterations: 0,
    factoredFor: 0,
    smooth: false,
    troubleNode: -1,
    trouble: "",
  };
}

/**
 * Tries a step of h seconds over [k, tau0..tau1]. Returns the error in units of the tolerance, or Infinity when an iteration failed.
 * The trial state, stored amounts and stage flows stand in the stepper for `accept`.
 */
export function tryStep(s: Stepper, k: number, tau0: number, tau1: number, h: number, last: boolean): number {
  const { wall, work, cursor, trial, target, stored, rate, rate1, step, change } = s;
  const size = 2 * wall.nodes;
  cursor.read(k, tau0 + gamma * (tau1 - tau0));
  target.set(stored);
  for (let i = 0; i < size; i++) trial[i] = s.x[i]! + gamma * step[i]! * h;
  if (!solveStage(s, gamma * h, false)) return Infinity;
  rate1.set(work.rate);
  keepFlows(s, s.first);
  for (let i = 0; i < size; i++) {
    target[i] = stored[i]! + (1 - gamma) * h * rate1[i]!;
    trial[i] = s.x[i]! + (trial[i]! - s.x[i]!) / gamma;
  }
  cursor.read(k, tau1);
  if (!solveStage(s, gamma * h, last)) return Infinity;
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
  const { work, wall, x, stored, trial, trialStored, leftOver } = s;
  const { nodeGroup } = wall;
  leftOver.fill(0);
  for (let i = 0, k = 0, node = 0; node < wall.nodes; i += 2, k += 4, node++) {
    const g = 4 * nodeGroup[node]!;
    leftOver[g]! += trialStored[i]! - work.stored[i]!;
    leftOver[g + 1]! += trialStored[i + 1]! - work.stored[i + 1]!;
    leftOver[g + 2]! += work.capacity[k]!;
    leftOver[g + 3]! += work.capacity[k + 3]!;
  }
  for (let g = 0; g < leftOver.length; g += 4) {
    leftOver[g] = wall.physics.heat && leftOver[g + 2]! > 0 ? leftOver[g]! / leftOver[g + 2]! : 0;
    leftOver[g + 1] = wall.physics.moisture && leftOver[g + 3]! > 0 ? leftOver[g + 1]! / leftOver[g + 3]! : 0;
  }
  for (let i = 0, k = 0, node = 0; node < wall.nodes; i += 2, k += 4, node++) {
    const g = 4 * nodeGroup[node]!;
    stored[i] = work.stored[i]! + leftOver[g]! * work.capacity[k]!;
    stored[i + 1] = work.stored[i + 1]! + leftOver[g + 1]! * work.capacity[k + 3]!;
    s.step[i] = (trial[i]! - x[i]!) / h;
    s.step[i + 1] = (trial[i + 1]! - x[i + 1]!) / h;
  }
  x.set(trial);
  s.rate.set(work.rate);
  s.smooth = true;
}

function errorNorm(s: Stepper): number {
  const { wall, work, change, tolerance } = s;
  let worst = 0;
  for (let i = 0; i < wall.nodes; i++) {
    const byT = Math.abs(change[2 * i]!) / tolerance.temperature_K;
    const moved = Math.abs(change[2 * i + 1]!);
    const byHumidity = (moved * work.humiditySlope[i]!) / tolerance.humidity;
    const held = work.stored[2 * i + 1]!;
    const byWater = (moved * work.capacity[4 * i + 3]!) / (tolerance.water * (held + leastWater_kgm2));
    if (byT > worst) worst = byT;
    if (byHumidity > worst) worst = byHumidity;
    if (byWater > worst) worst = byWater;
  }
  return worst;
}

/**
 * Solves stored(x) - target - factor rate(x) = 0 from the guess in `trial`; leaves storage and rates of the answer in `work`.
 *
 * The factored system of the step before serves as long as the step length is alike and the iteration contracts well;
 * a new one is made when it does not.
 */
function solveStage(s: Stepper, factorOfRate: number, last: boolean): boolean {
  const { wall, work, trial, change, target } = s;
  const { nodes } = wall;
  const size = 2 * nodes;
  let fresh = !(Math.abs(factorOfRate / s.factoredFor - 1) < reuseWithin);
  let before = Infinity;
  let close = false;
  for (let iteration = 0; iteration < mostIterations; iteration++) {
    work.x.set(trial);
    let broken = evaluate(wall, work, s.cursor.values, s.holding, fresh);
    if (broken >= 0) return failed(s, broken, "the temperature left the range from -83 to 117 degC");
    for (let i = 0; i < size; i++) change[i] = target[i]! - work.stored[i]! + factorOfRate * work.rate[i]!;
    if (close && (!last || settled(s, factorOfRate))) return true;
    if (fresh) {
      formSystem(s, factorOfRate);
      s.factoredFor = factorOfRate;
      holdFixedFields(s, change);
      broken = factor(work.system, nodes);
      if (broken >= 0) return failed(s, broken, "the equations of this place became singular");
    } else holdFixedFields(s, change);
    solve(work.system, nodes, change);
    s.iterations++;
    let largestT = 0;
    let largestTheta = 0;
    for (let i = 0; i < size; i += 2) {
      const byT = Math.abs(change[i]!);
      const byTheta = Math.abs(change[i + 1]!);
      if (!(byT + byTheta < Infinity)) return failed(s, i / 2, "a value stopped being a number");
      if (byT > largestT) largestT = byT;
      if (byTheta > largestTheta) {
        largestTheta = byTheta;
        s.troubleNode = i / 2;
      }
    }
    const cut = Math.min(1, longestTemperature_K / largestT, longestPotential / largestTheta);
    for (let i = 0; i < size; i++) trial[i]! += cut * change[i]!;
    const { settling } = s.tolerance;
    const moved = Math.max(
      largestT / Math.max(settledTemperature_K * settling, 1e-5),
      largestTheta / Math.max(settledPotential * settling, 5e-6),
    );
    const contraction = moved / before;
    before = moved;
    // What is still to come: the rest of a geometric series; Newton's own steps shrink faster than that.
    const toCome = fresh
      ? moved
      : iteration === 0
        ? 3 * moved
        : (moved * contraction) / Math.max(1 - contraction, 1e-3);
    close = cut === 1 && toCome < 1;
    fresh = cut < 1 || (!close && iteration > 0 && contraction > wellContracting);
  }
  return failed(s, Math.max(s.troubleNode, 0), "heat and moisture did not come to agree");
}

/** Whether the remainder in `change` is small enough to end a run with. */
function settled(s: Stepper, factorOfRate: number): boolean {
  const { wall, work, change } = s;
  const water = lastWater_kgm2 + 1e-12 * factorOfRate;
  const heat = lastHeat_Jm2 + 1e-6 * factorOfRate;
  for (let i = 0; i < 2 * wall.nodes; i += 2) {
    if (wall.physics.moisture && Math.abs(change[i + 1]!) > water + 1e-13 * Math.abs(work.stored[i + 1]!)) return false;
    if (wall.physics.heat && Math.abs(change[i]!) > heat + 1e-12 * Math.abs(work.stored[i]!)) return false;
  }
  return true;
}

function failed(s: Stepper, node: number, why: string): false {
  s.troubleNode = node;
  s.trouble = why;
  return false;
}

/** capacity - factor d rate/dx, in place of d rate/dx. */
function formSystem(s: Stepper, factorOfRate: number): void {
  const { lower, diagonal, upper } = s.work.system;
  const { capacity } = s.work;
  for (let k = 0; k < 4 * s.wall.nodes; k++) {
    lower[k]! *= -factorOfRate;
    upper[k]! *= -factorOfRate;
    diagonal[k] = capacity[k]! - factorOfRate * diagonal[k]!;
  }
}

/** Rows of a field that a case keeps fixed say "no change". */
function holdFixedFields(s: Stepper, rightSide: Float64Array): void {
  const { physics, nodes } = s.wall;
  if (physics.heat && physics.moisture) return;
  const { lower, diagonal, upper } = s.work.system;
  for (const [held, row] of [
    [!physics.heat, 0],
    [!physics.moisture, 1],
  ] as const) {
    if (!held) continue;
    for (let i = 0; i < nodes; i++) {
      const k = 4 * i + 2 * row;
      lower[k] = lower[k + 1] = upper[k] = upper[k + 1] = 0;
      diagonal[k] = row === 0 ? 1 : 0;
      diagonal[k + 1] = row === 1 ? 1 : 0;
      rightSide[2 * i + row] = 0;
    }
  }
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
