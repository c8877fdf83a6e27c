import { permeance_kgm2sPa, sayAmount, amount, type UnitSystem } from "../studies/index.ts";
import { shortName } from "./layer-words.ts";
import { ratedResistance_m2KW, retarderClass, type CaseLayer } from "../model/index.ts";
import { kgm2sPaPerPerm } from "../units.ts";
import type { Block, ReportedOption, ReportInput, ReportPage } from "./report.ts";

/** Schedule, class, table rows and method, for plan review. */
export function officialPage(input: ReportInput): ReportPage {
  const blocks: Block[] = [
    codeTable(input),
    wholeWallTable(input),
    ...input.options.map((option) => scheduleTable(option, input.units)),
    { kind: "heading", text: "Method" },
    {
      kind: "paragraph",
      text: "Where the tables apply they decide; the run stands beside them and does not replace them. The run solves heat and moisture together, hour by hour, through each path of the wall (EN 15026; finite volumes, implicit steps with error control), with vapour diffusion, liquid transport, storage, latent heat, sun, sky, driving rain and leaking air as the inputs say. The last year of the run is judged.",
    },
  ];
  return {
    reader: "official",
    title: "For the code official",
    question: "Which rows of the code does this wall meet?",
    answer: answerOf(input),
    blocks,
  };
}

/** One short sentence an option: what its first vapour and its first energy line say. */
function answerOf(input: ReportInput): string {
  const sentences = input.options.flatMap((option) => {
    const first = (subject: string): string[] => {
      const line = input.codeLines.find((each) => each.option === option.id && each.subject === subject);
      return line === undefined ? [] : [`${subject} ${line.says}`];
    };
    const said = [...first("vapour"), ...first("energy")];
    return said.length === 0 ? [] : [`${option.id}: ${said.join(", ")}.`];
  });
  return sentences.length === 0
    ? "No code row was looked up: the site has no climate zone in this project."
    : sentences.join(" ");
}

function codeTable(input: ReportInput): Block {
  return {
    kind: "table",
    id: "code",
    caption: "Energy and vapour, on separate lines",
    columns: [
      { label: "Option" },
      { label: "Subject" },
      { label: "Says" },
      { label: "Edition" },
      { label: "Where" },
      { label: "In words" },
    ],
    rows: input.codeLines.map((line) => [
      line.option,
      line.subject,
      line.says,
      line.edition,
      line.where,
      line.sentence,
    ]),
    note: "Check your adopted edition and local amendments.",
  };
}

/** Humidity of the dry-cup and the wet-cup test, means of both sides. Source: ASTM E96 methods A and B (MEMORY). */
const dryCup = 0.25;
const wetCup = 0.75;

function scheduleTable(option: ReportedOption, units: UnitSystem): Block {
  const ip = units === "ip";
  return {
    kind: "table",
    id: `schedule-${option.id}`,
    caption: `${option.id}. ${option.name}: ${option.shown.pathName.toLowerCase()}, outside first`,
    columns: [
      { label: "Layer" },
      { label: "Thickness", numeric: true },
      { label: ip ? "R" : "RSI", numeric: true },
      { label: ip ? "Perm, dry and wet cup" : "ng/(Pa s m²), dry and wet cup", numeric: true },
      { label: "Class" },
    ],
    rows: option.shown.layers.map((layer) => [
      shortName(layer.name),
      layer.thickness_m > 0 ? sayAmount(amount("board", layer.thickness_m), units) : "sheet",
      resistanceText(layer, units),
      ...permText(layer, ip),
    ]),
    note: "Rated values at 24 °C, dry. Class by dry cup; air spaces have none.",
  };
}

function resistanceText(layer: CaseLayer, units: UnitSystem): string {
  const resistance = ratedResistance_m2KW(layer.material, layer.thickness_m);
  return resistance > 0 ? sayAmount(amount("resistance", resistance), units).replace(/^(R-|RSI )/, "") : "";
}

function permText(layer: CaseLayer, ip: boolean): [string, string] {
  if (layer.material.kind === "air") return ["", ""];
  const [dry, wet] = [dryCup, wetCup].map((humidity) => permeance_kgm2sPa(layer.material, layer.thickness_m, humidity));
  if (dry == null || wet == null) return ["not known", ""];
  const text = (value: number): string =>
    Number((ip ? value / kgm2sPaPerPerm : value * 1e12).toPrecision(2)).toString();
  return [`${text(dry)} and ${text(wet)}`, retarderClass(dry / kgm2sPaPerPerm)];
}

function wholeWallTable(input: ReportInput): Block {
  const rows = input.options
    .filter((option) => option.wholeWall !== null)
    .map((option) => [
      option.id,
      sayAmount(amount("transmittance", option.wholeWall!.U_Wm2K), input.units),
      sayAmount(amount("resistance", 1 / option.wholeWall!.U_Wm2K), input.units),
      option.wholeWall!.method,
    ]);
  return {
    kind: "table",
    id: "wholeWall",
    caption: "Whole wall, all paths by their share",
    columns: [{ label: "Option" }, { label: "U", numeric: true }, { label: "R", numeric: true }, { label: "Method" }],
    rows,
  };
}
