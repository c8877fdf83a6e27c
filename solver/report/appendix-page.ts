import { materialById, passportProperties, type CatalogueMaterial } from "../materials/index.ts";
import { amount, endWords, say, sayAmount } from "../studies/index.ts";
import type { Block, ReportInput, ReportPage } from "./report.ts";

/** Inputs with flags, findings, ranges, books, self-check, weather, versions, sources. */
export function appendixPage(input: ReportInput): ReportPage {
  const closures = input.books.flatMap((book) => [book.water.closure, book.heat.closure]);
  const worst = closures.length === 0 ? null : Math.max(...closures);
  const blocks: Block[] = [
    findingsTable(input),
    ...besideBlocks(input),
    ...whatIfBlocks(input),
    ...humidityBlocks(input),
    inputsTable(input),
    materialsTable(input),
    booksTable(input),
    selfCheckBlock(input),
    versionsTable(input),
    sourcesList(input),
  ];
  return {
    reader: "appendix",
    title: "Appendix",
    question: "What does it rest on?",
    answer:
      worst === null
        ? "No books were kept: nothing has been run to its end."
        : `The books of water and heat close to ${exponent(worst)} of what moved.`,
    blocks,
  };
}

const exponent = (value: number): string =>
  value === 0
    ? "nothing"
    : value
        .toExponential(0)
        .replace("e-", " × 10⁻")
        .replace(
          /⁻(\d+)/,
          (_, digits: string) => `⁻${[...digits].map((digit) => "⁰¹²³⁴⁵⁶⁷⁸⁹"[Number(digit)]).join("")}`,
        );

