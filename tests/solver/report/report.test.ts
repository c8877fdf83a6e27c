import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { escapeHtml } from "../../../solver/report/escape-html.ts";
import { hatches } from "../../../solver/report/report.ts";
import { hatchSvg } from "../../../solver/report/svg-hatches.ts";
import { stain } from "../../../solver/report/stain-scale.ts";
import { demoReportInput } from "./report-input.ts";
import { reportCsv, reportHtml, reportOf, reportSheets, reportText } from "../../../solver/index.ts";

const ip = reportOf(demoReportInput("ip"));
const si = reportOf(demoReportInput("si"));

describe("report as data", () => {
  it("has a page for each reader, plain data through and through", () => {
    expect(Object.keys(ip.pages)).toEqual(["client", "official", "builder", "appendix", "books"]);
    expect(JSON.parse(JSON.stringify(ip))).toEqual(ip);
  });

  it("gives the client two sections, one temperature each, cups of water and what is asked in return", () => {
    const [walls] = ip.pages.client.blocks;
    if (walls?.kind !== "walls") throw new Error("the client's page opens with the walls");
    expect(walls.walls).toHaveLength(2);
    expect(walls.walls[0]!.mark).toMatch(/^−?\d+ °F$/);
    // 7 points of 650 kg/m3 over 11.1 mm: 0.505 kg/m2, on 2.973 m2 of sheet 1.50 kg, 6.3 cups.
    expect(walls.walls[0]!.cups).toBe(6.5);
    expect(walls.walls[0]!.cupsNote).toMatch(/by March, gone by July/);
    expect(ip.pages.client.answer).toMatch(/B keeps the wooden sheathing \d+ °F warmer/);
    const asked = ip.pages.client.blocks.find((block) => block.kind === "list");
    expect(asked?.kind === "list" && asked.items.join(" ")).toMatch(
      /Leave the room side open.*Keep the house at or below \d+ %/s,
    );
  });

  it("gives the official energy and vapour on separate lines, and R, perm and class by layer", () => {
    const tables = ip.pages.official.blocks.filter((block) => block.kind === "table");
    expect(tables[0]!.rows.map((row) => row[1])).toEqual(["energy", "vapour"]);
    const schedule = tables.find((table) => table.id === "schedule-B")!;
    const board = schedule.rows.find((row) => /Extruded/.test(row[0]!))!;
    expect(board[1]).toBe("2 in.");
    expect(Number(board[2])).toBeCloseTo(10, 0);
    expect(schedule.rows.find((row) => /raft/.test(row[0]!))![4]).toBe("II");
  });

  it("gives the builder the order, the moisture limit, drying days and swaps", () => {
    const text = JSON.stringify(ip.pages.builder);
    expect(text).toMatch(/at 18 % or drier/);
    expect(text).toMatch(/at 20 % after \d+ days/);
    expect(text).toMatch(/Polyisocyanurate, foil-faced/);
  });

  it("keeps in the appendix the inputs, flags, ranges, books, weather hash, versions and sources", () => {
    const text = JSON.stringify([ip.pages.appendix, ip.pages.books]);
    for (const each of [
      /MEMORY/,
      /ab{1}ab/,
      /0\.1\.0/,
      /Closure|closure/,
      /"caption":"Findings A, /,
      /"text":"Sources"/,
      /Dew point by hand/,
      /How humid/,
      /order of magnitude/,
    ])
      expect(text).toMatch(each);
  });

  it("never calls a wall safe alone, never says passed, never gives moisture two decimals", () => {
    for (const text of [reportText(ip), reportText(si)]) {
      expect(text).not.toMatch(/\bpass(es|ed)?\b/i);
      expect(text).not.toMatch(/\bsafe\b/i);
      expect(text).not.toMatch(/\d\.\d\d %/);
      expect(text).not.toMatch(/NaN|undefined|null|Infinity/);
    }
  });

  it("says what was not asked instead of leaving it out", () => {
    const bare = reportOf({ ...demoReportInput("ip"), answers: {}, codeLines: [], selfCheck: null, books: [] });
    const text = reportText(bare);
    for (const each of [
      /was not asked/,
      /No code row was looked up/,
      /no range was run/,
      /None has been run/,
      /No books were kept/,
    ])
      expect(text).toMatch(each);
  });

  it("refuses a report of nothing", () => {
    expect(() => reportOf({ ...demoReportInput("ip"), options: [] })).toThrow(/at least one option/);
  });

  it("warns that a synthetic year never happened", () => {
    expect(ip.cautions.join(" ")).toMatch(/synthetic/);
    expect(
      reportOf({ ...demoReportInput("ip"), weather: { label: "file", kind: "file", sha256: "0" } }).cautions.join(" "),
    ).not.toMatch(/synthetic/);
  });
});

