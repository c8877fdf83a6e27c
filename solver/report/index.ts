/** The report's door: one document as data, and its plain dresses. */
export { reportOf } from "./report-of.ts";
export { reportInputOf, type ReportMaterials, type ReportedRun } from "./report-input-of.ts";
export { reportHtml, type ReportDress } from "./report-html.ts";
export { reportCsv, reportText } from "./report-text.ts";
export type { Paper } from "./report-style.ts";
export type {
  Block,
  CodeLine,
  DrawnLayer,
  DrawnWall,
  Hatch,
  Reader,
  Report,
  ReportInput,
  ReportPage,
  ReportedBooks,
  ReportedOption,
  TitleBlock,
} from "./report.ts";
