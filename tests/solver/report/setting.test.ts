import { describe, expect, it } from "vitest";
import { columnWidths } from "../../../solver/report/column-widths.ts";
import { scaleFor } from "../../../solver/report/client-page.ts";
import { setInSheets, solid } from "../../../solver/report/flowing.ts";
import { setTable } from "../../../solver/report/set-table.ts";
import { splitAnswer } from "../../../solver/report/split-answer.ts";
import { lineCount, textWidth } from "../../../solver/report/text-width.ts";

const type = { size: 10, room: 1 };

describe("setting of a report", () => {
  it("adds up advance widths, wider where bold and where another typeface may stand in", () => {
    expect(textWidth("00", type)).toBeCloseTo(11.2, 6);
    expect(textWidth("wall", { ...type, bold: true })).toBeGreaterThan(textWidth("wall", type));
    expect(textWidth("wall", { ...type, room: 1.2 })).toBeCloseTo(1.2 * textWidth("wall", type), 6);
  });

  it("breaks lines at spaces and hyphens, and a word wider than its column within itself", () => {
    const word = textWidth("sheathing", type);
    expect(lineCount("sheathing sheathing", word * 2.2, type)).toBe(1);
    expect(lineCount("sheathing sheathing", word * 1.9, type)).toBe(2);
    expect(lineCount("sheathing-sheathing", word * 1.2, type)).toBe(2);
    expect(lineCount("0".repeat(64), textWidth("0".repeat(20), type) + 0.01, type)).toBe(4);
    expect(lineCount("", 100, type)).toBe(1);
  });

  it("fills the width of a table exactly, whatever the columns hold", () => {
    const columns = (cell: string) => [
      { label: "Layer", cells: [cell, "air"] },
      { label: "R", numeric: true, cells: ["20.5", "1"] },
      { label: "Words", cells: [cell, cell] },
    ];
    for (const cell of ["x", "words ".repeat(40), "0".repeat(300)]) {
      const widths = columnWidths(columns(cell), 500, 10, type, { ...type, bold: true });
      expect(widths.reduce((sum, width) => sum + width, 0)).toBeCloseTo(500, 6);
      for (const width of widths) expect(width).toBeGreaterThan(0);
    }
    // Figures keep their line beside long words.
    const [, figures] = columnWidths(columns("words ".repeat(40)), 500, 10, type, type);
    expect(figures).toBeGreaterThanOrEqual(textWidth("20.5", type) + 10);
  });

  it("turns the sheet where a part no longer fits, and sets one that is higher than any sheet alone", () => {
    const parts = [solid("a", 60, 0), solid("b", 50, 0), solid("c", 300, 0), solid("d", 10, 5)];
    expect(setInSheets(parts, 100, 80).map((sheet) => sheet.html.replace(/<[^>]+>|\n/g, ""))).toEqual([
      "a",
      "b",
      "c",
      "d",
    ]);
  });

  it("cuts a table between rows, with its head again on the next sheet", () => {
    const rows = Array.from({ length: 40 }, (_, index) => [`row ${index}`]);
    const table = setTable(
      { kind: "table", id: "t", caption: "Rows", columns: [{ label: "What" }], rows, note: "The end." },
      { width: 400, small: false, room: 1 },
    );
    const sheets = setInSheets([table], 300, 300);
    expect(sheets.length).toBeGreaterThan(2);
    for (const { html } of sheets) expect(html).toContain("<thead>");
    expect(sheets.map(({ html }) => html.includes("The end."))).toEqual(
      sheets.map((_, index) => index === sheets.length - 1),
    );
    expect(sheets[1]!.html).toContain("Rows, continued");
  });

  it("chooses the largest drawing scale at which the wall fits", () => {
    expect(scaleFor(0.1)).toBe(2);
    expect(scaleFor(0.25)).toBe(5);
    expect(scaleFor(0.6)).toBe(15);
    expect(scaleFor(9)).toBe(30);
  });

  it("ends the first sentence at a stop before a capital, not at that of an inch", () => {
    expect(splitAnswer("Lay 2 in. of board outside of the sheathing, taped, from sill to plate. Then wait.")).toEqual({
      first: "Lay 2 in. of board outside of the sheathing, taped, from sill to plate.",
      rest: "Then wait.",
    });
    expect(splitAnswer("Short. Enough.")).toEqual({ first: "Short. Enough.", rest: "" });
  });
});
