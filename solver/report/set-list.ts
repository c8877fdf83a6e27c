import { escapeHtml } from "./escape-html.ts";
import type { Anchor, Flowing } from "./flowing.ts";
import { setting } from "./paper.ts";
import { lineCount, textWidth } from "./text-width.ts";

export interface ListDress {
  readonly width: number;
  readonly small: boolean;
  readonly room: number;
}

const itemAir = 3;
const markWidth = 16;

/** Items under a heading that hangs beside them; cut between items. Without marks where there is one item alone. */
export function setList(
  heading: string | null,
  items: readonly string[],
  ordered: boolean,
  { width, small, room }: ListDress,
): Flowing {
  const measure = small ? setting.note : setting.body;
  const type = { size: measure.size, room };
  const hanging = heading !== null;
  const marks = ordered ? textWidth(`${items.length}. `, type) + 6 : items.length > 1 ? markWidth : 0;
  const written = width - (hanging ? setting.labelColumn + setting.labelGap : 0) - marks;
  const heights = items.map((item) => measure.line * lineCount(item, written, type) + itemAir);
  const headingLines =
    heading === null
      ? 0
      : lineCount(heading, setting.labelColumn, { size: setting.heading.size, bold: true, room }) *
        setting.heading.line;
  const id = heading === null ? null : idOf(heading);

  const from = (start: number): Flowing => ({
    before: start === 0 ? 10 : 0,
    take(space, forced) {
      let height = 6;
      let end = start;
      while (end < items.length && (height + heights[end]! <= space || (forced && end === start))) {
        height += heights[end]!;
        end += 1;
      }
      height = Math.max(height, start === 0 ? 6 + headingLines : 0);
      if (end === start || (!forced && height > space)) return null;
      const anchors: Anchor[] = start === 0 && heading !== null && id !== null ? [{ id, label: heading }] : [];
      return {
        html: html(start, end),
        height,
        anchors,
        rest: end === items.length ? null : from(end),
      };
    },
  });

  const html = (start: number, end: number): string => {
    const tag = ordered ? "ol" : "ul";
    const listed = items
      .slice(start, end)
      .map((item) => `<li>${escapeHtml(item)}</li>`)
      .join("");
    const body =
      items.length === 1 && !ordered
        ? `<p>${escapeHtml(items[0]!)}</p>`
        : `<${tag}${ordered ? ` start="${start + 1}" style="padding-left:${Math.ceil(marks)}px"` : ""}>${listed}</${tag}>`;
    const size = small ? " small" : "";
    if (heading === null) return `<div class="listed${size}">${body}</div>`;
    const label = start === 0 ? `<h2 id="${id}" tabindex="-1">${escapeHtml(heading)}</h2>` : "<span></span>";
    return `<div class="listed hanging${size}">${label}<div>${body}</div></div>`;
  };
  return from(0);
}

/** An id made of a heading's words. */
export const idOf = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");