describe("report as HTML", () => {
  const html = reportHtml(ip);

  it("stands alone: nothing fetched, no script", () => {
    expect(html).not.toMatch(/<script|https?:|url\(|@import/i);
    expect(html.length).toBeLessThan(1_500_000);
  });

  it("sets the paper", () => {
    expect(html).toMatch(/size: letter landscape/);
    expect(reportHtml(ip, { paper: "a4" })).toMatch(/size: A4 landscape/);
  });

  it("puts cautions, title block and its number on each sheet", () => {
    const sheets = reportSheets(ip, { ownType: true });
    expect(sheets.length).toBeGreaterThan(5);
    for (const sheet of sheets) {
      expect(sheet.html).toContain('class="title-block"');
      for (const caution of ip.standing) expect(sheet.html).toContain(escapeHtml(caution));
      expect(sheet.html).toContain(`<b>${sheet.number}</b> of ${sheets.length}`);
    }
    expect(sheets.map((sheet) => sheet.number)).toEqual(sheets.map((_, index) => index + 1));
    expect(reportSheets(ip, { pages: ["client"], ownType: true })).toHaveLength(1);
  });

  it("loses nothing between sheets: each row of each table and each item of each list is set once", () => {
    for (const paper of ["letter", "a4"] as const) {
      const sheets = reportSheets(ip, { paper, ownType: true });
      for (const page of Object.values(ip.pages)) {
        const own = sheets.filter((sheet) => sheet.reader === page.reader).map((sheet) => sheet.html);
        const count = (what: RegExp): number => own.join("").match(what)?.length ?? 0;
        const rows = page.blocks.flatMap((block) => (block.kind === "table" ? block.rows : []));
        expect(count(/<tr><td/g)).toBe(rows.length);
        const items = page.blocks.flatMap((block) =>
          block.kind === "list" && page.reader !== "client" && (block.ordered || block.items.length > 1)
            ? block.items
            : [],
        );
        expect(count(/<li>/g)).toBe(items.length);
      }
    }
  });

  it("names in the contents only places that are there", () => {
    for (const sheet of reportSheets(ip))
      for (const { id } of sheet.anchors) expect(sheet.html).toContain(`id="${id}"`);
  });

  it("escapes what the user wrote", () => {
    const rude = reportHtml(reportOf({ ...demoReportInput("ip"), question: `<img src=x onerror="1"> & "you"` }));
    expect(rude).not.toMatch(/<img/);
    expect(rude).toMatch(/&lt;img src=x onerror=&quot;1&quot;&gt; &amp; &quot;you&quot;/);
  });

  it("tags balance", () => {
    for (const tag of ["table", "svg", "section", "ul", "tr", "td", "div"]) {
      expect(html.match(new RegExp(`<${tag}[ >]`, "g"))?.length).toBe(html.match(new RegExp(`</${tag}>`, "g"))?.length);
    }
  });

  it("draws every hatch as finite vector lines", () => {
    for (const hatch of hatches) expect(hatchSvg(hatch, 0, 0, 156, 30)).not.toMatch(/NaN|Infinity/);
    expect(hatchSvg("rigidFoam", 0, 0, 156, 30)).toMatch(/^<path/);
  });

  it("stains darker the damper, from 40 to 100 %", () => {
    const light = (colour: string): number =>
      [1, 3, 5].reduce((sum, at) => sum + parseInt(colour.slice(at, at + 2), 16), 0);
    for (let humidity = 0.45; humidity <= 1; humidity += 0.05)
      expect(light(stain(humidity))).toBeLessThan(light(stain(humidity - 0.05)));
    expect(stain(0.2)).toBe(stain(0.4));
  });
});

describe("report as text and CSV", () => {
  it("holds the same answers in plain text", () => {
    const text = reportText(ip);
    for (const page of Object.values(ip.pages)) expect(text).toContain(page.answer);
    for (const caution of ip.cautions) expect(text).toContain(caution);
  });

  it("quotes cells with commas, so that every row of a table has its columns", () => {
    const csv = reportCsv(si);
    const tables = csv.split("\r\n\r\n").map((table) => Papa.parse<string[]>(table.trim()));
    expect(tables.length).toBeGreaterThan(8);
    for (const { data, errors } of tables) {
      expect(errors.filter((error) => error.type === "Quotes")).toEqual([]);
      const [, head, ...rows] = data;
      for (const row of rows) expect(row.length).toBe(head!.length);
    }
  });
});
