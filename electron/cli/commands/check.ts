import { exit, type Command } from "../command.ts";
import { projectOptions, readProject } from "../project-input.ts";

/** Reads a project and says what is wrong with it and what the drawings alone already show. Nothing is run. */
export const check: Command = {
  name: "check",
  takes: "FILE [--json]",
  summary: "read a project and list what needs attention, without a run",
  positionals: { least: 1, most: 1 },
  options: { weather: projectOptions.weather, json: { type: "boolean", hint: "one JSON document" } },
  async run(given, output) {
    const read = await readProject(given.positionals[0]!, given);
    const issues = read.ok ? read.value.warnings : read.issues;
    if (given.flag("json"))
      output.result(JSON.stringify({ format: "wallyear-check", formatVersion: 1, holds: read.ok, issues }, null, 2));
    else output.issues(issues);
    if (!read.ok) return exit.issues;
    const { cases } = read.value;
    if (!given.flag("json"))
      output.result(`The project can be run: ${cases.map((aCase) => `${aCase.option} ${aCase.path}`).join(", ")}.`);
    return exit.done;
  },
};
