import type { ReportedOption } from "./report.ts";

/** Breaks of the control layers in words, or that none was found. */
export const breaksOf = (option: ReportedOption): readonly string[] =>
  option.breaks.length > 0
    ? option.breaks
    : ["The four control layers run through all paths that are drawn. Trace each with a pen on the sections."];
