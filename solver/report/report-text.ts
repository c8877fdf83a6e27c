import { readers, type Block, type Reader, type Report } from "./report.ts";

/** The report as plain text, the same content in the same order. */
export function reportText(report: Report, pages: readonly Reader[] = readers): string {
  const head = Object.entries(report.titleBlock).map(([label, value]) => `${label}: ${value}`);
  const body = pages.flatMap((reader) => {
    const page = report.pages[reader];
    return ["", `== ${page.title} ==`, page.question, page.answer, "", ...page.blocks.flatMap(blockText)];
  });
  return [...head, ...body, "", "Cautions", ...report.cautions.map((caution) => `- ${caution}`), ""].join("\n");
}

function blockText(block: Block): string[] {
  switch (block.kind) {
    case "heading":
      return ["", block.text];
    case "paragraph":
      return [block.text];
    case "list":
      return block.items.map((item, index) => `${block.ordered ? `${index + 1}.` : "-"} ${item}`);
    case "table":
      return [
        "",
        block.caption,
        ...aligned([block.columns.map((column) => column.label), ...block.rows]),
        ...(block.note === undefined ? [] : [block.note]),
      ];
    case "walls":
      return block.walls.flatMap((wall) => [
        wall.title,
        `  ${wall.outside}`,
        ...wall.layers.map((layer, index) => `  ${index === wall.marked ? ">" : " "} ${layer.name}`),
        `  ${wall.inside}`,
        `  ${wall.mark} ${wall.markNote}`,
        `  ${wall.cupsNote}`,
      ]);
  }
}

function aligned(rows: readonly (readonly string[])[]): string[] {
  const widths = rows[0]!.map((_, column) => Math.min(48, Math.max(...rows.map((row) => row[column]?.length ?? 0))));
  return rows.map((row) =>
    row
      .map((cell, column) => cell.padEnd(widths[column]!))
      .join("  ")
      .trimEnd(),
  );
}

/** Every table of the report as CSV, one after the other, each under its caption. Cells with commas, quotes or line ends are quoted (RFC 4180). */
export function reportCsv(report: Report): string {
  const cell = (text: string): string => (/[",\r\n]/.test(text) ? `"${text.replace(/"/g, '""')}"` : text);
  const tables = readers.flatMap((reader) =>
    report.pages[reader].blocks.flatMap((block) => (block.kind === "table" ? [block] : [])),
  );
  return (
    tables
      .map((table) =>
        [[table.caption], table.columns.map((column) => column.label), ...table.rows]
          .map((row) => row.map(cell).join(","))
          .join("\r\n"),
      )
      .join("\r\n\r\n") + "\r\n"
  );
}
