export * from "./project.ts";
export type { Case, CaseLayer } from "./case.ts";
