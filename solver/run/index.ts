/** The run: loads for a case, the march, what it gives. */
export type * from "./result.ts";
export { simulate } from "./simulate.ts";
export { selfCheck, type Difference, type SelfCheck } from "./self-check.ts";
export { loadsOf, type NamedTexts } from "./loads.ts";
export { weatherOf } from "./weather.ts";
export { dateOfDay, dateOfHour, dayOfYear, hoursPerYear, monthLengths, monthNames } from "./calendar.ts";
