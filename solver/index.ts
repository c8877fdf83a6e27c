/** The solver's door. */
export * from "./materials/index.ts";
export * from "./model/index.ts";
export * from "./run/index.ts";
export * from "./assess/index.ts";
export * from "./studies/index.ts";
export * from "./report/index.ts";
export * from "./units.ts";
