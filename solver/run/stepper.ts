import type { FaceHolding } from "../physics/faces.ts";
import type { LoadCursor } from "../physics/load-cursor.ts";
import type { WallModel } from "../physics/wall-model.ts";
import type { Workspace } from "../physics/workspace.ts";
import type { Tolerance } from "./tolerance.ts";

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

/** Everything a march carries from step to step. Made once; nothing is allocated in the march. */
export interface Stepper {
  readonly wall: WallModel;
  /** Holds the trial state, what it stores and its rates. */
  readonly work: Workspace;
  readonly cursor: LoadCursor;
  readonly holding: FaceHolding;
  readonly tolerance: Tolerance;
  /** Accepted state, stored amounts and rates at its end. */
  readonly x: Float64Array;
  readonly stored: Float64Array;
  readonly rate: Float64Array;
  /** Change of the state per second over the last step, from which the next one starts. */
  readonly slope: Float64Array;
  /** What a change of each unknown counts against the allowed error of a step, seen from the accepted state. */
  readonly weight: Float64Array;
  readonly first: StageFlows;
  readonly second: StageFlows;
  /** What a stage has to reach, the rates of the first, and the storage that the flows of both amount to. */
  readonly target: Float64Array;
  readonly rate1: Float64Array;
  readonly trialStored: Float64Array;
  /** Remainder of a stage, then the change that Newton answers with; at the end of a step its error. */
  readonly change: Float64Array;
  /** Per solid layer: heat and water left over, and capacities. */
  readonly leftOver: Float64Array;
  /** Water moved across each element by spreading what the last step left over [kg/m2]. */
  readonly spread: Float64Array;
  iterations: number;
  /** By what share an iterate's change shrinks with the factored system, as last seen. */
  contraction: number;
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
  const vector = () => new Float64Array(2 * wall.nodes);
  const perElement = () => new Float64Array(wall.nodes - 1);
  const flows = (): StageFlows => ({
    water: new Float64Array(work.waterIn.length),
    heat: new Float64Array(work.heatIn.length),
    runOff: new Float64Array(work.runOff.length),
    vapour: perElement(),
    liquid: perElement(),
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
    slope: vector(),
    weight: vector(),
    first: flows(),
    second: flows(),
    target: vector(),
    rate1: vector(),
    trialStored: vector(),
    change: vector(),
    leftOver: new Float64Array(4 * wall.solidCount),
    spread: perElement(),
    iterations: 0,
    contraction: 0,
    smooth: false,
    troubleNode: -1,
    trouble: "",
  };
}
