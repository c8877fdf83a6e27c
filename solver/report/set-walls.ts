import { escapeHtml } from "./escape-html.ts";
import { solid, type Flowing } from "./flowing.ts";
import { inSentence } from "./layer-words.ts";
import { setting } from "./paper.ts";
import type { Block, DrawnWall } from "./report.ts";
import { stainEnds } from "./stain-scale.ts";
import { cupsSvg, drawing, sectionSvg, stainKey, wallHeight, yearSvg } from "./svg-wall.ts";
import { lineCount, textWidth } from "./text-width.ts";

const columnGap = 34;
const yearHeight = 46;
/** Air between the parts of a wall's column. */
const air = { section: 8, cups: 4, year: 4 };

export interface WallsDress {
  readonly width: number;
  readonly room: number;
  readonly metric: boolean;
}

/** One wall or two beside each other, aligned row by row: section, cups, year. */
export function setWalls(block: Extract<Block, { kind: "walls" }>, { width, room, metric }: WallsDress): Flowing {
  const { walls, scale } = block;
  const column = (width - columnGap) / 2;
  const notes = walls.map((wall) => noteLines(wall, column - drawing.core - drawing.leader - 6, room));
  const words = Math.max(...notes.map((lines) => drawing.mark + lines.length * drawing.noteLine)) + 30;
  const section = Math.max(words, ...walls.map((wall) => wallHeight(wall, scale) + 2 * drawing.airLabel + 6));
  const type = (size: number, bold: boolean) => ({ size, bold, room });
  const lines = (texts: readonly string[], size: number, bold: boolean): number =>
    Math.max(...texts.map((text) => lineCount(text, column, type(size, bold))));
  const cups = walls.some((wall) => wall.cups !== null);
  const years = walls.some((wall) => wall.year !== null);
  const height =
    setting.heading.line *
      lines(
        walls.map((wall) => wall.title),
        setting.heading.size,
        true,
      ) +
    section +
    air.section +
    (cups ? 24 + air.cups : 0) +
    setting.body.line *
      lines(
        walls.map((wall) => wall.cupsNote),
        setting.body.size,
        true,
      ) +
    (years ? air.year + setting.note.line + 3 + yearHeight + 17 : 0);
  const anchor = (name: string, index: number): string => (index === 0 ? ` id="${name}" tabindex="-1"` : "");
  const cell = (row: string, html: (wall: DrawnWall, index: number) => string): string =>
    `<div class="row ${row}">${walls.map((wall, index) => `<div>${html(wall, index)}</div>`).join("")}</div>`;
  const html = `<div class="walls">${cell(
    "sections",
    (wall, index) =>
      `<h2${anchor("sections", index)}>${escapeHtml(wall.title)}</h2>${sectionSvg(wall, {
        scale,
        width: column,
        height: section,
        note: notes[index]!,
        bar: index > 0 ? null : metric ? "mm" : "in",
      })}`,
  )}${cell(
    "cups",
    (wall, index) =>
      `${cups ? (wall.cups === null ? '<div class="no-cups"></div>' : cupsSvg(wall.cups, column)) : ""}<p${anchor("cups", index)}>${escapeHtml(wall.cupsNote)}</p>`,
  )}${
    years
      ? cell("years", (wall, index) =>
          wall.year === null
            ? ""
            : `<p class="year-note"${anchor("year", index)}><span>${escapeHtml(index === 0 ? wall.yearNote : "The same year, the same scale.")}</span><span class="key">${stainEnds[0]} ${stainKey()} ${stainEnds[1]}</span></p>${yearSvg(wall, column, yearHeight)}`,
        )
      : ""
  }</div>`;
  return solid(html, height, 10, [
    { id: "sections", label: walls.length > 1 ? "Two sections" : "Section" },
    { id: "cups", label: "Cups of water" },
    ...(years ? [{ id: "year", label: walls.length > 1 ? "Year maps" : "Year map" }] : []),
  ]);
}

/** What stands under the mark, broken to lines: text of a drawing does not break by itself. */
function noteLines(wall: DrawnWall, width: number, room: number): string[] {
  const name = inSentence(wall.layers[wall.marked]!.name);
  const lines: string[] = [""];
  for (const word of `${wall.markNote} Here: the inner face of the ${name}.`.split(" ")) {
    const last = lines[lines.length - 1]!;
    const longer = last === "" ? word : `${last} ${word}`;
    if (last !== "" && textWidth(longer, { size: 14, room }) > width) lines.push(word);
    else lines[lines.length - 1] = longer;
  }
  return lines;
}
