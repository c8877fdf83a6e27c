import { parseArgs } from "node:util";
import type { Command, Given } from "./command.ts";
import { UsageError } from "./usage-error.ts";

/** Reads the words behind a command's name. */
export function readArgs(command: Command, words: readonly string[]): Given {
  let parsed: { values: Record<string, string | boolean | undefined>; positionals: string[] };
  try {
    parsed = parseArgs({
      args: [...words],
      allowPositionals: true,
      strict: true,
      options: Object.fromEntries(Object.entries(command.options).map(([name, { type }]) => [name, { type }])),
    });
  } catch (error) {
    const known = Object.keys(command.options).map((name) => `--${name}`);
    const why = error instanceof Error ? error.message.split(". ")[0]! : "the options could not be read";
    throw new UsageError(`${why}. ${command.name} takes: ${known.length > 0 ? known.join(", ") : "no options"}.`);
  }
  const { least, most } = command.positionals;
  const count = parsed.positionals.length;
  if (count < least || count > most) throw new UsageError(`Usage: wall ${command.name} ${command.takes}`);
  return {
    positionals: parsed.positionals,
    text: (name) => {
      const value = parsed.values[name];
      return typeof value === "string" ? value : undefined;
    },
    flag: (name) => parsed.values[name] === true,
  };
}

/** A number option within a range, or undefined where it was not given. */
export function numberOption(given: Given, name: string, least: number, most: number): number | undefined {
  const text = given.text(name);
  if (text === undefined) return undefined;
  const value = Number(text.replace(",", "."));
  if (text.trim() === "" || !Number.isFinite(value) || value < least || value > most)
    throw new UsageError(`--${name} is "${text}". Give a number from ${least} to ${most}.`);
  return value;
}

export function wholeNumberOption(given: Given, name: string, least: number, most: number): number | undefined {
  const value = numberOption(given, name, least, most);
  if (value !== undefined && !Number.isInteger(value))
    throw new UsageError(`--${name} is "${value}". Give a whole number from ${least} to ${most}.`);
  return value;
}
