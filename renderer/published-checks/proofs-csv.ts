import { publishedChecks, type PublishedCheckResult } from "../../solver/index.ts";

const cell = (text: string): string => (/[",\r\n]/.test(text) ? `"${text.replace(/"/g, '""')}"` : text);

/** One row a figure: case, source, what, published, today, tolerance, unit, holds. Quoted as RFC 4180 asks. */
export function proofsCsv(results: readonly PublishedCheckResult[]): string {
  const head = ["case", "source", "what", "published", "today", "tolerance", "unit", "holds"];
  const rows = results.flatMap((result) => {
    const check = publishedChecks.find(({ id }) => id === result.id);
    return result.rows.map((row) => [
      result.id,
      check?.source ?? "",
      row.what,
      String(row.expected),
      String(row.got),
      String(row.tolerance),
      row.unit,
      row.holds ? "yes" : "no",
    ]);
  });
  return [head, ...rows].map((row) => row.map(cell).join(",")).join("\r\n") + "\r\n";
}
