import { exit, type Command } from "../command.ts";
import { cautions } from "../output/cautions.ts";
import { documentHead, jsonText, runJson } from "../output/run-json.ts";
import { runText } from "../output/run-text.ts";
import { wallJson } from "../output/wall-json.ts";
import { weatherJson } from "../output/weather-json.ts";
import { writeCsv } from "../output/write-csv.ts";
import { chosenCases, projectOptions, readProject } from "../project-input.ts";
import { runCases } from "../run-cases.ts";

/** Runs every path of every option, or those asked for. */
export const run: Command = {
  name: "run",
  takes: "FILE [--option A] [--path bay] [--weather X.epw] [--years N] [--out DIR] [--json]",
  summary: "put the walls of a project through their years",
  positionals: { least: 1, most: 1 },
  options: {
    option: { type: "string", value: "A", hint: "only this option" },
    path: { type: "string", value: "bay", hint: "only this path" },
    ...projectOptions,
    out: { type: "string", value: "DIR", hint: "write hourly CSV into this folder" },
    json: { type: "boolean", hint: "one JSON document on standard output" },
  },
  async run(given, output) {
    const read = await readProject(given.positionals[0]!, given);
    if (!read.ok) {
      output.issues(read.issues);
      return exit.issues;
    }
    const input = read.value;
    output.issues(input.warnings);
    const cases = chosenCases(input, given.text("option"), given.text("path"));
    const outcome = await runCases(cases, input.files);
    if (!outcome.ok) {
      output.issues(outcome.issues);
      return exit.issues;
    }
    const { runs } = outcome;
    const out = given.text("out");
    if (out !== undefined)
      for (const path of await writeCsv(
        out,
        runs.map((ran) => ran.result),
      ))
        output.note(`Wrote ${path}`);

    const weather = weatherJson(input);
    if (given.flag("json")) {
      const document = {
        ...documentHead(input.project.name, weather),
        runs: runs.map((ran) => runJson(ran.result, ran.findings)),
        wall: wallJson(input, [...new Set(cases.map((aCase) => aCase.option))]),
        cautions,
      };
      output.result(jsonText(document));
    } else {
      output.result(`${input.project.name}${weather === null ? "" : `, ${weather.name}`}\n`);
      for (const ran of runs) output.result(runText(ran));
      output.result(cautions.join("\n"));
    }
    return runs.every((ran) => ran.result.status === "finished") ? exit.done : exit.unfinished;
  },
};
