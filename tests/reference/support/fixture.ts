import { readFileSync } from "node:fs";

/** Rows of a CSV fixture beside the test: lines that start with # say where the figures come from. Numbers where a cell is one. */
export function fixture(test: string, name: string): Record<string, string>[] {
  const lines = readFileSync(new URL(name, test), "utf8")
    .split(/\r?\n/)
    .filter((line) => line !== "" && !line.startsWith("#"));
  const [header, ...rows] = lines.map((line) => line.split(","));
  if (!header || rows.length === 0) throw new Error(`${name}: no rows`);
  return rows.map((row) => Object.fromEntries(header.map((column, k) => [column, row[k] ?? ""])));
}

/** The same, every cell a number. */
export function numbers(test: string, name: string): Record<string, number>[] {
  return fixture(test, name).map((row) =>
    Object.fromEntries(
      Object.entries(row).map(([column, cell]) => {
        const value = Number(cell);
        if (Number.isNaN(value)) throw new Error(`${name}: ${column} is "${cell}"`);
        return [column, value];
      }),
    ),
  );
}
