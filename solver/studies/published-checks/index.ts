import { capillaryUptakeCheck } from "./cases/capillary-uptake.ts";
import { conductionWithAirFlowCheck } from "./cases/conduction-with-air-flow.ts";
import { halfSpaceFilmCheck, halfSpaceStepCheck, slabFilmCheck, slabTwoTemperaturesCheck } from "./cases/conduction.ts";
import { diffusionInSeriesCheck } from "./cases/diffusion-in-series.ts";
import { en15026StepCheck } from "./cases/en15026-step.ts";
import { hamstad2Check } from "./cases/hamstad-2.ts";
import { hamstad5Check } from "./cases/hamstad-5.ts";
import { periodicChecks } from "./cases/periodic-walls.ts";
import { rainAndSunCheck } from "./cases/rain-and-sun.ts";
import { sorptionSlabCheck } from "./cases/sorption-slab.ts";
import { tightRoofYearCheck } from "./cases/tight-roof-year.ts";
import { wallWithAirFlowCheck } from "./cases/wall-with-air-flow.ts";
import type { PublishedCheck } from "./published-check.ts";

export type { CheckRow, PublishedCheck } from "./published-check.ts";
export { runLabProject, runPublishedCheck, type PublishedCheckResult } from "./run-published-check.ts";

/** Every case whose answer is known from outside the program, simple ones first. Books that close are a row of each. */
export const publishedChecks: readonly PublishedCheck[] = [
  halfSpaceStepCheck,
  slabTwoTemperaturesCheck,
  slabFilmCheck,
  halfSpaceFilmCheck,
  ...periodicChecks,
  conductionWithAirFlowCheck,
  sorptionSlabCheck,
  capillaryUptakeCheck,
  diffusionInSeriesCheck,
  en15026StepCheck,
  hamstad2Check,
  hamstad5Check,
  tightRoofYearCheck,
  wallWithAirFlowCheck,
  rainAndSunCheck,
];
