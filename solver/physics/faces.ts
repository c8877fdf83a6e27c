import { enthalpyZero_K, type Workspace } from "./workspace.ts";
import { heatIndex, waterIndex } from "./book-entries.ts";
import { insideOffset, load, throughFlow } from "./load-cursor.ts";
import type { WallModel } from "./wall-model.ts";

/** Which faces are held, and how they see longwave; fixed for a run. */
export interface FaceHolding {
  readonly outside: OneFace;
  readonly inside: OneFace;
}

export interface OneFace {
  readonly temperatureHeld: boolean;
  readonly moistureHeld: boolean;
  /** What a held face takes is liquid: it brings no latent heat. */
  readonly inLiquid: boolean;
  /** Emissivity where longwave is apart from the film, else 0. */
  readonly emissivity: number;
}

/** Stefan-Boltzmann constant [W/(m2 K4)], CODATA. */
const stefanBoltzmann = 5.670374e-8;
/** Conductances that hold a face: errors of 1e-7 K per W/m2 and 1e-2 of potential per kg/(m2 s). */
const heldHeat_Wm2K = 1e7;
const heldMoisture_kgm2s = 1e2;

/** Rain is taken up in full up to this potential (suction some 400 Pa) and not at all from the other (some 40 Pa): the rest runs off. */
const drinksUntil = 12.7;
const fullAt = 15;

/** Share of arriving water that a surface at this potential still takes. */
export function uptakeShare(potential: number): number {
  const t = (potential - drinksUntil) / (fullAt - drinksUntil);
  return t <= 0 ? 1 : t >= 1 ? 0 : 1 - t * t * (3 - 2 * t);
}

/** Slope of `uptakeShare`. */
export function uptakeSlope(potential: number): number {
  const t = (potential - drinksUntil) / (fullAt - drinksUntil);
  return t <= 0 || t >= 1 ? 0 : (-6 * t * (1 - t)) / (fullAt - drinksUntil);
}

/** Heat and water between the faces and the air, sun, sky and rain. */
export function exchangeAtFaces(
  wall: WallModel,
  work: Workspace,
  loads: Float64Array,
  holding: FaceHolding,
  derivatives: boolean,
): void {
  exchangeAtFace(wall, work, loads, 0, 0, holding.outside, wall.sources.rainShareOfFace, derivatives);
  exchangeAtFace(wall, work, loads, wall.nodes - 1, insideOffset, holding.inside, 1, derivatives);
}

