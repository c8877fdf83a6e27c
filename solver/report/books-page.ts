import type { Block, ReportInput, ReportPage } from "./report.ts";

/** For whoever checks the run itself: balances, the rerun on a finer grid, the weather file, versions. */
export function booksPage(input: ReportInput): ReportPage {
  const closures = input.books.flatMap((book) => [book.water.closure, book.heat.closure]);
  const worst = closures.length === 0 ? null : Math.max(...closures);
  return {
    reader: "books",
    title: "Books",
    question: "Does the run account for its water and its heat?",
    answer:
      worst === null
        ? "No books were kept: nothing has been run to its end."
        : `The books of water and heat close to ${exponent(worst)} of what moved.`,
    blocks: [booksTable(input), ...selfCheckBlocks(input), weatherTable(input), versionsTable(input)],
  };
}

const exponent = (value: number): string =>
  value === 0
    ? "nothing"
    : value
        .toExponential(0)
        .replace("e-", " × 10⁻")
        .replace(
          /⁻(\d+)/,
          (_, digits: string) => `⁻${[...digits].map((digit) => "⁰¹²³⁴⁵⁶⁷⁸⁹"[Number(digit)]).join("")}`,
        );

function booksTable(input: ReportInput): Block {
  return {
    kind: "table",
    id: "closure",
    caption: "Water and heat of each run: first hour to last",
    columns: [
      { label: "Run" },
      { label: "Water in, kg/m²", numeric: true },
      { label: "Water out, kg/m²", numeric: true },
      { label: "Stored, kg/m²", numeric: true },
      { label: "Water unbooked", numeric: true },
      { label: "Heat unbooked", numeric: true },
      { label: "Slices", numeric: true },
      { label: "Steps", numeric: true },
      { label: "Steps retried", numeric: true },
    ],
    rows: input.books.map((book) => [
      `${book.option}, ${book.path}`,
      book.water.in.toFixed(2),
      book.water.out.toFixed(2),
      book.water.stored.toFixed(3).replace("-", "−"),
      exponent(book.water.closure),
      exponent(book.heat.closure),
      String(book.log.cells),
      String(book.log.steps),
      String(book.log.rejected),
    ]),
    note: "Unbooked: what is neither in, out nor stored, as a share of all that moved.",
  };
}

function selfCheckBlocks(input: ReportInput): Block[] {
  if (input.selfCheck === null)
    return [
      { kind: "heading", text: "Self-check" },
      {
        kind: "paragraph",
        text: "The self-check, a rerun on a grid twice as fine and at a tighter tolerance, was not asked for.",
      },
    ];
  return [
    {
      kind: "table",
      id: "self-check",
      caption: "Self-check: a rerun on a grid twice as fine, at a tenth of the tolerance, differs by",
      columns: [{ label: "Quantity" }, { label: "Largest difference", numeric: true }],
      rows: input.selfCheck.map((row) => [row.what, row.difference]),
    },
  ];
}

const weatherTable = ({ weather }: ReportInput): Block => ({
  kind: "table",
  id: "weather-file",
  caption: "Weather",
  columns: [{ label: "What" }, { label: "Value" }],
  rows: [
    ["Year", weather.label],
    ["Kind", weather.kind],
    ["SHA-256", weather.sha256],
  ],
});

const versionsTable = (input: ReportInput): Block => ({
  kind: "table",
  id: "versions",
  caption: "Versions",
  columns: [{ label: "What" }, { label: "Version" }],
  rows: Object.entries(input.versions).map(([what, version]) => [what, version]),
});
