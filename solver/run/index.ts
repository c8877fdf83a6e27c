export type * from "./result.ts";
export { simulate } from "./simulate.ts";
export { loadsOf, type NamedTexts } from "./loads.ts";
export { weatherOf } from "./weather.ts";
