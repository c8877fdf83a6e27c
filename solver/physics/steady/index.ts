/** The steady and harmonic methods of the standards: hand checks beside the transient run. */
export {
  saturationPressure_Pa as standardSaturationPressure_Pa,
  dewPoint_C as standardDewPoint_C,
} from "./saturation-pressure.ts";
export { airPermeability_kgmsPa, cautiousInsideFilm_m2KW, wallFilms } from "./steady-layer.ts";
export type { AirState, Films, SteadyLayer } from "./steady-layer.ts";
export { steadyProfile } from "./steady-profile.ts";
export type { SteadyPlane, SteadyProfile } from "./steady-profile.ts";
export { monthlyCondensation } from "./monthly-condensation.ts";
export type { MonthClimate, MonthCondensation, MonthlyCondensation } from "./monthly-condensation.ts";
export { seasonBlocks } from "./season-blocks.ts";
export type { SeasonBlocks } from "./season-blocks.ts";
export { periodicWall } from "./periodic-wall.ts";
export type { Oscillation, PeriodicLayer, PeriodicWall } from "./periodic-wall.ts";
export { ratioRule } from "./ratio-rule.ts";
export type { RatioRule } from "./ratio-rule.ts";
export { surfaceFactor, surfaceFactorNeeded } from "./surface-factor.ts";
export type { SurfaceFactorNeeded } from "./surface-factor.ts";
export { steadyLayersOf } from "./steady-layers-of.ts";
export type { SteadyWall } from "./steady-layers-of.ts";
export { leakDeposit } from "./leak-deposit.ts";
export type { LeakDeposit } from "./leak-deposit.ts";
