/** The same figures as a chart shows, as a table. Cells are text, already in the reader's units. */
export interface TableTwin {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** Comma-separated values by RFC 4180: CRLF, quotes where a cell holds a comma, a quote or a line break. */
export function csvOf({ columns, rows }: TableTwin): string {
  const cell = (text: string): string => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
  return [columns, ...rows].map((row) => row.map(cell).join(",")).join("\r\n") + "\r\n";
}
