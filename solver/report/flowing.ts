/** A place on a sheet that the contents beside it name. */
export interface Anchor {
  readonly id: string;
  readonly label: string;
}

/** What of a part of a page fits on a sheet, and what is left for the next. */
export interface Taken {
  readonly html: string;
  readonly height: number;
  readonly anchors: readonly Anchor[];
  readonly rest: Flowing | null;
}

/** A part of a page, to be set on one sheet or on several. */
export interface Flowing {
  /** Space above it unless it opens a sheet [px]. */
  readonly before: number;
  /**
   * As much as fits into `room` px; null: nothing does.
   *
   * @param forced  the sheet is empty: something has to be taken, however high it is
   */
  take(room: number, forced: boolean): Taken | null;
}

/** A part that is never divided. */
export const solid = (html: string, height: number, before: number, anchors: readonly Anchor[] = []): Flowing => ({
  before,
  take: (room, forced) => (height <= room || forced ? { html, height, anchors, rest: null } : null),
});

/** What was set on one sheet. */
export interface SetSheet {
  readonly html: string;
  readonly anchors: readonly Anchor[];
}

/**
 * Sets parts one under the other on as many sheets as they need.
 *
 * @param room   height of the first sheet [px]
 * @param later  height of those that follow it [px]
 */
export function setInSheets(parts: readonly Flowing[], room: number, later: number): SetSheet[] {
  const sheets: SetSheet[] = [];
  let html = "";
  let anchors: Anchor[] = [];
  let used = 0;
  const turn = (): void => {
    sheets.push({ html, anchors });
    html = "";
    anchors = [];
    used = 0;
  };
  for (const part of parts) {
    let left: Flowing | null = part;
    while (left !== null) {
      const before: number = used === 0 ? 0 : left.before;
      const taken: Taken | null = left.take((sheets.length === 0 ? room : later) - used - before, used === 0);
      if (taken === null) {
        turn();
        continue;
      }
      html += `<div${before === 0 ? "" : ` style="margin-top:${before}px"`}>${taken.html}</div>\n`;
      anchors.push(...taken.anchors);
      used += before + taken.height;
      left = taken.rest;
      if (left !== null) turn();
    }
  }
  if (html !== "" || sheets.length === 0) turn();
  return sheets;
}
