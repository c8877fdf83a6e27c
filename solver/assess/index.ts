/** The door of the assessment room: what a run says, as findings and sentences. */
export type { Finding } from "./finding.ts";
export { findingsOf } from "./findings-of.ts";
export type { AssessOptions } from "./assessment.ts";
export { planeCheck, type PlaneCheck } from "./plane-check.ts";
export { governingLayer, type GoverningLayer } from "./governing-layer.ts";
export { comparisonSentence, leadSentence, type Told } from "./lead-sentence.ts";
export { cupsPerSheet, wordingIn, type Units, type Wording } from "./wording.ts";
export {
  mouldCoefficients,
  mouldIndex,
  visibleMouldIndex,
  type MouldClass,
  type MouldCoefficients,
  type MouldCourse,
} from "./mould-index.ts";
export { mouldClassOf } from "./mould-class.ts";
export { thirtyDayHumidity, type ThirtyDayHumidity } from "./thirty-day-humidity.ts";
export { woodEquilibrium_percent, woodLines_percent, woodMoisture, type WoodMoisture } from "./wood-moisture.ts";
export { decay, decayActivation_h, type DecayCourse } from "./decay.ts";
export { largestUptake, potentialCondensate, type Condensate, type Uptake } from "./condensation.ts";
export { freezeThaw, type FreezeThaw } from "./freeze-thaw.ts";
export { wetHoursForMetal } from "./corrosion.ts";
export { frostDays } from "./frost.ts";
export { dewPointMargin, type DewPointMargin } from "./dew-point-margin.ts";
export { drift, type Drift } from "./drift.ts";
export { dryingSplit, type Arriving, type DryingSplit, type Leaving } from "./drying-split.ts";
