import { readFileSync } from "node:fs";
import Papa from "papaparse";

export type Row = Readonly<Record<string, string>>;

export function rowsOf(name: string): Row[] {
  const text = readFileSync(new URL(`./fixtures/${name}`, import.meta.url), "utf8");
  const rows = Papa.parse<Row>(text.trim(), { header: true }).data;
  if (rows.length === 0) throw new Error(`${name} holds no rows`);
  return rows;
}

export const numberIn = (row: Row, column: string): number => {
  const text = row[column];
  if (text === undefined || text.trim() === "") throw new Error(`no ${column}`);
  return Number(text);
};

export const steady = (value: number, hours: number): Float64Array => new Float64Array(hours).fill(value);
export const hourly = (hours: number, value: (hour: number) => number): Float64Array =>
  Float64Array.from({ length: hours }, (_, hour) => value(hour));
