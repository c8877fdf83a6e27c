import { usualSettings, wallChecks } from "../../../solver/index.ts";
import { exit, type Command } from "../command.ts";
import { checkText } from "../output/check-text.ts";
import { wallJson } from "../output/wall-json.ts";
import { projectOptions, readProject } from "../project-input.ts";

/** Reads a project and says what is wrong with it and what the drawings alone already show. Nothing is run. */
export const check: Command = {
  name: "check",
  takes: "FILE [--weather X.epw] [--json]",
  summary: "read a project: what needs attention, and what needs no run to be said",
  positionals: { least: 1, most: 1 },
  options: { weather: projectOptions.weather, json: { type: "boolean", hint: "one JSON document" } },
  async run(given, output) {
    const read = await readProject(given.positionals[0]!, given);
    const issues = read.ok ? read.value.warnings : read.issues;
    const input = read.ok ? read.value : null;
    const options = input === null ? [] : input.project.options;
    const lines = options.map((option) => ({ option, lines: wallChecks(input!.project, option, usualSettings) }));
    if (given.flag("json")) {
      const checks = Object.fromEntries(lines.map(({ option, lines: ofOption }) => [option.id, ofOption]));
      const wall =
        input === null
          ? {}
          : wallJson(
              input,
              options.map((option) => option.id),
            );
      const head = { format: "wallyear-check", formatVersion: 1, holds: read.ok };
      output.result(JSON.stringify({ ...head, issues, checks, wall }, null, 2));
    } else {
      output.issues(issues);
      for (const { option, lines: ofOption } of lines) output.result(checkText(option, input!.project, ofOption));
    }
    return read.ok ? exit.done : exit.issues;
  },
};
