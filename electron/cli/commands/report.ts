import {
  findingsOf,
  loadsOf,
  programVersion,
  reportCsv,
  reportHtml,
  reportInputOf,
  reportOf,
  reportText,
  weatherOf,
  type Paper,
  type Report,
} from "../../../solver/index.ts";
import writeFileAtomic from "write-file-atomic";
import { exit, type Command } from "../command.ts";
import { chosenCases, projectOptions, readProject, type ProjectInput } from "../project-input.ts";
import { fontFaces } from "../font-faces.ts";
import { printPdf } from "../print-pdf.ts";
import type { Ran } from "../run-contract.ts";
import { runCases } from "../run-cases.ts";
import { UsageError } from "../usage-error.ts";

function reportFrom(
  input: ProjectInput,
  runs: readonly Ran[],
  units: "si" | "ip",
  question: string | undefined,
): Report {
  const weather = weatherOf(input.project.site!.weather, input.files);
  const loads = weather.ok ? loadsOf(runs[0]!.case, weather.value, input.files) : null;
  if (!weather.ok || loads?.ok !== true)
    throw new Error("the weather that the runs marched through can't be read again");
  const issued = new Date().toLocaleDateString("en-GB", { day: "numeric", month: "long", year: "numeric" });
  return reportOf(
    reportInputOf({
      project: input.project,
      runs: runs.map((run) => ({ ...run, findings: findingsOf(run.case, run.result, { units, loads: loads.value }) })),
      weather: weather.value,
      loads: loads.value,
      ...(question === undefined ? {} : { question }),
      versions: { Wallyear: programVersion, Node: process.versions.node },
      issued,
      units,
    }),
  );
}

async function write(out: string, ending: string, document: Report, paper: Paper): Promise<void> {
  const html = (): string => {
    const faces = fontFaces();
    return reportHtml(document, { paper, ...(faces === null ? {} : { fontFaces: faces }) });
  };
  const texts: Readonly<Record<string, () => string>> = {
    html,
    txt: () => reportText(document),
    csv: () => reportCsv(document),
    json: () => `${JSON.stringify(document, null, 2)}\n`,
  };
  if (ending === "pdf") await printPdf(html(), out);
  else await writeFileAtomic(out, texts[ending]!());
}

/** Runs a project and writes the report: client, official, builder, appendix. */
export const report: Command = {
  name: "report",
  takes:
    "FILE --out report.html|.pdf|.txt|.csv|.json [--paper letter|a4] [--option A] [--units ip|si] [--question TEXT] [--weather X.epw] [--years N]",
  summary: "run a project and write its report for client, official and builder",
  positionals: { least: 1, most: 1 },
  options: {
    out: {
      type: "string",
      value: "FILE",
      hint: "report.html, report.pdf (printed by Chromium), .txt, .csv (its tables) or .json (all of it)",
    },
    paper: { type: "string", value: "P", hint: "letter (the default) or a4" },
    option: { type: "string", value: "A", hint: "only this option" },
    units: { type: "string", value: "U", hint: "ip (inch-pound, the default) or si" },
    question: { type: "string", value: "TEXT", hint: "what the client asked" },
    ...projectOptions,
  },
  async run(given, output) {
    const out = given.text("out");
    const ending = /\.(html|pdf|txt|csv|json)$/i.exec(out ?? "")?.[1]?.toLowerCase();
    if (out === undefined || ending === undefined)
      throw new UsageError("report needs --out with a file name that ends in .html, .pdf, .txt, .csv or .json.");
    const units = given.text("units") ?? "ip";
    if (units !== "ip" && units !== "si") throw new UsageError(`--units is "${units}". Give ip or si.`);
    const paper = given.text("paper") ?? "letter";
    if (paper !== "letter" && paper !== "a4") throw new UsageError(`--paper is "${paper}". Give letter or a4.`);
    const read = await readProject(given.positionals[0]!, given);
    if (!read.ok) {
      output.issues(read.issues);
      return exit.issues;
    }
    const input = read.value;
    if (input.project.site === undefined)
      throw new UsageError("This project is a laboratory case; a report needs a wall on a site.");
    output.issues(input.warnings);
    const outcome = await runCases(chosenCases(input, given.text("option"), undefined), input.files);
    if (!outcome.ok) {
      output.issues(outcome.issues);
      return exit.issues;
    }
    const document = reportFrom(input, outcome.runs, units, given.text("question"));
    await write(out, ending, document, paper);
    output.note(`Wrote ${out}`);
    return outcome.runs.every((ran) => ran.result.status === "finished") ? exit.done : exit.unfinished;
  },
};
