import { amount, decidingFindings, endWords, say, sayAmount } from "../studies/index.ts";
import { inputsTable, materialsTable } from "./appendix-inputs.ts";
import { ownCautions } from "./cautions.ts";
import type { Block, ReportInput, ReportPage } from "./report.ts";
import { sourcesOf } from "./sources.ts";

/** What the answers rest on: findings, answers of other methods, ranges, inputs with flags, sources. */
export function appendixPage(input: ReportInput): ReportPage {
  const findings = input.options.flatMap((option) => option.paths.flatMap((path) => path.summary.findings));
  const limited = findings.filter((finding) => finding.limit !== null && finding.holds !== null);
  const brokenCount = limited.filter(
    (finding) => finding.holds === false && decidingFindings.includes(finding.id),
  ).length;
  const held = limited.filter((finding) => finding.holds === true).length;
  return {
    reader: "appendix",
    title: "Appendix",
    question: "What do the answers rest on?",
    answer:
      limited.length === 0
        ? "No limit was judged: nothing has been run to its end."
        : `${brokenCount === 0 ? "No limit that decides is broken." : `${brokenCount} ${brokenCount === 1 ? "limit that decides is" : "limits that decide are"} broken.`} ${held} of all ${limited.length} hold; those that do not and do not decide ask for a look.`,
    blocks: [
      { kind: "heading", text: "Cautions" },
      { kind: "list", ordered: false, items: ownCautions(input) },
      ...besideBlocks(input),
      ...whatIfBlocks(input),
      ...humidityBlocks(input),
      ...findingsTables(input),
      inputsTable(input),
      materialsTable(input),
      { kind: "heading", text: "Sources" },
      { kind: "list", ordered: true, items: sourcesOf(input) },
    ],
  };
}

const inFew = (value: number): string => String(Number(value.toPrecision(3))).replace("-", "−");

/** One table a path: two criteria may disagree, so all stand there. */
function findingsTables(input: ReportInput): Block[] {
  const sources = sourcesOf(input);
  return input.options.flatMap((option) =>
    option.paths.map((path): Block => ({
      kind: "table",
      id: `findings-${option.id}-${path.case.path}`,
      caption: `Findings ${option.id}, ${path.case.pathName.toLowerCase()}`,
      columns: [
        { label: "Finding" },
        { label: "When" },
        { label: "Limit" },
        { label: "Margin", numeric: true },
        { label: "Source", numeric: true },
      ],
      rows: path.summary.findings.map((finding) => [
        finding.statement,
        finding.when,
        finding.limit === null ? "" : `${inFew(finding.limit)} ${finding.unit}`.trim(),
        finding.margin === null ? "" : inFew(finding.margin),
        String(sources.indexOf(finding.source) + 1),
      ]),
    })),
  );
}

function besideBlocks(input: ReportInput): Block[] {
  const answer = input.answers.howThick;
  if (answer === undefined) return [];
  const thickness = (value: number | null): string =>
    value === null ? "none found" : sayAmount(amount("thickness", value), input.units);
  const rows = [["This run", thickness(answer.needed_m), "a year of hours, with storage"]];
  if (answer.beside.code !== null)
    rows.push([
      "Code table",
      thickness(answer.beside.code.thickness_m),
      `${answer.beside.code.row.edition}, ${answer.beside.code.row.row}`,
    ]);
  if (answer.beside.ratioRule !== null)
    rows.push(["Dew point by hand", thickness(answer.beside.ratioRule.thickness_m), "steady winter mean, no storage"]);
  return [
    {
      kind: "table",
      id: "how-thick",
      caption: `How thick must it be: ${answer.layerName}, option ${answer.option}`,
      columns: [{ label: "Answer of" }, { label: "Thickness", numeric: true }, { label: "What it is" }],
      rows,
    },
    {
      kind: "paragraph",
      text: [say(answer.lead, input.units), ...answer.beside.why.map((reason) => say(reason, input.units))].join(" "),
    },
  ];
}

function whatIfBlocks(input: ReportInput): Block[] {
  const answer = input.answers.whatIf;
  if (answer === undefined) return [];
  const points = (value: number | null): string =>
    value === null ? "not run" : `${value >= 0 ? "+" : "−"}${Math.abs(value).toFixed(1)}`;
  return [
    {
      kind: "table",
      id: "what-if",
      caption: `What if we are wrong: change of the sheathing's wettest hour, points, option ${answer.option}`,
      columns: [
        { label: "Input" },
        { label: "Low end" },
        { label: "Change", numeric: true },
        { label: "High end" },
        { label: "Change", numeric: true },
        { label: "How well known" },
        { label: "Source of the range" },
      ],
      rows: answer.bars.map((bar) => [
        bar.unknown.label,
        endWords(bar.unknown, bar.unknown.low),
        points(bar.moisture_points[0]),
        endWords(bar.unknown, bar.unknown.high),
        points(bar.moisture_points[1]),
        bar.unknown.known,
        bar.unknown.source,
      ]),
    },
    { kind: "paragraph", text: say(answer.lead, input.units) },
  ];
}

function humidityBlocks(input: ReportInput): Block[] {
  const answer = input.answers.humidity;
  if (answer?.ownersLine == null) return [];
  const names = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
  return [
    {
      kind: "table",
      id: "humidity",
      caption: `How humid it may be inside, option ${answer.option}`,
      columns: names.map((label) => ({ label, numeric: true })),
      rows: [answer.ownersLine.map((value) => sayAmount(amount("humidity", value), input.units))],
      note: say(answer.lead, input.units),
    },
  ];
}
