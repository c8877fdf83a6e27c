import { heatEntries } from "./book-entries.ts";
import { exchangeAtFaces, type FaceHolding } from "./faces.ts";
import { lowestPotential } from "./moisture-potential.ts";
import { exchangeAtSources } from "./source-exchange.ts";
import { sweep } from "./sweep.ts";
import type { WallModel } from "./wall-model.ts";
import { enthalpyZero_K, type Workspace } from "./workspace.ts";

/**
 * Storage, rates and, if asked, derivatives at the state `x` under the loads given.
 * Returns the first node whose temperature left the range of the tables, or -1.
 *
 * Source of the balances: EN 15026:2007, section 5; Künzel (1995).
 */
export function evaluate(
  wall: WallModel,
  work: Workspace,
  loads: Float64Array,
  holding: FaceHolding,
  derivatives: boolean,
): number {
  const outOfRange = sweep(wall, work, loads, derivatives);
  if (outOfRange >= 0) return outOfRange;
  films(wall, work);
  work.waterIn.fill(0);
  work.heatIn.fill(0);
  work.runOff.fill(0);
  exchangeAtFaces(wall, work, loads, holding, derivatives);
  exchangeAtSources(wall, work, loads, derivatives);
  if (!wall.physics.sensibleHeat) carryOwnHeat(wall, work, derivatives);
  return -1;
}

/** Water film per unit of potential [kg/m2]: 0.1 mm when rain begins to run off, what clings to a wall (ASSUMED). */
const filmPerPotential_kgm2 = 0.03;
/** What a coat of paint or a foil holds itself: about 0.1 kg/m2 of it, and a little water that comes and goes (ASSUMED). */
const skinHeat_Jm2K = 100;
const skinWaterPerPotential_kgm2 = 3e-4;
/** How sharply a film begins, per unit of potential. */
const filmSharpness = 2.5;

function films(wall: WallModel, work: Workspace): void {
  const { filmNodes, filmFrom, filmSlot, skinNodes } = wall;
  const { x, stored, capacity, slotFilm } = work;
  const waterHeat = wall.physics.waterHeatCapacity_JkgK;
  for (let n = 0; n < skinNodes.length; n++) {
    const i = skinNodes[n]!;
    stored[2 * i]! += skinHeat_Jm2K * (x[2 * i]! - enthalpyZero_K);
    stored[2 * i + 1]! += skinWaterPerPotential_kgm2 * (x[2 * i + 1]! - lowestPotential);
    capacity[4 * i]! += skinHeat_Jm2K;
    capacity[4 * i + 3]! += skinWaterPerPotential_kgm2;
  }
  for (let n = 0; n < filmNodes.length; n++) {
    const i = filmNodes[n]!;
    const beyond = x[2 * i + 1]! - filmFrom[n]!;
    const grown = Math.exp(filmSharpness * Math.min(beyond, 10));
    const film =
      beyond > 10 ? filmPerPotential_kgm2 * beyond : (filmPerPotential_kgm2 / filmSharpness) * Math.log1p(grown);
    const slope = beyond > 10 ? filmPerPotential_kgm2 : (filmPerPotential_kgm2 * grown) / (1 + grown);
    const warm = x[2 * i]! - enthalpyZero_K;
    stored[2 * i]! += waterHeat * film * warm;
    stored[2 * i + 1]! += film;
    if (filmSlot[n]! >= 0) slotFilm[filmSlot[n]!] = film;
    capacity[4 * i]! += waterHeat * film;
    capacity[4 * i + 1]! += waterHeat * slope * warm;
    capacity[4 * i + 3]! += slope;
  }
}

/**
 * Where a case lets moving water carry latent heat only, water arrives at the temperature of the node it reaches: its own enthalpy
 * is added there, so that (rho c + c_w w) dT/dt is what remains.
 */
function carryOwnHeat(wall: WallModel, work: Workspace, derivatives: boolean): void {
  const { nodes } = wall;
  const { rate, x, system } = work;
  const waterHeat = wall.physics.waterHeatCapacity_JkgK;
  let sum = 0;
  for (let i = 0; i < nodes; i++) {
    const warm = x[2 * i]! - enthalpyZero_K;
    const arriving = rate[2 * i + 1]!;
    rate[2 * i]! += waterHeat * warm * arriving;
    sum += waterHeat * warm * arriving;
    if (!derivatives) continue;
    const k = 4 * i;
    const factor = waterHeat * warm;
    system.lower[k]! += factor * system.lower[k + 2]!;
    system.lower[k + 1]! += factor * system.lower[k + 3]!;
    system.diagonal[k]! += factor * system.diagonal[k + 2]! + waterHeat * arriving;
    system.diagonal[k + 1]! += factor * system.diagonal[k + 3]!;
    system.upper[k]! += factor * system.upper[k + 2]!;
    system.upper[k + 1]! += factor * system.upper[k + 3]!;
  }
  work.heatIn[heatEntries.length - 1]! += sum;
}
