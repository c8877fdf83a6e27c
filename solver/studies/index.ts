/** The studies' door: questions that a series of runs answers. Each is members to run and one pure reducer. */
export { answerOf, runStudy, together, type Done, type Member, type Study, type StudyProgress } from "./study.ts";
export {
  findingKinds,
  broken,
  decidingFindings,
  holdsAll,
  limited,
  summarise,
  worstMargin,
  type DryingTime,
  type MemberSummary,
} from "./summary.ts";
export { sumOver, waterBudget, type WaterBudget } from "./budget.ts";
export { condensingPlane, exteriorInsulation, type CondensingPlane } from "./plane.ts";
export { amount, phrase, say, sayAmount, type Amount, type Phrase, type UnitSystem } from "./phrase.ts";
export { withLeakAtPlane, withThickness, withWinterHumidity, withoutLayer } from "./change-case.ts";
export {
  hasContinuousInsulation,
  withContinuousInsulation,
  withoutContinuousInsulation,
  type InsulationToAdd,
} from "./continuous-insulation.ts";
export {
  sideBySide,
  type ComparedOption,
  type ComparedRow,
  type MonthlyComparison,
  type OptionToCompare,
  type SideBySideAnswer,
  type SideBySideQuestion,
} from "./side-by-side.ts";
export {
  brokenAt,
  howThick,
  howThickInEach,
  type HowThickAnswer,
  type HowThickQuestion,
  type WorseThanNone,
} from "./how-thick.ts";
export { type Beside, type CodeRow, type Winter } from "./how-thick-beside.ts";
export { stockThicknesses_m } from "./stock.ts";
export { coldestSeason, monthlyAir, type MonthlyAir } from "./monthly-air.ts";
export {
  handCheck,
  humidityAtDewPoint,
  outsideResistanceAtDewPoint_m2KW,
  planeResistances,
  roomDewPoint_C,
  steadyFace_C,
  type HandCheck,
  type PlaneResistances,
} from "./ratio-rule.ts";
export {
  shareInward,
  wetted,
  wettings,
  whichWayItDries,
  type DryingAnswer,
  type DryingQuestion,
  type DryingRow,
  type Wetting,
} from "./drying.ts";
export {
  layerMayBeThere,
  unknownsOf,
  usualUnknowns,
  valueAt,
  type Known,
  type Unknown,
  type UnknownOfCase,
} from "./unknowns.ts";
export { endWords, whatIf, type Bar, type WhatIfAnswer, type WhatIfQuestion } from "./what-if.ts";
export type { Flip } from "./flip-point.ts";
export type { Band } from "./band.ts";
export {
  dewPointLine,
  howHumid,
  type HumidityAnswer,
  type HumidityLimit,
  type HumidityPoint,
  type HumidityQuestion,
} from "./humidity.ts";
export { swapsOf, whichSwaps, type Swap, type SwapRow, type SwapsAnswer } from "./swaps.ts";
export { permeance_kgm2sPa, ratedConductivity_WmK } from "./material-figures.ts";
export type { ThicknessHeld, ThicknessNeed, ThicknessPoint } from "./thickness-root.ts";
export { codeRowOf } from "./code-row.ts";
export {
  publishedChecks,
  runLabProject,
  runPublishedCheck,
  type CheckRow,
  type PublishedCheck,
  type PublishedCheckResult,
} from "./published-checks/index.ts";
