import { loadsOf, simulate, weatherOf, type Case, type NamedTexts } from "../../solver/index.ts";
import type { RunOutcome } from "./run-contract.ts";

/** Weather of a case, its loads, its march: the straight line of one run. */
export function march(aCase: Case, files: NamedTexts, onProgress: (done: number, of: number) => void): RunOutcome {
  const began = performance.now();
  const weather = aCase.exposure.kind === "site" ? weatherOf(aCase.exposure.site.weather, files) : null;
  if (weather !== null && !weather.ok) return { kind: "issues", issues: weather.issues };
  const loads = loadsOf(aCase, weather?.value ?? null, files);
  if (!loads.ok) return { kind: "issues", issues: loads.issues };
  const steps = simulate(aCase, loads.value);
  let step = steps.next();
  while (!step.done) {
    onProgress(step.value.done, step.value.of);
    step = steps.next(undefined);
  }
  // The solver sees no clock; its host does.
  const seconds = (performance.now() - began) / 1000;
  return { kind: "result", result: { ...step.value, log: { ...step.value.log, seconds } } };
}
