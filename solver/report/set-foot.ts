import { escapeHtml } from "./escape-html.ts";
import { setting } from "./paper.ts";
import type { Report } from "./report.ts";
import { lineCount } from "./text-width.ts";

/** Columns of the title block: two of words, one with the sheet's number. */
const numberColumn = 88;
const cellSides = 20;
const cellAir = 7;
const wordsColumn = (setting.titleBlockWidth - numberColumn) / 2;

export interface Foot {
  readonly height: number;
  html(number: number, of: number): string;
}

/** The foot of every sheet: cautions, and the title block in the corner of the border. */
export function setFoot(report: Report, width: number, room: number): Foot {
  const { titleBlock } = report;
  const cautions = report.standing.join(" ");
  const cautionWidth = width - setting.titleBlockWidth + setting.side - setting.footColumnGap;
  const cautionHeight =
    setting.caution.line * lineCount(cautions, cautionWidth, { size: setting.caution.size, room }) + 8;
  const lines = (text: string, columns: number): number =>
    lineCount(text, columns * wordsColumn - cellSides, { size: setting.blockValue.size, bold: columns === 2, room });
  const row = (count: number): number => setting.blockLabel.line + setting.blockValue.line * count + cellAir;
  const blockHeight =
    row(lines(titleBlock.project, 2)) +
    row(Math.max(lines(titleBlock.site, 1), lines(titleBlock.weather, 1))) +
    row(Math.max(lines(titleBlock.run, 1), lines(titleBlock.issued, 1))) +
    setting.border;
  const cell = (label: string, value: string, name: string): string =>
    `<div class="${name}"><dt>${label}</dt><dd>${escapeHtml(value)}</dd></div>`;
  return {
    height: Math.max(blockHeight, cautionHeight),
    html: (number, of) =>
      `<div class="foot"><p class="cautions">${escapeHtml(cautions)}</p><dl class="title-block">` +
      cell("Project", titleBlock.project, "project") +
      `<div class="number"><dt>Sheet</dt><dd><b>${number}</b> of ${of}</dd></div>` +
      cell("Site", titleBlock.site, "") +
      cell("Weather", titleBlock.weather, "") +
      cell("Options", titleBlock.options, "options") +
      cell("Run", titleBlock.run, "") +
      cell("Issued", titleBlock.issued, "") +
      `</dl></div>`,
  };
}
