import type { HourlyLoads } from "../../climate/index.ts";
import type { Case } from "../model/index.ts";
import type { Progress, RunResult } from "./result.ts";

/**
 * Marches one case through its loads. A generator: each yield reports progress (about every ten simulated days);
 * send "stop" to end early and keep what was computed.
 */
export function* simulate(aCase: Case, loads: HourlyLoads): Generator<Progress, RunResult, "stop" | undefined> {
  yield { caseHash: "", done: 0, of: loads.time_s.length - 1 };
  throw new Error(`simulate: not built yet (${aCase.path})`);
}
