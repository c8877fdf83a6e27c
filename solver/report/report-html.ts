import { escapeHtml } from "./escape-html.ts";
import type { Paper } from "./paper.ts";
import type { Reader, Report } from "./report.ts";
import { reportSheets } from "./report-sheets.ts";
import { pageRule, sheetStyle } from "./report-style.ts";

export interface ReportDress {
  readonly paper?: Paper;
  /** Pages to print, in this order; by default all. */
  readonly pages?: readonly Reader[];
  /** CSS @font-face rules with the font in them, when the host has it. */
  readonly fontFaces?: string;
}

/** The report as one self-contained HTML document, ready for print: vector drawings, nothing fetched, no script. */
export function reportHtml(report: Report, { paper = "letter", pages, fontFaces }: ReportDress = {}): string {
  const sheets = reportSheets(report, {
    paper,
    ownType: fontFaces !== undefined,
    ...(pages === undefined ? {} : { pages }),
  });
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><title>${escapeHtml(report.titleBlock.project)}: report</title>
<meta name="viewport" content="width=device-width, initial-scale=1">
<style>${fontFaces ?? ""}${pageRule(paper)}${sheetStyle()}
body { margin: 0; background: #FFFFFF; }
@media screen { body { background: #E0E0D9; } .sheets { display: grid; gap: 24px; justify-content: center; padding: 24px; } }
</style></head>
<body><main class="sheets">
${sheets.map((sheet) => sheet.html).join("\n")}
</main></body></html>
`;
}
