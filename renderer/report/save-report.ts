import { reportCsv, reportHtml, reportText, type Reader, type Report } from "../../solver/index.ts";
import { host } from "../host.ts";
import { view } from "../state/index.ts";
import { whilePrintable } from "./print-report.ts";
import { useReportStore } from "./report-store.ts";
import fontAddress from "@fontsource-variable/encode-sans/files/encode-sans-latin-wdth-normal.woff2?url";

/** Why a report cannot be saved now. */
export const staleSentence =
  "The report on the board is of an earlier wall, or its runs are not done. It can be saved when every path is current.";

/** Does something with the report as it stands; says so where there is none, and what went wrong where something does. */
async function withCurrent(act: (report: Report, name: string) => Promise<string | null>): Promise<void> {
  const report = useReportStore.getState().current;
  if (report === null) {
    view({ sheet: "report", notice: staleSentence });
    return;
  }
  try {
    const said = await act(report, `${report.titleBlock.project} report`);
    if (said !== null) view({ notice: said });
  } catch (error) {
    view({ notice: error instanceof Error ? error.message : String(error) });
  }
}

export const savePdf = (): Promise<void> =>
  withCurrent(async (report, name) => {
    await whilePrintable(report, useReportStore.getState().paper, () => host.savePdf(`${name}.pdf`));
    return null;
  });

export const printReport = (): Promise<void> =>
  withCurrent(async (report) => {
    await whilePrintable(report, useReportStore.getState().paper, () => {
      window.print();
      return Promise.resolve();
    });
    return null;
  });

export const copyText = (pages: readonly Reader[] | null): Promise<void> =>
  withCurrent(async (report) => {
    const text = pages === null ? reportText(report) : reportText(report, pages);
    try {
      await navigator.clipboard.writeText(text);
    } catch {
      throw new Error("The clipboard could not be written to. Save the report as text instead.");
    }
    return pages === null ? "The report is on the clipboard, as text." : "The page is on the clipboard, as text.";
  });

const save = (ending: string, type: string, textOf: (report: Report) => string | Promise<string>): Promise<void> =>
  withCurrent(async (report, name) => {
    await host.saveText(`${name}.${ending}`, await textOf(report), type);
    return null;
  });

export const saveTables = (): Promise<void> => save("csv", "text/csv", reportCsv);
export const saveData = (): Promise<void> =>
  save("json", "application/json", (report) => `${JSON.stringify(report, null, 2)}\n`);
export const saveText = (): Promise<void> => save("txt", "text/plain", (report) => reportText(report));
export const saveHtml = (): Promise<void> =>
  save("html", "text/html", async (report) =>
    reportHtml(report, { paper: useReportStore.getState().paper, fontFaces: await fontFaces() }),
  );

/** The program's typeface as a CSS rule that holds the font: a saved file looks the same anywhere. */
async function fontFaces(): Promise<string> {
  const bytes = new Uint8Array(await (await fetch(fontAddress)).arrayBuffer());
  let binary = "";
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return `@font-face { font-family: "Encode Sans Variable"; font-weight: 100 900; font-stretch: 75% 125%; src: url(data:font/woff2;base64,${btoa(binary)}) format("woff2"); }`;
}
