import { columnWidths } from "./column-widths.ts";
import { escapeHtml } from "./escape-html.ts";
import type { Flowing } from "./flowing.ts";
import { setting } from "./paper.ts";
import type { Block } from "./report.ts";
import { lineCount, type Type } from "./text-width.ts";

type Table = Extract<Block, { kind: "table" }>;

export interface TableDress {
  readonly width: number;
  /** Smaller type, for the appendix and the books. */
  readonly small: boolean;
  readonly room: number;
}

const cellPadding = 5;
const rule = 1;
const captionAir = 3;
/** Rows that stay together where a table begins on a sheet. */
const fewestRows = 2;

/** A table that goes on over sheets with its head, cut between rows. */
export function setTable(table: Table, { width, small, room }: TableDress): Flowing {
  const measure = small ? setting.note : setting.body;
  const type: Type = { size: measure.size, room };
  const headType: Type = { ...type, bold: true };
  const widths = columnWidths(
    table.columns.map((column, index) => ({
      label: column.label,
      numeric: column.numeric,
      cells: table.rows.map((row) => row[index] ?? ""),
    })),
    width,
    setting.cellGap,
    type,
    headType,
  );
  const heightOf = (cells: readonly string[], of: Type): number =>
    measure.line * Math.max(...cells.map((cell, index) => lineCount(cell, widths[index]! - setting.cellGap, of)));
  const headHeight =
    setting.heading.line +
    captionAir +
    heightOf(
      table.columns.map((column) => column.label),
      headType,
    ) +
    cellPadding +
    rule;
  const rowHeights = table.rows.map((row) => heightOf(row, type) + cellPadding + rule);
  const noteHeight =
    table.note === undefined
      ? 0
      : 4 + setting.note.line * lineCount(table.note, width, { size: setting.note.size, room });

  const numeric = (index: number): string => (table.columns[index]?.numeric === true ? ' class="numeric"' : "");
  const columns = widths.map((value) => `<col style="width:${((100 * value) / width).toFixed(3)}%">`).join("");
  const head = table.columns
    .map((column, index) => `<th scope="col"${numeric(index)}>${escapeHtml(column.label)}</th>`)
    .join("");
  const html = (from: number, to: number): string => {
    const rows = table.rows
      .slice(from, to)
      .map((row) => `<tr>${row.map((cell, index) => `<td${numeric(index)}>${escapeHtml(cell)}</td>`).join("")}</tr>`)
      .join("");
    const empty = `<tr><td colspan="${table.columns.length}">Nothing to list.</td></tr>`;
    const anchor = from === 0 ? ` id="${escapeHtml(table.id)}" tabindex="-1"` : "";
    const caption = `${table.caption}${from === 0 ? "" : ", continued"}`;
    const note =
      table.note !== undefined && to === table.rows.length ? `<p class="tone-note">${escapeHtml(table.note)}</p>` : "";
    return `<table class="data${small ? " small" : ""}"${anchor}><caption>${escapeHtml(caption)}</caption><colgroup>${columns}</colgroup><thead><tr>${head}</tr></thead><tbody>${table.rows.length === 0 ? empty : rows}</tbody></table>${note}`;
  };

  const from = (start: number): Flowing => ({
    before: 12,
    take(space, forced) {
      let height = headHeight + (table.rows.length === 0 ? measure.line + cellPadding + rule : 0);
      let end = start;
      while (end < table.rows.length) {
        const last = end === table.rows.length - 1;
        const next = height + rowHeights[end]! + (last ? noteHeight : 0);
        if (next > space && !(forced && end === start)) break;
        height = next;
        end += 1;
      }
      const whole = end === table.rows.length;
      if (!forced && !whole && end - start < fewestRows) return null;
      if (!forced && height > space) return null;
      return {
        html: html(start, end),
        height,
        anchors: start === 0 ? [{ id: table.id, label: shortCaption(table.caption) }] : [],
        rest: whole ? null : from(end),
      };
    },
  });
  return from(0);
}

/** A caption up to its colon, for the contents. */
const shortCaption = (caption: string): string => caption.split(":")[0]!.trim();
