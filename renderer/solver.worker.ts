import * as Comlink from "comlink";
import type { HourlyLoads, Issue, WeatherYear } from "../climate/index.ts";
import {
  findingsOf,
  loadsOf,
  monthlyAir,
  simulate,
  summarise,
  weatherOf,
  type Case,
  type RunResult,
} from "../solver/index.ts";
import { surveyExposure } from "./exposure/survey.ts";
import { messageTurns } from "./solver-pool/message-turn.ts";
import { transferablesOf } from "./solver-pool/transferables.ts";
import type { RunOutcome, SolverWorker, SummaryOutcome } from "./solver-pool/worker-contract.ts";

const files: Record<string, string> = {};
const stopped = new Set<number>();
const turn = messageTurns();
/** The last weather year read: all paths of a project share one. */
let weather: { key: string; year: WeatherYear } | null = null;

const worker: SolverWorker = {
  keepFile(name, text) {
    files[name] = text;
    weather = null;
  },

  async run(id, aCase, onProgress) {
    const marched = await march(id, aCase, onProgress);
    const outcome: RunOutcome = marched.kind === "issues" ? marched : { kind: "result", result: marched.result };
    return Comlink.transfer(outcome, transferablesOf(outcome));
  },

  async summarise(id, aCase): Promise<SummaryOutcome> {
    const marched = await march(id, aCase, () => undefined);
    if (marched.kind === "issues") return marched;
    const { result, loads } = marched;
    return {
      kind: "summary",
      summary: summarise(aCase, result, findingsOf(aCase, result, { loads })),
      air: aCase.exposure.kind === "site" ? monthlyAir(loads) : null,
    };
  },

  survey: (project) => surveyExposure(project, files),

  stop(id) {
    stopped.add(id);
  },
};

type Marched =
  | { readonly kind: "result"; readonly result: RunResult; readonly loads: HourlyLoads }
  | { readonly kind: "issues"; readonly issues: readonly Issue[] };

async function march(id: number, aCase: Case, onProgress: (done: number, of: number) => void): Promise<Marched> {
  const began = performance.now();
  let year: WeatherYear | null = null;
  if (aCase.exposure.kind === "site") {
    const named = aCase.exposure.site.weather;
    const key = JSON.stringify(named);
    if (weather?.key !== key) {
      const read = weatherOf(named, files);
      if (!read.ok) return { kind: "issues", issues: read.issues };
      weather = { key, year: read.value };
    }
    year = weather.year;
  }
  const loads = loadsOf(aCase, year, files);
  if (!loads.ok) return { kind: "issues", issues: loads.issues };

  const steps = simulate(aCase, loads.value);
  let step = steps.next();
  while (!step.done) {
    onProgress(step.value.done, step.value.of);
    await turn();
    step = steps.next(stopped.has(id) ? "stop" : undefined);
  }
  stopped.delete(id);
  // The solver sees no clock; the worker does.
  const result = step.value;
  const seconds = (performance.now() - began) / 1000;
  return { kind: "result", result: { ...result, log: { ...result.log, seconds } }, loads: loads.value };
}

Comlink.expose(worker);
