import { factor, solve } from "../numerics/block-tridiagonal.ts";
import { evaluate } from "../physics/balance.ts";
import type { Stepper } from "./stepper.ts";

/**
 * What a stage is solved for: the rates at it, the state at the end of a step, or the state at the end of a run. A state is also what
 * the next step starts from, so the remainders that it leaves to be carried have to be small; at the end of a run there is no next step.
 */
export type Goal = "rates" | "state" | "end";

const mostIterations = 14;
/** An iteration ends when what is still to come counts less than this of the allowed error of the step. */
const closeEnough = 0.1;
/** Share by which a change shrinks with a system made at the state before it, until one has been seen; and the least believed. */
const freshContraction = 0.03;
const leastContraction = 0.02;
/** A system that shrinks changes by less than this is made anew. */
const wellContracting = 0.25;
/** Steps of an iterate are cut to these. */
const longestTemperature_K = 25;
const longestPotential = 1.5;
/**
 * What a step leaves over in each solid layer is at most this share of the layer's water. Without the limit a film that dries away could
 * owe the next step more than it holds.
 */
const carriedShare = 1e-4;
/** The last step of a run goes on until its remainder is this small in every node: the books then show the balance. */
const lastWater_kgm2 = 1e-10;
const lastHeat_Jm2 = 1e-3;

/**
 * Solves stored(x) - target - factor rate(x) = 0 by Newton's method from the guess in `work.x`; leaves the answer, its storage and its
 * rates there, and the remainder in `change`.
 *
 * @param fresh  make the system anew at the guess; else the one made last serves until it contracts badly
 * @returns false where it could not; `trouble` and `troubleNode` say why
 */
export function solveStage(s: Stepper, factorOfRate: number, fresh: boolean, goal: Goal): boolean {
  const { wall, work, change, target, weight } = s;
  const { nodes } = wall;
  const { x } = work;
  const size = 2 * nodes;
  let anew = fresh;
  let before = Infinity;
  let close = false;
  for (let iteration = 0; iteration < mostIterations; iteration++) {
    let broken = evaluate(wall, work, s.cursor.values, s.holding, anew);
    if (broken >= 0) return failed(s, broken, "the temperature left the range from -83 to 117 degC");
    for (let i = 0; i < size; i++) change[i] = target[i]! - work.stored[i]! + factorOfRate * work.rate[i]!;
    if (close && reached(s, factorOfRate, goal)) return true;
    if (anew) {
      formSystem(s, factorOfRate);
      holdFixedFields(s, change);
      broken = factor(work.system, nodes);
      if (broken >= 0) return failed(s, broken, "the equations of this place became singular");
      s.contraction = freshContraction;
      before = Infinity;
    } else holdFixedFields(s, change);
    solve(work.system, nodes, change);
    s.iterations++;
    let moved = 0;
    let largestT = 0;
    let largestTheta = 0;
    for (let i = 0; i < size; i += 2) {
      const byT = Math.abs(change[i]!);
      const byTheta = Math.abs(change[i + 1]!);
      if (!(byT + byTheta < Infinity)) return failed(s, i / 2, "a value stopped being a number");
      if (byT > largestT) largestT = byT;
      if (byTheta > largestTheta) largestTheta = byTheta;
      const counts = Math.max(byT * weight[i]!, byTheta * weight[i + 1]!);
      if (counts > moved) {
        moved = counts;
        s.troubleNode = i / 2;
      }
    }
    const cut = Math.min(1, longestTemperature_K / largestT, longestPotential / largestTheta);
    for (let i = 0; i < size; i++) x[i]! += cut * change[i]!;
    if (before < Infinity) s.contraction = Math.max(moved / before, leastContraction);
    before = moved;
    // What is still to come: the rest of a geometric series; Newton's own steps shrink faster than that.
    const { contraction } = s;
    close = cut === 1 && moved * contraction < closeEnough * Math.max(1 - contraction, 1e-3);
    anew = cut < 1 || (!close && contraction > wellContracting);
  }
  return failed(s, Math.max(s.troubleNode, 0), "heat and moisture did not come to agree");
}

function reached(s: Stepper, factorOfRate: number, goal: Goal): boolean {
  if (goal === "rates") return true;
  return goal === "state" ? carriable(s) : settled(s, factorOfRate);
}

/** Whether each solid layer's remainder is small enough to be carried into the next step. */
function carriable(s: Stepper): boolean {
  const { wall, work, change, leftOver } = s;
  if (!wall.physics.moisture) return true;
  const { solids, nodes } = wall;
  leftOver.fill(0);
  for (let i = 0; i < nodes; i++) {
    const a = 4 * solids[2 * i]!;
    const b = 4 * solids[2 * i + 1]!;
    const over = 0.5 * change[2 * i + 1]!;
    const held = 0.5 * work.stored[2 * i + 1]!;
    leftOver[a]! += over;
    leftOver[b]! += over;
    leftOver[a + 1]! += held;
    leftOver[b + 1]! += held;
  }
  for (let g = 0; g < leftOver.length; g += 4) {
    if (Math.abs(leftOver[g]!) > carriedShare * leftOver[g + 1]!) return false;
  }
  return true;
}

/** Whether the remainder is small enough to end a run with. */
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
export function holdFixedFields(s: Stepper, rightSide: Float64Array): void {
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
