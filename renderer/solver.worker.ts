import * as Comlink from "comlink";
import type { HourlyLoads, Issue, WeatherYear } from "../climate/index.ts";
import {
  findingsOf,
  loadsOf,
  monthlyAir,
  selfCheck,
  simulate,
  summarise,
  weatherOf,
  type Case,
  type Progress,
  type RunResult,
} from "../solver/index.ts";
import { surveyExposure } from "./exposure/survey.ts";
import { publishedCheckSteps } from "./published-checks/check-steps.ts";
import { gatherReport } from "./report/gather-report.ts";
import { messageTurns } from "./solver-pool/message-turn.ts";
import { transferablesOf } from "./solver-pool/transferables.ts";
import type { OnProgress, RunOutcome, SolverWorker, SummaryOutcome } from "./solver-pool/worker-contract.ts";

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

  report: (order) => gatherReport(order, files),

  async selfCheck(id, aCase, result, onProgress) {
    const loads = readLoads(aCase);
    if (!loads.ok) return { kind: "issues", issues: loads.issues };
    return { kind: "checked", check: await toTheEnd(id, selfCheck(aCase, loads.value, result), onProgress) };
  },

  async publishedCheck(id, checkId, onProgress) {
    const began = performance.now();
    const result = await toTheEnd(id, publishedCheckSteps(checkId), onProgress);
    return { result, seconds: (performance.now() - began) / 1000 };
  },

  survey: (project) => surveyExposure(project, files),

  stop(id) {
    stopped.add(id);
  },
};

type Marched =
  | { readonly kind: "result"; readonly result: RunResult; readonly loads: HourlyLoads }
  | { readonly kind: "issues"; readonly issues: readonly Issue[] };

async function march(id: number, aCase: Case, onProgress: OnProgress): Promise<Marched> {
  const began = performance.now();
  const loads = readLoads(aCase);
  if (!loads.ok) return { kind: "issues", issues: loads.issues };
  const result = await toTheEnd(id, simulate(aCase, loads.value), onProgress);
  // The solver sees no clock; the worker does.
  const seconds = (performance.now() - began) / 1000;
  return { kind: "result", result: { ...result, log: { ...result.log, seconds } }, loads: loads.value };
}

function readLoads(aCase: Case): ReturnType<typeof loadsOf> {
  if (aCase.exposure.kind !== "site") return loadsOf(aCase, null, files);
  const named = aCase.exposure.site.weather;
  const key = JSON.stringify(named);
  if (weather?.key !== key) {
    const read = weatherOf(named, files);
    if (!read.ok) return read;
    weather = { key, year: read.value };
  }
  return loadsOf(aCase, weather.year, files);
}

/** Takes step after step, letting messages in between; a run that is asked to stop ends at its next step. */
async function toTheEnd<Result>(
  id: number,
  steps: Generator<Progress, Result, "stop" | undefined>,
  onProgress: OnProgress,
): Promise<Result> {
  let step = steps.next();
  while (!step.done) {
    onProgress(step.value.done, step.value.of);
    await turn();
    step = steps.next(stopped.has(id) ? "stop" : undefined);
  }
  stopped.delete(id);
  return step.value;
}

Comlink.expose(worker);
