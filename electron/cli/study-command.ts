import { exit, type Command, type Given, type OptionTable } from "./command.ts";
import { cautions } from "./output/cautions.ts";
import { studyJson } from "./output/study-json.ts";
import { weatherJson } from "./output/weather-json.ts";
import { projectOptions, readProject, type ProjectInput } from "./project-input.ts";
import { runStudyInThreads } from "./run-study.ts";
import type { Case, Study } from "../../solver/index.ts";
import { UsageError } from "./usage-error.ts";

/** One study to run and the words for its answer. */
export interface Asked<Answer> {
  readonly study: Study<Answer>;
  readonly text: (answer: Answer) => string;
}

interface Question<Answer> {
  readonly name: string;
  readonly takes: string;
  readonly summary: string;
  readonly options: OptionTable;
  /** The studies that the question comes to: one, or one an option. */
  readonly ask: (input: ProjectInput, given: Given) => readonly Asked<Answer>[];
}

/** A command that reads a project, runs a question's studies and tells their answers. */
export function studyCommand<Answer>(question: Question<Answer>): Command {
  return {
    name: question.name,
    takes: `FILE ${question.takes} [--weather X.epw] [--years N] [--json]`.replaceAll("  ", " "),
    summary: question.summary,
    positionals: { least: 1, most: 1 },
    options: { ...question.options, ...projectOptions, json: { type: "boolean", hint: "one JSON document" } },
    async run(given, output) {
      const read = await readProject(given.positionals[0]!, given);
      if (!read.ok) {
        output.issues(read.issues);
        return exit.issues;
      }
      const input = read.value;
      output.issues(input.warnings);
      const answers: Answer[] = [];
      const texts: string[] = [];
      let unfinished = 0;
      for (const { study, text } of question.ask(input, given)) {
        const outcome = await runStudyInThreads(study, input.files);
        if (!outcome.ok) {
          output.issues(outcome.issues);
          return exit.issues;
        }
        answers.push(outcome.answer);
        texts.push(text(outcome.answer));
        unfinished += outcome.unfinished;
      }
      if (given.flag("json")) output.result(studyJson(question.name, input.project.name, weatherJson(input), answers));
      else output.result([...texts, ...cautions].join("\n"));
      if (unfinished > 0)
        output.note(`${unfinished} runs of the study did not finish; the answer stands without them.`);
      return unfinished > 0 ? exit.unfinished : exit.done;
    },
  };
}

/** For each option asked for, the first path that has the layer (any path where no layer is asked for). */
export function casesWith(input: ProjectInput, given: Given, layer: string | undefined): readonly Case[] {
  const option = given.text("option");
  const path = given.text("path");
  const fitting = input.cases.filter(
    (aCase) =>
      (option === undefined || aCase.option === option) &&
      (path === undefined || aCase.path === path) &&
      (layer === undefined || aCase.layers.some((each) => each.id === layer)),
  );
  const first = fitting.filter((aCase, place) => fitting.findIndex((other) => other.option === aCase.option) === place);
  if (first.length === 0) {
    const wanted = [layer && `layer ${layer}`, option && `option ${option}`, path && `path ${path}`]
      .filter(Boolean)
      .join(", ");
    const has = input.cases.map(
      (aCase) => `${aCase.option} ${aCase.path}: ${aCase.layers.map((each) => each.id).join(", ")}`,
    );
    throw new UsageError(`No path has ${wanted}. The project has\n  ${has.join("\n  ")}`);
  }
  return first;
}

export const caseOptions = {
  option: { type: "string", value: "A", hint: "only this option" },
  path: { type: "string", value: "bay", hint: "this path; else the first that fits" },
} as const satisfies OptionTable;
