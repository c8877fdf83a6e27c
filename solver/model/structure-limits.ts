import type { Issue } from "../../climate/index.ts";
import { mostRows } from "./project.ts";

/** Longest text of a project file [characters]; two tables of 600,000 rows fit. */
export const longestText = 100_000_000;
/** Most values in a file. */
export const mostValues = 20_000_000;

const most: Readonly<Record<string, number>> = {
  options: 8,
  paths: 20,
  layers: 60,
  materials: 500,
  probes: 200,
  leaks: 20,
  table: mostRows,
};
const forbidden = new Set(["__proto__", "constructor", "prototype"]);
const words: Readonly<Record<string, string>> = { table: "table rows" };

/** A row of two finite numbers needs no further look; tables have half a million of them. */
const isPair = (item: unknown): boolean =>
  Array.isArray(item) && item.length === 2 && Number.isFinite(item[0]) && Number.isFinite(item[1]);

/**
 * Counts and names that are refused before anything reads the values: too many options, paths, layers, rows; field names
 * that would reach into the program; numbers beyond range. Walks without recursion.
 */
export function structureIssues(root: unknown): Issue[] {
  const issues: Issue[] = [];
  const pending: { value: object; path: string }[] = [];
  const say = (path: string, message: string, remedy: string): void => {
    if (issues.length < 100) issues.push({ path, message, remedy, severity: "error" });
  };
  const visit = (value: unknown, parent: string, name: string): void => {
    if (typeof value === "object" && value !== null) pending.push({ value, path: parent ? `${parent}.${name}` : name });
    else if (typeof value === "number" && !Number.isFinite(value))
      say(parent ? `${parent}.${name}` : name, `${name} is beyond the range of numbers`, "Give a finite number.");
  };
  visit(root, "", "");
  let seen = 0;
  for (let here = pending.pop(); here; here = pending.pop()) {
    const { value, path } = here;
    const name = path.slice(path.lastIndexOf(".") + 1);
    if (Array.isArray(value)) {
      seen += value.length;
      const limit = most[name];
      if (limit !== undefined && value.length > limit) {
        say(
          path,
          `${value.length} ${words[name] ?? name} are given; at most ${limit} are allowed`,
          `Keep to ${limit} ${words[name] ?? name}.`,
        );
        continue;
      }
      if (seen > mostValues)
        return [
          {
            path,
            message: `the file holds more than ${mostValues} values`,
            remedy: "Thin out its tables.",
            severity: "error",
          },
        ];
      for (let i = 0; i < value.length; i++) {
        const item: unknown = value[i];
        if (isPair(item)) seen += 2;
        else visit(item, path, String(i + 1));
      }
      continue;
    }
    const names = Object.keys(value);
    seen += names.length;
    for (const field of names) {
      if (forbidden.has(field)) say(path, `a field is named ${field}`, "Rename or remove it.");
      else visit((value as Record<string, unknown>)[field], path, field);
    }
  }
  return issues;
}
