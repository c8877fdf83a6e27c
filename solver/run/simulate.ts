import type { HourlyLoads } from "../../climate/index.ts";
import { caseHash, type Case } from "../model/index.ts";
import { evaluate } from "../physics/balance.ts";
import { workspace, type Workspace } from "../physics/workspace.ts";
import type { FaceHolding } from "../physics/faces.ts";
import { initialState } from "../physics/initial-state.ts";
import { loadCursor } from "../physics/load-cursor.ts";
import { wallModel, type WallModel } from "../physics/wall-model.ts";
import { closeBooks, enter, ledger, totals } from "./books.ts";
import { dateOfHour, hoursPerYear } from "./calendar.ts";
import { march, type MarchFailure } from "./march.ts";
import { monthlyRecorder } from "./monthly-flows.ts";
import { probeRecorder } from "./probes.ts";
import type { Progress, RunResult } from "./result.ts";
import { mapRecorder } from "./through-wall-map.ts";
import { stepper } from "./stepper.ts";
import { weigh } from "./time-step.ts";
import { defaultTolerance, toleranceOf } from "./tolerance.ts";

/** Hours between two reports of progress; at a report a run can be stopped. */
const hoursBetweenReports = 120;
/** The year repeats when no layer's water differs from a year before by more than this share, or 1 g/m2. */
const repeatsWithin = 0.002;

/**
 * Marches one case through its loads. A generator: each yield reports progress (every five simulated days); send "stop" to end
 * early and keep what was computed.
 *
 * The same case and loads give the same result to the bit. A run that cannot go on returns with status "failed", the hour, layer
 * and cause, and all hours up to it. `seconds` in the log is left 0: this room has no clock, the host fills it in.
 */
export function* simulate(aCase: Case, loads: HourlyLoads): Generator<Progress, RunResult, "stop" | undefined> {
  const wall = wallModel(aCase, loads);
  const work = workspace(wall);
  const cursor = loadCursor(loads, wall.physics.waterDensity_kgm3 * wall.physics.gasConstantVapour_JkgK);
  const step = stepper(
    wall,
    work,
    cursor,
    holdingOf(loads),
    toleranceOf(aCase.run.tolerance ?? defaultTolerance(aCase)),
  );
  initialState(aCase, wall, loads, step.x);
  cursor.read(0, 0);
  work.x.set(step.x);
  evaluate(wall, work, cursor.values, step.holding, false);
  step.stored.set(work.stored);
  weigh(step);

  const years = loads.repeats ? aCase.run.years : 1;
  const intervals = cursor.intervals * years;
  const periodHours = Math.round(loads.time_s[cursor.intervals]! / 3600);
  const hoursInAll = Math.floor((loads.time_s[cursor.intervals]! * years) / 3600 + 1e-6);
  const wholeYears = loads.repeats && periodHours === hoursPerYear;
  const book = ledger(step.stored);
  const probes = probeRecorder(aCase, wall, hoursInAll);
  const map = mapRecorder(wall, hoursInAll);
  const monthly = monthlyRecorder(aCase, wall, loads.startDay);
  monthly.reset(work, step.stored);
  const hash = caseHash(aCase, "");
  const yearEndWater_kgm2 = [totals(step.stored)[0]];
  let layersBefore = waterByLayer(wall, work);
  let hours = 0;
  let status: RunResult["status"] = "finished";
  let failure: MarchFailure | null = null;
  const log = { steps: 0, rejected: 0 };

  yield { caseHash: hash, done: 0, of: hoursInAll };
  const steps = march(step, intervals, log, book, (h) => {
    enter(book, step.first, step.second, h);
    monthly.add(step.first, step.second, step.spread, h);
  });
  for (let k = 0; k < intervals; k++) {
    const advanced = steps.through(k);
    if (advanced !== null) {
      status = "failed";
      failure = advanced;
      break;
    }
    const end_s = cursor.start(k) + cursor.duration(k);
    if (Math.abs(end_s / 3600 - Math.round(end_s / 3600)) > 1e-6) continue;
    probes.record(work, hours);
    map.record(work, hours);
    if (wholeYears) monthly.endOfHour(work, step.stored, hours % hoursPerYear);
    hours++;
    if (hours % periodHours === 0 && loads.repeats) {
      yearEndWater_kgm2.push(totals(step.stored)[0]);
      const layers = waterByLayer(wall, work);
      const repeated =
        aCase.run.untilItRepeats === true &&
        layers.every((w, i) => Math.abs(w - layersBefore[i]!) <= Math.max(repeatsWithin * w, 0.001));
      layersBefore = layers;
      if (repeated) break;
      if (hours < hoursInAll) monthly.reset(work, step.stored);
    }
    if (hours % hoursBetweenReports === 0) {
      const answer = yield { caseHash: hash, done: hours, of: hoursInAll };
      if (answer === "stop") {
        status = "stopped";
        break;
      }
    }
  }
  if (failure !== null) {
    // The workspace holds a broken trial state; the books close on the last good one.
    work.x.set(step.x);
    evaluate(wall, work, cursor.values, step.holding, false);
  }
  const { water, heat } = closeBooks(book, work.stored);
  const judgedHours = wholeYears ? Math.min(hours, hoursPerYear) : hours;
  const judgedFrom = wholeYears ? Math.max(Math.floor(hours / hoursPerYear) * hoursPerYear - hoursPerYear, 0) : 0;
  return {
    caseHash: hash,
    option: aCase.option,
    path: aCase.path,
    status,
    failure: failure === null ? null : tellFailure(aCase, wall, loads, failure),
    hours,
    startDay: loads.startDay,
    judgedFrom,
    judgedHours,
    probes: probes.series(hours),
    map: map.map(judgedFrom, judgedHours),
    water,
    heat: wall.physics.heat ? heat : { ...heat, closure: 0 },
    monthly: status === "finished" && wholeYears ? monthly.flows() : null,
    yearEndWater_kgm2,
    log: { cells: wall.nodes, steps: log.steps, rejected: log.rejected, iterations: step.iterations, seconds: 0 },
  };
}

function holdingOf(loads: HourlyLoads): FaceHolding {
  const face = (one: HourlyLoads["outside"]) => ({
    temperatureHeld: one.heldTemperature,
    moistureHeld: one.heldSuction_Pa !== null,
    inLiquid: one.heldInLiquid ?? false,
    emissivity: one.longwave?.emissivity ?? 0,
  });
  return { outside: face(loads.outside), inside: face(loads.inside) };
}

function waterByLayer(wall: WallModel, work: Workspace): Float64Array {
  const sums = new Float64Array(wall.tables.length);
  for (let s = 0; s < wall.slots; s++)
    sums[wall.slotLayer[s]!]! += wall.slotVolume[s]! * work.water[s]! + work.slotFilm[s]!;
  return sums;
}

function tellFailure(aCase: Case, wall: WallModel, loads: HourlyLoads, failure: MarchFailure): RunResult["failure"] {
  const hour = failure.time_s / 3600;
  return {
    hour,
    date: dateOfHour(loads.startDay, hour),
    layer: layerNear(aCase, wall, failure.node),
    cause: failure.cause,
    remedy:
      "Look at this layer's properties and thickness and at the loads of this hour; a start state nearer to equilibrium helps where the first hours fail.",
  };
}

function layerNear(aCase: Case, wall: WallModel, node: number): string {
  const index = wall.grid.lastNode.findIndex((last) => node <= last);
  return aCase.layers[index < 0 ? aCase.layers.length - 1 : index]!.name;
}
