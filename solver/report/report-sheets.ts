import { escapeHtml } from "./escape-html.ts";
import { setInSheets, solid, type Anchor, type Flowing } from "./flowing.ts";
import { papers, setting, writtenWidth, type Paper } from "./paper.ts";
import { readers, type Block, type Reader, type Report, type ReportPage } from "./report.ts";
import { setFoot } from "./set-foot.ts";
import { idOf, setList } from "./set-list.ts";
import { setTable } from "./set-table.ts";
import { setWalls } from "./set-walls.ts";
import { splitAnswer } from "./split-answer.ts";
import { lineCount } from "./text-width.ts";

export interface SheetDress {
  readonly paper?: Paper;
  /** Pages to set, in this order; by default all. */
  readonly pages?: readonly Reader[];
  /** True where the program's own typeface is at hand; else lines are set looser, for one that is wider. */
  readonly ownType?: boolean;
}

/** One sheet of paper of the report, with its border, foot and title block. */
export interface ReportSheet {
  readonly reader: Reader;
  readonly title: string;
  readonly number: number;
  readonly of: number;
  /** One `article.sheet`; to be dressed by `sheetStyle`. */
  readonly html: string;
  readonly anchors: readonly Anchor[];
}

/** Rounding of a browser's own measures, and of another typeface in the place of ours. */
const ownRoom = 1.025;
const otherRoom = 1.25;
const smallType: readonly Reader[] = ["appendix", "books"];

/** Sets a report on sheets of paper: the window shows them, the printer prints them, the file holds them. */
export function reportSheets(report: Report, dress: SheetDress = {}): ReportSheet[] {
  const paper = dress.paper ?? "letter";
  const room = dress.ownType === true ? ownRoom : otherRoom;
  const width = writtenWidth(paper);
  const foot = setFoot(report, width, room);
  const { margin, border, top, footGap } = setting;
  const height = papers[paper].height - 2 * (margin + border) - top - footGap - foot.height;
  const set = (dress.pages ?? readers).flatMap((reader) => {
    const page = report.pages[reader];
    const parts = partsOf(page, { width, room, metric: report.units === "si" });
    return setInSheets(parts, height, height - setting.laterTop).map((sheet, index) => ({ page, sheet, index }));
  });
  return set.map(({ page, sheet, index: place }, index) => ({
    reader: page.reader,
    title: page.title,
    number: index + 1,
    of: set.length,
    anchors: sheet.anchors,
    html: `<article class="sheet ${paper} ${page.reader}" aria-label="${escapeHtml(`${page.title}, sheet ${index + 1} of ${set.length}`)}"><div class="border"><p class="for">${escapeHtml(page.title)}</p><div class="written${place === 0 ? "" : " later"}">
${sheet.html}</div>${foot.html(index + 1, set.length)}</div></article>`,
  }));
}

interface PageDress {
  readonly width: number;
  readonly room: number;
  readonly metric: boolean;
}

function partsOf(page: ReportPage, { width, room, metric }: PageDress): Flowing[] {
  const small = smallType.includes(page.reader);
  const parts: Flowing[] = [opening(page, width, room)];
  const { blocks } = page;
  for (let index = 0; index < blocks.length; index += 1) {
    const block = blocks[index]!;
    if (block.kind !== "heading") {
      parts.push(partOf(block, null));
      continue;
    }
    const next = blocks[index + 1];
    if (next?.kind === "list" || next?.kind === "paragraph") index += 1;
    parts.push(
      next?.kind === "list" || next?.kind === "paragraph" ? partOf(next, block.text) : partOf(block, block.text),
    );
  }
  return parts;

  function partOf(block: Block, heading: string | null): Flowing {
    switch (block.kind) {
      case "heading":
        return solid(`<h2>${escapeHtml(block.text)}</h2>`, setting.heading.line, 10);
      case "paragraph":
        return setList(heading, [block.text], false, { width, room, small: small || block.tone === "note" });
      case "list":
        // The client's sheet runs its sentences on: one sheet is what a client reads.
        return setList(heading, page.reader === "client" ? [block.items.join(" ")] : block.items, block.ordered, {
          width,
          room,
          small,
        });
      case "table":
        return setTable(block, { width, small, room });
      case "walls":
        return setWalls(block, { width, room, metric });
    }
  }
}

/** Question and answer: the first sentence of the answer is the largest type of the sheet. */
function opening(page: ReportPage, width: number, room: number): Flowing {
  const { first, rest } = splitAnswer(page.answer);
  const { question, answer, answerRest } = setting;
  const height =
    question.line * lineCount(page.question, width - 150, { size: question.size, room }) +
    answer.line * lineCount(first, width, { size: answer.size, room }) +
    (rest === "" ? 0 : answerRest.line * lineCount(rest, width, { size: answerRest.size, room })) +
    8;
  const id = (name: string): string => `${page.reader}-${idOf(name)}`;
  return solid(
    `<p class="question" id="${id("question")}" tabindex="-1">${escapeHtml(page.question)}</p><h1 class="answer" id="${id("answer")}" tabindex="-1">${escapeHtml(first)}</h1>${rest === "" ? "" : `<p class="answer-rest">${escapeHtml(rest)}</p>`}`,
    height,
    0,
    [
      { id: id("question"), label: "Question" },
      { id: id("answer"), label: "Answer" },
    ],
  );
}