function findingsTable(input: ReportInput): Block {
  const rows = input.options.flatMap((option) =>
    option.paths.flatMap((path) =>
      path.summary.findings.map((finding) => [
        `${option.id}, ${path.case.pathName.toLowerCase()}`,
        finding.statement,
        finding.limit === null ? "" : `${finding.limit} ${finding.unit}`.trim(),
        finding.when,
        finding.source,
      ]),
    ),
  );
  return {
    kind: "table",
    id: "findings",
    caption: "Findings, every path",
    columns: [
      { label: "Where" },
      { label: "Finding" },
      { label: "Limit" },
      { label: "When" },
      { label: "Source of the limit" },
    ],
    rows,
    note: "Two criteria may disagree; both are shown.",
  };
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

function inputsTable(input: ReportInput): Block {
  const { site, indoor, air, run, lab } = input.project;
  const rows: string[][] = [
    ["Weather", `${input.weather.label} (${input.weather.kind})`],
    ["Weather, SHA-256", input.weather.sha256],
  ];
  if (site !== undefined) {
    rows.push(["Climate zone", site.climateZone ?? "not given"]);
    rows.push([
      "Face",
      `azimuth ${site.face.azimuth_deg}°, tilt ${site.face.tilt_deg}°, solar absorptance ${site.face.solarAbsorptance}, emissivity ${site.face.longwaveEmissivity}`,
    ]);
    rows.push([
      "Rain that leaks in",
      site.rain?.leakShare === undefined
        ? "none given"
        : `${Number((site.rain.leakShare * 100).toPrecision(3))} % of what hits the face`,
    ]);
  }
  if (lab !== undefined) rows.push(["Faces", "laboratory faces from the project's own tables"]);
  if (indoor !== undefined)
    rows.push([
      "Room",
      Object.entries(indoor)
        .map(([key, value]) => `${key} ${JSON.stringify(value).replace(/"/g, "")}`)
        .join(", "),
    ]);
  rows.push(["Air tightness", air === undefined ? "not given" : `${air.ach50} per hour at 50 Pa`]);
  rows.push([
    "Run",
    `from ${run.start}, ${run.years} years, start state ${typeof run.initial === "string" ? run.initial : `${run.initial.relativeHumidity * 100} % RH`}`,
  ]);
  for (const option of input.options)
    for (const path of option.paths)
      for (const leak of path.case.leaks)
        rows.push([
          `Air leak, ${option.id}, ${path.case.pathName.toLowerCase()}`,
          `to ${leak.to}, ${leak.flow_m3hm2 === "driven" ? "driven by wind, stack and fan" : sayAmount(amount("flow", leak.flow_m3hm2), input.units)}`,
        ]);
  return { kind: "table", id: "inputs", caption: "Inputs", columns: [{ label: "What" }, { label: "Value" }], rows };
}

const catalogued = (input: ReportInput): readonly CatalogueMaterial[] => {
  const ids = new Set(
    input.options.flatMap((option) =>
      option.paths.flatMap((path) => path.case.layers.map((layer) => layer.material.id)),
    ),
  );
  return [...ids].flatMap((id) => materialById(id) ?? []);
};

function materialsTable(input: ReportInput): Block {
  const rows = catalogued(input).map((material) => [
    material.name,
    material.confidence,
    ...[
      passportProperties
        .flatMap((property) =>
          material.passport[property] === undefined
            ? []
            : [
                `${property} ${material.passport[property].flag}${material.passport[property].range === null ? "" : ` (${material.passport[property].range})`}`,
              ],
        )
        .join("; "),
    ],
  ]);
  const known = new Set(catalogued(input).map((material) => material.id));
  const own = [
    ...new Map(
      input.options
        .flatMap((option) => option.paths.flatMap((path) => path.case.layers))
        .filter((layer) => !known.has(layer.material.id))
        .map((layer) => [layer.material.id, layer.name]),
    ).values(),
  ];
  return {
    kind: "table",
    id: "materials",
    caption: "Materials: how each figure is known",
    columns: [{ label: "Material" }, { label: "Confidence" }, { label: "Figures, flag and spread" }],
    rows: [...rows, ...own.map((name) => [name, "user", "USER: written in the project"])],
    note: "SEEN: read in the source. COMPUTED: worked out. MEMORY: recalled, to be checked before it is relied on. ASSUMED: a rule of ours.",
  };
}

function booksTable(input: ReportInput): Block {
  return {
    kind: "table",
    id: "books",
    caption: "Books of each run: whole run, kg/m² and MJ/m²",
    columns: [
      { label: "Run" },
      { label: "Water in", numeric: true },
      { label: "out", numeric: true },
      { label: "stored", numeric: true },
      { label: "closure", numeric: true },
      { label: "Heat closure", numeric: true },
      { label: "Cells and steps", numeric: true },
    ],
    rows: input.books.map((book) => [
      `${book.option}, ${book.path}`,
      book.water.in.toFixed(2),
      book.water.out.toFixed(2),
      book.water.stored.toFixed(3),
      book.water.closure.toExponential(0),
      book.heat.closure.toExponential(0),
      `${book.log.cells}, ${book.log.steps}`,
    ]),
  };
}

function selfCheckBlock(input: ReportInput): Block {
  if (input.selfCheck === null)
    return {
      kind: "paragraph",
      tone: "note",
      text: "The self-check, a rerun on a grid twice as fine and at a tighter tolerance, was not asked for.",
    };
  return {
    kind: "table",
    id: "self-check",
    caption: "Self-check: a rerun on a finer grid and tighter tolerance differs by",
    columns: [{ label: "Quantity" }, { label: "Largest difference", numeric: true }],
    rows: input.selfCheck.map((row) => [row.what, row.difference]),
  };
}

const versionsTable = (input: ReportInput): Block => ({
  kind: "table",
  id: "versions",
  caption: "Versions",
  columns: [{ label: "What" }, { label: "Version" }],
  rows: Object.entries(input.versions).map(([what, version]) => [what, version]),
});

function sourcesList(input: ReportInput): Block {
  const ofMaterials = catalogued(input).flatMap((material) =>
    passportProperties.flatMap((property) => material.passport[property]?.sources ?? []),
  );
  const ofFindings = input.options.flatMap((option) =>
    option.paths.flatMap((path) => path.summary.findings.map((finding) => finding.source)),
  );
  return {
    kind: "list",
    ordered: false,
    items: [...new Set([...ofFindings, ...ofMaterials])].sort().map((source) => `Source: ${source}`),
  };
}
