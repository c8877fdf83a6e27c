/** The door of the project model: what a project is, how it is opened, checked, turned into cases and written. */
export * from "./project.ts";
export type { Case, CaseLayer } from "./case.ts";
export { openProject, type OpenedProject } from "./open-project.ts";
export { checkProject } from "./check-project.ts";
export { writeProject } from "./write-project.ts";
export { casesOf, caseHash } from "./cases.ts";
export { stableJson } from "./stable-json.ts";
export { lookupFor, materialAtThickness, materialOfLayer, type MaterialLookup } from "./layer-material.ts";
export { airSpaceResistance_m2KW } from "./air-space.ts";
export { nameOfPath, pathKindWords } from "./words.ts";
export { demoProject } from "./demo/demo-project.ts";
export { filmSets, wholeWall, type WallPath, type WholeWall, type WholeWallSettings } from "./thermal/whole-wall.ts";
export { areaShares, framingShares, type FramingShareId, type PathShare } from "./thermal/framing-shares.ts";
export { fastenerCorrection_Wm2K, type Fasteners } from "./thermal/fasteners.ts";
export { lowerLimit_m2KW, upperLimit_m2KW, type Films, type Section, type Slab } from "./thermal/limits.ts";
export { ratedResistance_m2KW, ratingTemperature_C } from "./thermal/rated-resistance.ts";
export { editions, zoneOf, sectionsOf, type Edition, type Zone } from "./codes/edition.ts";
export { retarderClass, type Backing, type RetarderClass } from "./codes/retarder-tables.ts";
export { retarderVerdict, type Amendments, type CodeVerdict, type RetarderQuestion } from "./codes/retarder-verdict.ts";
export { energyVerdict, type EnergyQuestion } from "./codes/energy-verdict.ts";
export { airTightnessLimit, canadianRow, energyRow } from "./codes/energy-tables.ts";
export { starterWalls, type StarterWall } from "./starters/index.ts";
export {
  boundary,
  type BoundaryBreak,
  type BoundaryReport,
  type PathBoundary,
  type TieIn,
} from "./boundary/boundary.ts";
export { controlRoles, type PlayedRole } from "./boundary/control-roles.ts";
export { dryCup, permeance_perm, wetCup } from "./boundary/vapour-figures.ts";
export { codeSettingsOf, usualSettings, wallChecks } from "./checks/wall-checks.ts";
export type { CheckLine, CheckVerdict, CodeSettings } from "./checks/check-line.ts";
export { wallFacts, type Retarder, type WallFacts } from "./checks/wall-facts.ts";
export { breakEvenOutdoor_C, leastOutsideShare } from "./checks/ratio-line.ts";
export { thermalZone2018 } from "./codes/thermal-zone-2018.ts";
