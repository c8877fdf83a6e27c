import { exit, type Command } from "../command.ts";
import { cautions } from "../output/cautions.ts";
import { differenceJson, pairsOf } from "../output/difference-json.ts";
import { documentHead, jsonText, runJson } from "../output/run-json.ts";
import { sideBySideText } from "../output/side-by-side-text.ts";
import { wallJson } from "../output/wall-json.ts";
import { weatherJson } from "../output/weather-json.ts";
import { writeCsv } from "../output/write-csv.ts";
import { chosenCases, projectOptions, readProject } from "../project-input.ts";
import { runCases } from "../run-cases.ts";
import { UsageError } from "../usage-error.ts";

/** Runs two options in the same weather and tells the second from the first. */
export const sideBySide: Command = {
  name: "side-by-side",
  takes: "FILE A B [--path bay] [--weather X.epw] [--years N] [--out DIR] [--json]",
  summary: "run two options in the same weather and tell them apart",
  positionals: { least: 3, most: 3 },
  options: {
    path: { type: "string", value: "bay", hint: "only this path" },
    ...projectOptions,
    out: { type: "string", value: "DIR", hint: "write hourly CSV into this folder" },
    json: { type: "boolean", hint: "one JSON document on standard output" },
  },
  async run(given, output) {
    const [file, a, b] = given.positionals as [string, string, string];
    if (a === b) throw new UsageError(`Options ${a} and ${b} are the same. Name two.`);
    const read = await readProject(file, given);
    if (!read.ok) {
      output.issues(read.issues);
      return exit.issues;
    }
    const input = read.value;
    output.issues(input.warnings);
    const cases = [a, b].flatMap((option) => chosenCases(input, option, given.text("path")));
    const outcome = await runCases(cases, input.files);
    if (!outcome.ok) {
      output.issues(outcome.issues);
      return exit.issues;
    }
    const results = outcome.runs.map((ran) => ran.result);
    const out = given.text("out");
    if (out !== undefined) for (const path of await writeCsv(out, results)) output.note(`Wrote ${path}`);
    const pairs = pairsOf(results, a, b);
    const weather = weatherJson(input);
    if (given.flag("json")) {
      const document = {
        ...documentHead(input.project.name, weather),
        runs: outcome.runs.map((ran) => runJson(ran.result, ran.findings)),
        differences: pairs.map(differenceJson),
        wall: wallJson(input, [a, b]),
        cautions,
      };
      output.result(jsonText(document));
    } else {
      output.result(`${input.project.name}${weather === null ? "" : `, ${weather.name}`}\n`);
      output.result([...pairs.map(sideBySideText), ...cautions].join("\n"));
    }
    return results.every((result) => result.status === "finished") ? exit.done : exit.unfinished;
  },
};