function exchangeAtFace(
  wall: WallModel,
  work: Workspace,
  loads: Float64Array,
  node: number,
  offset: number,
  face: OneFace,
  rainShare: number,
  derivatives: boolean,
): void {
  const { physics } = wall;
  const { x, rate, pressure, pressureByT, pressureByTheta, system } = work;
  const T = x[2 * node]!;
  const theta = x[2 * node + 1]!;
  const airT = loads[offset + load.temperature]!;
  const k = 4 * node;
  const diagonal = system.diagonal;
  const outside = offset === 0;
  const book = outside ? outsideBook : insideBook;

  const film = face.temperatureHeld ? heldHeat_Wm2K : loads[offset + load.heatFilm]!;
  const convected = film * (airT - T);
  const absorbed = loads[offset + load.absorbed]!;
  let longwave = 0;
  let byT = -film;
  if (face.emissivity > 0) {
    const emitted = face.emissivity * stefanBoltzmann * T * T * T;
    longwave = face.emissivity * loads[offset + load.longwave]! - emitted * T;
    byT -= 4 * emitted;
  }
  work.heatIn[book.air]! += convected;
  work.heatIn[book.sun]! += absorbed;
  if (outside) work.heatIn[heatIndex["outside longwave"]]! += longwave;
  rate[2 * node]! += convected + absorbed + longwave;

  // Vapour.
  let g: number;
  let gT = 0;
  let gTheta: number;
  if (!physics.moisture) {
    g = gTheta = 0;
  } else if (face.moistureHeld) {
    g = heldMoisture_kgm2s * (loads[offset + load.heldPotential]! - theta);
    gTheta = -heldMoisture_kgm2s;
  } else {
    const vapourFilm = loads[offset + load.vapourFilm]!;
    g = vapourFilm * (loads[offset + load.vapourPressure]! - pressure[node]!);
    gT = -vapourFilm * pressureByT[node]!;
    gTheta = -vapourFilm * pressureByTheta[node]!;
  }
  const heatCapacity = face.inLiquid ? physics.waterHeatCapacity_JkgK : physics.vapourHeatCapacity_JkgK;
  const vapourHeat = physics.sensibleHeat ? heatCapacity : 0;
  const hv = (face.inLiquid ? 0 : physics.latentHeat_Jkg) + vapourHeat * (0.5 * (airT + T) - enthalpyZero_K);
  work.waterIn[face.inLiquid ? book.liquid : book.vapour]! += g;
  let moistureHeat = hv * g;
  const moistureHeatByT = hv * gT + 0.5 * vapourHeat * g;
  let moistureHeatByTheta = hv * gTheta;

  // Rain: what the face takes up; the rest runs off and is booked.
  const rain = physics.moisture ? loads[offset + load.rain]! * rainShare : 0;
  let taken = 0;
  let takenByTheta = 0;
  if (rain > 0) {
    taken = rain * uptakeShare(theta);
    takenByTheta = rain * uptakeSlope(theta);
    work.runOff[outside ? 0 : 1]! += rain - taken;
    work.waterIn[book.liquid]! += taken;
    if (physics.sensibleHeat) {
      const liquidHeat = physics.waterHeatCapacity_JkgK * (airT - enthalpyZero_K);
      moistureHeat += liquidHeat * taken;
      moistureHeatByTheta += liquidHeat * takenByTheta;
    }
  }

  // Air that flows through the wall enters with the state of its side and leaves with that of the face.
  const through = outside ? loads[throughFlow]! : -loads[throughFlow]!;
  let airWater = 0;
  if (through !== 0) {
    const R = physics.gasConstantVapour_JkgK;
    const airHeat = through * physics.airVolumetricHeatCapacity_Jm3K;
    if (through > 0) {
      airWater = (through * loads[offset + load.vapourPressure]!) / (R * airT);
      work.heatIn[heatIndex["air flow"]]! += airHeat * (airT - enthalpyZero_K) + physics.latentHeat_Jkg * airWater;
      rate[2 * node]! += airHeat * (airT - enthalpyZero_K) + physics.latentHeat_Jkg * airWater;
    } else {
      airWater = (through * pressure[node]!) / (R * T);
      const aT = (through / R) * (pressureByT[node]! / T - pressure[node]! / (T * T));
      const aTheta = (through * pressureByTheta[node]!) / (R * T);
      const leaving = airHeat * (T - enthalpyZero_K) + physics.latentHeat_Jkg * airWater;
      work.heatIn[heatIndex["air flow"]]! += leaving;
      rate[2 * node]! += leaving;
      byT += airHeat + physics.latentHeat_Jkg * aT;
      gT += aT;
      gTheta += aTheta;
      moistureHeatByTheta += physics.latentHeat_Jkg * aTheta;
    }
    work.waterIn[book.airFlow]! += airWater;
  }

  work.heatIn[book.moisture]! += moistureHeat;
  rate[2 * node]! += moistureHeat;
  rate[2 * node + 1]! += g + taken + airWater;
  if (!derivatives) return;
  diagonal[k]! += byT + moistureHeatByT;
  diagonal[k + 1]! += moistureHeatByTheta;
  diagonal[k + 2]! += gT;
  diagonal[k + 3]! += gTheta + takenByTheta;
}

const outsideBook = {
  air: heatIndex["outside air"],
  sun: heatIndex["outside sun"],
  moisture: heatIndex["outside moisture"],
  vapour: waterIndex["outside vapour"],
  liquid: waterIndex["outside rain taken up"],
  airFlow: waterIndex["outside air flow"],
};
const insideBook = {
  air: heatIndex["inside air"],
  sun: heatIndex["inside radiation"],
  moisture: heatIndex["inside moisture"],
  vapour: waterIndex["inside vapour"],
  liquid: waterIndex["inside water taken up"],
  airFlow: waterIndex["inside air flow"],
};
