import { escapeHtml } from "./escape-html.ts";
import type { Block, DrawnWall, Reader, Report, ReportPage } from "./report.ts";
import { reportStyle, type Paper } from "./report-style.ts";
import { cupsSvg, measuringBar, sectionSvg, yearSvg } from "./svg-wall.ts";

export interface ReportDress {
  readonly paper?: Paper;
  /** Pages to print, in this order; by default all four. */
  readonly pages?: readonly Reader[];
  /** CSS @font-face rules with the font in them, when the host has it. */
  readonly fontFaces?: string;
}

const allPages: readonly Reader[] = ["client", "official", "builder", "appendix"];

/** The report as one self-contained HTML document, ready for print: vector drawings, nothing fetched, no script. */
export function reportHtml(report: Report, dress: ReportDress = {}): string {
  const pages = (dress.pages ?? allPages).map((reader) => pageHtml(report, report.pages[reader]));
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><title>${escapeHtml(report.titleBlock.project)}: report</title>
<meta name="viewport" content="width=device-width, initial-scale=1">
<style>${dress.fontFaces ?? ""}${reportStyle(dress.paper ?? "letter")}</style></head>
<body>
${pages.join("\n")}
</body></html>
`;
}

/** A page's foot is a table foot, so that a printer repeats cautions and title block on every sheet of paper the page runs over. */
function pageHtml(report: Report, page: ReportPage): string {
  return `<table class="sheet" role="presentation"><tfoot><tr><td>${footHtml(report, page)}</td></tr></tfoot>
<tbody><tr><td><section aria-label="${escapeHtml(page.title)}"><p class="question">${escapeHtml(page.question)}</p>
<h1 class="answer">${escapeHtml(page.answer)}</h1>
${page.blocks.map((block) => blockHtml(block, report.units === "si")).join("\n")}</section></td></tr></tbody></table>`;
}

function footHtml(report: Report, page: ReportPage): string {
  const block = report.titleBlock;
  const cell = (label: string, value: string): string => `<div><span>${label}</span>${escapeHtml(value)}</div>`;
  return `<div class="foot"><p class="cautions">${report.cautions.map(escapeHtml).join(" ")}</p>
<div class="title-block">${cell("Project", block.project)}${cell("Site", block.site)}${cell("Sheet", page.title)}${cell("Weather", block.weather)}${cell("Run", block.run)}${cell("Option", block.options)}${cell("Issued", block.issued)}</div></div>`;
}

function blockHtml(block: Block, metric: boolean): string {
  switch (block.kind) {
    case "heading":
      return `<h2>${escapeHtml(block.text)}</h2>`;
    case "paragraph":
      return `<p${block.tone === undefined ? "" : ` class="tone-${block.tone}"`}>${escapeHtml(block.text)}</p>`;
    case "list": {
      const tag = block.ordered ? "ol" : "ul";
      return `<${tag}>${block.items.map((item) => `<li>${escapeHtml(item)}</li>`).join("")}</${tag}>`;
    }
    case "table":
      return tableHtml(block);
    case "walls":
      return wallsHtml(block.walls, block.scale, metric);
  }
}

function tableHtml(block: Extract<Block, { kind: "table" }>): string {
  const numeric = (index: number): string => (block.columns[index]?.numeric === true ? ' class="numeric"' : "");
  const head = block.columns
    .map((column, index) => `<th scope="col"${numeric(index)}>${escapeHtml(column.label)}</th>`)
    .join("");
  const rows = block.rows
    .map((row) => `<tr>${row.map((cell, index) => `<td${numeric(index)}>${escapeHtml(cell)}</td>`).join("")}</tr>`)
    .join("");
  const body = block.rows.length === 0 ? `<tr><td colspan="${block.columns.length}">Nothing to list.</td></tr>` : rows;
  return `<table class="data" id="${escapeHtml(block.id)}"><caption>${escapeHtml(block.caption)}</caption><thead><tr>${head}</tr></thead><tbody>${body}</tbody></table>${block.note === undefined ? "" : `<p class="tone-note">${escapeHtml(block.note)}</p>`}`;
}

function wallsHtml(walls: readonly DrawnWall[], scale: number, metric: boolean): string {
  const px = (1000 / scale) * (96 / 25.4);
  const tallest =
    Math.max(
      ...walls.map((wall) => wall.layers.reduce((sum, layer) => sum + Math.max(3.2, layer.thickness_m * px), 0)),
    ) + 44;
  const drawn = walls
    .map(
      (wall) =>
        `<div class="wall"><h2>${escapeHtml(wall.title)}</h2>${sectionSvg(wall, scale, tallest)}${wall.cups === null ? "" : cupsSvg(wall.cups)}<p class="cups">${escapeHtml(wall.cupsNote)}</p>${wall.year === null ? "" : `<p class="note-line">${escapeHtml(wall.yearNote)}</p>${yearSvg(wall)}`}</div>`,
    )
    .join("");
  return `<div class="walls">${drawn}</div><div class="scale"><span>Sections 1:${scale}</span>${measuringBar(scale, metric)}</div>`;
}
