import type { HourlyLoads } from "../../climate/index.ts";
import type { Case } from "../model/index.ts";
import type { Progress, RunResult } from "./result.ts";
import { simulate } from "./simulate.ts";
import { defaultTolerance } from "./tolerance.ts";

/** How far a result moves when grid and tolerance are refined: its own numerical uncertainty. */
export interface SelfCheck {
  /** Slices of the run and of its refined twin. */
  readonly cells: number;
  readonly refinedCells: number;
  readonly seconds: number;
  readonly probes: readonly {
    readonly id: string;
    readonly label: string;
    /** Largest and root-mean-square difference over the judged hours. [K], [0..1], [kg/m3] */
    readonly T_K: Difference;
    readonly RH: Difference;
    readonly w_kgm3: Difference;
  }[];
}

export interface Difference {
  readonly largest: number;
  readonly rootMeanSquare: number;
}

/** Grid twice as fine, tolerance ten times tighter. */
const finer = 2;
const tighter = 10;

/** Runs the refined twin of a finished run and compares it probe by probe. Null if the twin was stopped or failed. */
export function* selfCheck(
  aCase: Case,
  loads: HourlyLoads,
  result: RunResult,
): Generator<Progress, SelfCheck | null, "stop" | undefined> {
  const refined: Case = {
    ...aCase,
    run: {
      ...aCase.run,
      gridFineness: (aCase.run.gridFineness ?? 1) * finer,
      tolerance: (aCase.run.tolerance ?? defaultTolerance(aCase)) / tighter,
    },
  };
  const twin = yield* simulate(refined, loads);
  if (twin.status !== "finished" || twin.hours !== result.hours) return null;
  return {
    cells: result.log.cells,
    refinedCells: twin.log.cells,
    seconds: 0,
    probes: result.probes.map((probe, i) => {
      const other = twin.probes[i]!;
      const compare = (a: Float32Array, b: Float32Array) => difference(a, b, result.judgedFrom, result.judgedHours);
      return {
        id: probe.id,
        label: probe.label,
        T_K: compare(probe.T_C, other.T_C),
        RH: compare(probe.RH, other.RH),
        w_kgm3: compare(probe.w_kgm3, other.w_kgm3),
      };
    }),
  };
}

function difference(a: Float32Array, b: Float32Array, from: number, hours: number): Difference {
  let largest = 0;
  let squares = 0;
  for (let k = from; k < from + hours; k++) {
    const gap = Math.abs(a[k]! - b[k]!);
    if (gap > largest) largest = gap;
    squares += gap * gap;
  }
  return { largest, rootMeanSquare: hours > 0 ? Math.sqrt(squares / hours) : 0 };
}
