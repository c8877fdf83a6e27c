import type { Issue } from "../../climate/index.ts";

/** Exit codes of the program. */
export const exit = { done: 0, issues: 1, unfinished: 2, usage: 64 } as const;

/** Options that a command may take, as `node:util` reads them. */
export type OptionTable = Readonly<
  Record<string, { readonly type: "string" | "boolean"; readonly hint: string; readonly value?: string }>
>;

export interface Given {
  readonly positionals: readonly string[];
  /** A string option that was given, or undefined. */
  text(name: string): string | undefined;
  flag(name: string): boolean;
}

/** Where a command writes: results to standard output, all else to standard error. */
export interface Output {
  result(text: string): void;
  note(text: string): void;
  issues(issues: readonly Issue[]): void;
}

export interface Command {
  readonly name: string;
  /** What stands behind the name: "FILE [--option A]". */
  readonly takes: string;
  readonly summary: string;
  readonly positionals: { readonly least: number; readonly most: number };
  readonly options: OptionTable;
  run(given: Given, output: Output): Promise<number>;
}
