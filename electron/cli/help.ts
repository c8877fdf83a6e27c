import type { Command } from "./command.ts";

/** All commands, one line each. */
export function helpText(commands: readonly Command[]): string {
  const width = Math.max(...commands.map((command) => command.name.length));
  return [
    "Usage: wall COMMAND ... (wall COMMAND --help says more)",
    "",
    ...commands.map((command) => `  ${command.name.padEnd(width)}  ${command.summary}`),
    "",
    "Exit codes: 0 done, 1 the input has issues, 2 the run could not finish, 64 wrong usage.",
  ].join("\n");
}

/** One command with its options. */
export function helpOf(command: Command): string {
  const rows = Object.entries(command.options).map(([name, { value, hint }]): readonly [string, string] => [
    value === undefined ? `--${name}` : `--${name} ${value}`,
    hint,
  ]);
  const width = Math.max(0, ...rows.map(([option]) => option.length));
  return [
    `Usage: wall ${command.name} ${command.takes}`.trimEnd(),
    command.summary,
    ...(rows.length > 0 ? [""] : []),
    ...rows.map(([option, hint]) => `  ${option.padEnd(width)}  ${hint}`),
  ].join("\n");
}
