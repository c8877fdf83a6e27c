import type { z } from "zod";
import type { Issue } from "../../climate/index.ts";
import { materialById } from "../materials/index.ts";
import { fieldWords } from "./field-words.ts";
import { pathKindWords } from "./words.ts";
import type { PathKind } from "./project.ts";

type Key = string | number;

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);
const child = (value: unknown, key: Key): unknown =>
  Array.isArray(value) ? value[Number(key)] : isRecord(value) && Object.hasOwn(value, key) ? value[key] : undefined;
const textOf = (value: unknown): string | null =>
  typeof value === "string" && value.length > 0 && value.length <= 80 ? value : null;

function layerWord(layer: unknown): string | null {
  const material = child(layer, "material");
  if (typeof material === "string")
    return (materialById(material)?.name ?? textOf(material))?.replace(/, .*| \(.*/, "") ?? null;
  return textOf(child(material, "name"));
}

/** Where in the project a path of keys leads: "options.A.paths.bay.layers.3.thickness_m", with ids for options and paths and layers counted from 1. */
export function dottedPath(root: unknown, keys: readonly Key[]): string {
  const parts: string[] = [];
  let here: unknown = root;
  let list = "";
  for (const key of keys) {
    here = child(here, key);
    if (typeof key === "number")
      parts.push(
        (list === "options" || list === "paths" || list === "materials" ? textOf(child(here, "id")) : null) ??
          String(key + 1),
      );
    else parts.push((list = key));
  }
  return parts.join(".");
}

/** The same place in words: "Option A, stud bay, layer 3, mineral wool". Empty for the top level. */
export function placeInWords(root: unknown, keys: readonly Key[]): string {
  const words: string[] = [];
  let here: unknown = root;
  for (let i = 0; i < keys.length; i++) {
    const key = keys[i]!;
    here = child(here, key);
    if (typeof key !== "number") continue;
    const list = keys[i - 1];
    const n = key + 1;
    if (list === "options") words.push(`Option ${textOf(child(here, "id")) ?? n}`);
    else if (list === "paths") {
      const kind = child(here, "kind");
      const word =
        textOf(child(here, "name")) ??
        (typeof kind === "string" && kind !== "other" && Object.hasOwn(pathKindWords, kind)
          ? pathKindWords[kind as PathKind].toLowerCase()
          : textOf(child(here, "id")));
      words.push(word ? `path ${textOf(child(here, "id")) ?? n} (${word})` : `path ${n}`);
    } else if (list === "layers") words.push(`layer ${n}${layerWord(here) ? `, ${layerWord(here)}` : ""}`);
    else if (list === "materials") words.push(`Material ${textOf(child(here, "id")) ?? n}`);
    else if (list === "leaks") words.push(`air leak ${n}`);
    else if (list === "probes") words.push(`probe ${n}`);
    else words.push(`entry ${n}`);
  }
  const text = words.join(", ");
  return text ? text[0]!.toUpperCase() + text.slice(1) : "";
}

/** A field name as words: "humidityClass" is "humidity class". */
const plainWords = (field: string): string =>
  field
    .replace(/_.*$/, "")
    .replace(/([A-Z])/g, " $1")
    .toLowerCase();

function shown(value: unknown): string {
  if (value === undefined) return "missing";
  if (typeof value === "string") return `"${value.length > 40 ? `${value.slice(0, 40)}...` : value}"`;
  if (typeof value === "number" || typeof value === "boolean" || value === null) return String(value);
  return Array.isArray(value) ? "a list" : "a group of fields";
}

const numbers: Readonly<Record<string, string>> = {
  number: "a number",
  int: "a whole number",
  string: "a text",
  array: "a list",
  object: "a group of fields { }",
  boolean: "true or false",
  tuple: "a pair of numbers",
  record: "a group of fields { }",
};

/** What would be right at this place, from the rule that was broken. */
function remedyFor(issue: z.core.$ZodIssue, field: string): string {
  const known = fieldWords[field]?.give;
  switch (issue.code) {
    case "invalid_type":
      return known ?? `Give ${numbers[issue.expected] ?? issue.expected}.`;
    case "too_small":
      if (issue.origin === "array") return `Give at least ${issue.minimum}.`;
      if (issue.origin === "string") return "Give a name of at least one letter.";
      return `Enter a value ${issue.inclusive === false ? "above" : "of at least"} ${issue.minimum}${unitWord(field)}.`;
    case "too_big":
      if (issue.origin === "array") return `Keep to ${issue.maximum} at most.`;
      if (issue.origin === "string") return `Keep to ${issue.maximum} characters.`;
      return `Enter a value of at most ${issue.maximum}${unitWord(field)}.`;
    case "invalid_value":
      return `Choose one of: ${issue.values.map(String).join(", ")}.`;
    case "invalid_format":
      return issue.message.startsWith("Invalid")
        ? (known ?? "Use letters, digits, - and _.")
        : `${issue.message[0]!.toUpperCase()}${issue.message.slice(1)}.`;
    case "unrecognized_keys":
      return `Remove ${issue.keys.slice(0, 5).join(", ")} or check the spelling.`;
    default:
      return known ?? "See the description of the project file for what may stand here.";
  }
}

function unitWord(field: string): string {
  const unit = fieldWords[field]?.unit;
  return unit ? ` ${unit}` : "";
}

/** The most telling branch of a union: the one that got furthest before it failed. */
function telling(issue: z.core.$ZodIssue): z.core.$ZodIssue {
  if (issue.code !== "invalid_union" || !("errors" in issue) || issue.errors.length === 0) return issue;
  let best: z.core.$ZodIssue | undefined;
  let depth = 0;
  for (const branch of issue.errors) {
    const first =
      branch.length > 0 &&
      !branch.some((problem) => problem.code === "invalid_value" && problem.path.at(-1) === "method")
        ? branch[0]
        : undefined;
    if (first && first.path.length > depth) {
      best = first;
      depth = first.path.length;
    }
  }
  return best ? telling({ ...best, path: [...issue.path, ...best.path] }) : issue;
}

/** Which row of a table is wrong. */
function tableFault(value: unknown): string {
  if (!Array.isArray(value)) return `table is ${shown(value)}`;
  if (value.length === 0) return "table has no rows";
  const bad = value.findIndex(
    (row: unknown) => !Array.isArray(row) || row.length !== 2 || !row.every((one) => Number.isFinite(one)),
  );
  return bad < 0
    ? `table has ${value.length} rows`
    : `table: row ${bad + 1} is ${JSON.stringify(value[bad])?.slice(0, 40)}`;
}

/** Turns what the schema found into issues in the trade's words, each with its place and what would be valid. */
export function schemaIssues(root: unknown, found: readonly z.core.$ZodIssue[]): Issue[] {
  return found.slice(0, 200).map((raw) => {
    const issue = telling(raw);
    const keys = issue.path.map((key) => (typeof key === "symbol" ? String(key) : key));
    const field = String([...keys].reverse().find((key) => typeof key === "string") ?? "project");
    let value: unknown = root;
    for (const key of keys) value = child(value, key);
    const place = placeInWords(root, keys);
    const name = fieldWords[field]?.name ?? plainWords(field);
    const message =
      issue.code === "custom" && field === "table"
        ? tableFault(value)
        : issue.code === "unrecognized_keys"
          ? `${name} has fields that are not known here: ${issue.keys.slice(0, 5).join(", ")}`
          : isRecord(value) && issue.code !== "invalid_type"
            ? `${name} is in none of the known forms`
            : `${name} is ${shown(value)}${typeof value === "number" ? unitWord(field) : ""}`;
    return {
      path: dottedPath(root, keys),
      message: place ? `${place}: ${message}` : message,
      remedy: remedyFor(issue, field),
      severity: "error" as const,
    };
  });
}
