/** The report's door: one document as data, and its plain dresses. */
export { reportOf } from "./report-of.ts";
export { reportInputOf, type ReportMaterials, type ReportedRun } from "./report-input-of.ts";
export { reportHtml, type ReportDress } from "./report-html.ts";
export { reportSheets, type ReportSheet, type SheetDress } from "./report-sheets.ts";
export { pageRule, sheetStyle } from "./report-style.ts";
export type { Anchor } from "./flowing.ts";
export { reportCsv, reportText } from "./report-text.ts";
export { papers, type Paper } from "./paper.ts";
export { readers } from "./report.ts";
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
export { programVersion } from "./version.ts";
