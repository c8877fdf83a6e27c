import { readFileSync } from "node:fs";
import papaparse from "papaparse";

/** Rows of a table under fixtures/, by column name. */
export function csvRows(file: string): Record<string, string>[] {
  const text = readFileSync(new URL(`./fixtures/${file}`, import.meta.url), "utf8");
  return papaparse.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true }).data;
}
