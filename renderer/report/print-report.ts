import { pageRule, reportSheets, sheetStyle, type Paper, type Report } from "../../solver/index.ts";

/**
 * Lays a report out for the printer in the place of the window, does what prints it, and takes it away again. The sheets are those
 * that the window shows.
 */
export async function whilePrintable<Result>(
  report: Report,
  paper: Paper,
  print: () => Promise<Result>,
): Promise<Result> {
  const host = document.createElement("div");
  host.className = "printed-report";
  const sheets = reportSheets(report, { paper, ownType: true });
  host.attachShadow({ mode: "open" }).innerHTML =
    `<style>${sheetStyle()}</style><div class="sheets">${sheets.map((sheet) => sheet.html).join("")}</div>`;
  const style = document.createElement("style");
  style.textContent = `${pageRule(paper)} @media screen { .printed-report { display: none; } } @media print { body > :not(.printed-report) { display: none !important; } html, body { height: auto; background: #FFFFFF; } }`;
  document.head.append(style);
  document.body.append(host);
  try {
    await document.fonts.ready;
    return await print();
  } finally {
    host.remove();
    style.remove();
  }
}
