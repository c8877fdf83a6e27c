import { amount, say, sayAmount } from "../studies/index.ts";
import type { ControlRole } from "../model/index.ts";
import { inSentence, shortName } from "./layer-words.ts";
import { breaksOf } from "./breaks.ts";
import type { Block, ReportedOption, ReportInput, ReportPage } from "./report.ts";

/** Wood is closed in at or below this [% by mass]. Source: federal guide for certified homes, framing at most 18 % before closing (SEEN). */
export const closingLimit_percent = 18;

const roleWords: Readonly<Record<ControlRole, string>> = {
  water: "keeps rain out",
  air: "keeps air in",
  vapour: "controls vapour",
  thermal: "keeps heat in",
};

/** Order, thicknesses, the moisture limit before closing, swaps. */
export function builderPage(input: ReportInput): ReportPage {
  const option = input.options[input.options.length - 1]!;
  const blocks: Block[] = [
    orderTable(option, input),
    { kind: "heading", text: "Before it is closed" },
    { kind: "list", ordered: false, items: beforeClosing(input) },
    { kind: "heading", text: "Swaps" },
    { kind: "list", ordered: false, items: swaps(input) },
    { kind: "heading", text: "Where layers meet" },
    { kind: "list", ordered: false, items: breaksOf(option) },
  ];
  return {
    reader: "builder",
    title: "For the builder",
    question: "In what order, how thick, and what may be changed?",
    answer: `Wall ${option.id}, ${option.name}. Close wood at ${closingLimit_percent} % or drier, read with a meter.`,
    blocks,
  };
}

function orderTable(option: ReportedOption, input: ReportInput): Block {
  const drawn = input.project.options
    .find((each) => each.id === option.id)
    ?.paths.find((path) => path.id === option.shown.path);
  const roles = (id: string): string =>
    (drawn?.layers.find((layer) => layer.id === id)?.roles ?? []).map((role) => roleWords[role]).join(", ");
  return {
    kind: "table",
    id: "order",
    caption: `Order of layers: ${option.shown.pathName.toLowerCase()}, outside first`,
    columns: [
      { label: "No.", numeric: true },
      { label: "Layer" },
      { label: "Thickness", numeric: true },
      { label: "Its part" },
    ],
    rows: option.shown.layers.map((layer, index) => [
      String(index + 1),
      shortName(layer.name),
      layer.thickness_m > 0 ? sayAmount(amount("board", layer.thickness_m), input.units) : "sheet",
      roles(layer.id),
    ]),
  };
}

function beforeClosing(input: ReportInput): string[] {
  const items = [
    `Framing and sheathing at ${closingLimit_percent} % or drier, read with a pin meter at the bottom plate and under windows, and written down.`,
  ];
  const drying = input.answers.drying;
  if (drying !== undefined)
    for (const row of drying.rows.filter((each) => each.finished))
      items.push(
        `If it is wetted all the same (${inSentence(row.layerName)}, wall ${row.option}): ${lowerFirst(say(row.sentence, input.units))}`,
      );
  else items.push("How long a wetted wall takes to dry was not asked.");
  items.push(
    "If it rains this week: cover it, then measure again. Do not close wet wood between a board and a plastic sheet.",
  );
  return items;
}

function swaps(input: ReportInput): string[] {
  const rows = input.answers.swaps?.rows ?? [];
  if (rows.length === 0)
    return [
      "None has been run. Ask before anything is changed: a board of the same R can let a hundredth of the vapour through.",
    ];
  return rows.map((row) => say(row.sentence, input.units));
}

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
