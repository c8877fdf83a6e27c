import { basename, dirname, resolve } from "node:path";
import type { Checked, Issue } from "../../climate/index.ts";
import { casesOf, demoProject, openProject, type Case, type NamedTexts, type Project } from "../../solver/index.ts";
import { wholeNumberOption } from "./args.ts";
import type { Given, OptionTable } from "./command.ts";
import { readInput } from "./read-input.ts";
import { UsageError } from "./usage-error.ts";

/** Options of every command that runs a project. */
export const projectOptions = {
  weather: { type: "string", value: "X.epw", hint: "use this weather file instead of the project's" },
  years: { type: "string", value: "N", hint: "run so many years, 1 to 30" },
} as const satisfies OptionTable;

export interface ProjectInput {
  readonly project: Project;
  readonly cases: readonly Case[];
  /** Texts of the files that the project names. */
  readonly files: NamedTexts;
  readonly warnings: readonly Issue[];
}

type Read =
  { readonly ok: true; readonly value: ProjectInput } | { readonly ok: false; readonly issues: readonly Issue[] };

const weatherPlace = "site.weather.file";

/** Files that a project names: weather, logged rooms. */
function namedFiles(project: Project): { readonly name: string; readonly place: string }[] {
  const named: { name: string; place: string }[] = [];
  const weather = project.site?.weather;
  if (weather !== undefined && "file" in weather) named.push({ name: weather.file as string, place: weatherPlace });
  const indoor = project.indoor;
  if (indoor !== undefined && indoor.method === "logger") named.push({ name: indoor.file, place: "indoor.file" });
  return named;
}

async function projectText(file: string): Promise<Checked<string>> {
  const read = await readInput(file, "FILE");
  // The word `demo` stands for the built-in project where no file has that name.
  if (!read.ok && file === "demo") return { ok: true, value: JSON.stringify(demoProject), issues: [] };
  return read;
}

/** Reads a project file with the files it names, applies --weather and --years, and makes its cases. */
export async function readProject(file: string, given: Given): Promise<Read> {
  const years = wholeNumberOption(given, "years", 1, 30);
  const weather = given.text("weather");
  const text = await projectText(file);
  if (!text.ok) return text;
  const opened = openProject(text.value);
  if (!opened.ok) return opened;
  let project = opened.value.project;
  if (years !== undefined) project = { ...project, run: { ...project.run, years } };
  if (weather !== undefined) {
    if (project.site === undefined)
      throw new UsageError("--weather was given, but this project is a laboratory case without a site. Leave it out.");
    project = { ...project, site: { ...project.site, weather: { file: basename(weather) } } };
  }

  const files: Record<string, string> = {};
  const issues: Issue[] = [];
  for (const { name, place } of namedFiles(project)) {
    // What the user types is relative to the user; what the project names is relative to the project.
    const replaced = place === weatherPlace && weather !== undefined;
    const path = replaced ? resolve(weather) : resolve(dirname(file), name);
    const read = await readInput(path, place);
    if (read.ok) files[name] = read.value;
    else issues.push(...read.issues);
  }
  const cases = casesOf(project);
  issues.push(...cases.issues.filter((issue) => !opened.issues.some((known) => same(known, issue))));
  if (!cases.ok || issues.some((issue) => issue.severity === "error"))
    return { ok: false, issues: [...opened.issues, ...issues] };
  return { ok: true, value: { project, cases: cases.value, files, warnings: [...opened.issues, ...issues] } };
}

const same = (a: Issue, b: Issue): boolean => a.path === b.path && a.message === b.message;

/** The cases that --option and --path ask for. */
export function chosenCases(
  input: ProjectInput,
  option: string | undefined,
  path: string | undefined,
): readonly Case[] {
  const { cases } = input;
  const among = (what: string, wanted: string, known: readonly string[]): void => {
    if (!known.includes(wanted))
      throw new UsageError(`This project has no ${what} ${wanted}. It has ${[...new Set(known)].join(", ")}.`);
  };
  if (option !== undefined)
    among(
      "option",
      option,
      cases.map((aCase) => aCase.option),
    );
  const ofOption = option === undefined ? cases : cases.filter((aCase) => aCase.option === option);
  if (path !== undefined)
    among(
      "path",
      path,
      ofOption.map((aCase) => aCase.path),
    );
  return path === undefined ? ofOption : ofOption.filter((aCase) => aCase.path === path);
}
