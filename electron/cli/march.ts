import { findingsOf, loadsOf, simulate, weatherOf, type Case, type NamedTexts } from "../../solver/index.ts";
import type { OnProgress, Outcome, Ran } from "./run-contract.ts";

/** Weather of a case, its loads, its march, its findings: the straight line of one run. */
export function march(aCase: Case, files: NamedTexts, onProgress: OnProgress): Outcome<Omit<Ran, "case">> {
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
  const result = { ...step.value, log: { ...step.value.log, seconds } };
  return { kind: "done", value: { result, findings: findingsOf(aCase, result, { loads: loads.value }) } };
}
