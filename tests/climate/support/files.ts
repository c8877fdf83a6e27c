import { existsSync, readFileSync, readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";

/** Real weather files lie beside the checkout: they are public but too big for it. */
const weatherFolder = new URL("../../../../shared/climate/", import.meta.url);

let told = false;

/** The text of a real weather file; null (and one line said) where there is none. On the build machine it must be there. */
export function realFile(name: string): string | null {
  const path = fileURLToPath(new URL(name, weatherFolder));
  if (existsSync(path)) return readFileSync(path, "utf8");
  if (process.env["CI"]) throw new Error(`the real weather file ${name} must be there for this test`);
  if (!told) console.log("skipped: real weather files are not beside the checkout");
  told = true;
  return null;
}

export const realFileNames = (): readonly string[] =>
  existsSync(weatherFolder) ? readdirSync(weatherFolder).filter((name) => /\.epw$|TMY3\.csv$/.test(name)) : [];

/** Rows of a fixture by its headings. */
export function fixture(name: string): Record<string, string>[] {
  const text = readFileSync(new URL(`../fixtures/${name}`, import.meta.url), "utf8");
  const [head, ...rows] = text.trim().split(/\r?\n/);
  const names = split(head!);
  return rows.map((row) => Object.fromEntries(split(row).map((cell, k) => [names[k]!, cell])));
}

const split = (line: string): string[] =>
  [...line.matchAll(/("[^"]*"|[^,]*)(?:,|$)/g)].map((m) => m[1]!.replaceAll('"', ""));

export const number = (row: Record<string, string>, column: string): number => {
  const value = Number(row[column]);
  if (row[column] === undefined || row[column] === "" || Number.isNaN(value))
    throw new Error(`fixture has no number in ${column}`);
  return value;
};
