import { amount, holdsAll, say, sayAmount, shareInward } from "../studies/index.ts";
import { drawnWall, monthName, worstPath } from "./drawn-wall.ts";
import type { Block, ReportedOption, ReportInput, ReportPage } from "./report.ts";

/** Picture and answer, in plain words. */
export function clientPage(input: ReportInput): ReportPage {
  const drawn = input.options.slice(0, 2);
  const thickest_m = Math.max(
    ...drawn.map((option) => option.shown.layers.reduce((sum, layer) => sum + layer.thickness_m, 0)),
  );
  const blocks: Block[] = [
    { kind: "walls", scale: scaleFor(thickest_m), walls: drawn.map((option) => drawnWall(option, input)) },
    { kind: "heading", text: "In return" },
    { kind: "list", ordered: false, items: inReturn(input, drawn[drawn.length - 1]!) },
  ];
  return {
    reader: "client",
    title: "For the client",
    question: questionOf(input),
    answer: answerOf(input, drawn),
    blocks,
  };
}

/** Height on paper that a section may take beside the rest of the client's sheet [m]. */
const tallestSection_m = 0.053;
const scales = [2, 3, 4, 5, 6, 8, 10, 15, 20, 30] as const;

/** The largest drawing scale, of those in use, at which a wall fits. */
export const scaleFor = (thickness_m: number): number =>
  scales.find((scale) => thickness_m / scale <= tallestSection_m) ?? scales[scales.length - 1]!;

/** The client's own question, else one made of what is compared. */
export function questionOf(input: ReportInput): string {
  if (input.question !== undefined && input.question.trim() !== "") return input.question;
  return input.options.length > 1
    ? `Which wall: ${input.options.map((option) => `${option.id}, ${option.name}`).join(", or ")}?`
    : `How does this wall get through the year: ${input.options[0]!.name}?`;
}

/** ANSI/ASHRAE 160-2009: 80 % over 30 days (SEEN). */
const dampMonth = 0.8;

function answerOf(input: ReportInput, drawn: readonly ReportedOption[]): string {
  const [a, b] = drawn;
  if (a === undefined) throw new RangeError("a report needs at least one option");
  const verdict = (option: ReportedOption): string => {
    const broken = option.paths.filter((path) => holdsAll(path.summary) === false);
    if (broken.length === 0) return `${option.id} stays sound.`;
    const where =
      broken.length === option.paths.length
        ? ""
        : ` at the ${broken.map((path) => path.case.pathName.toLowerCase()).join(" and the ")}`;
    return `${option.id} is too damp${where}.`;
  };
  if (b === undefined) return verdict(a);
  const dampest = (option: ReportedOption): string => `${Math.round(100 * option.summary.thirtyDayHumidity)} %`;
  const month = input.winter.month;
  const warmer = b.summary.faceTemperature_C[month]! - a.summary.faceTemperature_C[month]!;
  const step = sayAmount(amount("temperatureDifference", Math.abs(warmer)), input.units);
  const comparison =
    Math.abs(warmer) < 0.5
      ? `The sheathing is as warm in ${a.id} as in ${b.id}.`
      : `In ${monthName(month)} ${warmer > 0 ? b.id : a.id} keeps the wooden sheathing ${step} warmer.`;
  const [ofA, ofB] = [verdict(a), verdict(b)];
  const alike = ofA === verdict({ ...b, id: a.id }) && !/damp/.test(ofA);
  // Sound is not the same as dry: where a cold face stands above 80 % for a month the client hears of it.
  const damp = Math.max(a.summary.thirtyDayHumidity, b.summary.thirtyDayHumidity) > dampMonth;
  const dampness = damp
    ? ` In its dampest month the cold face stands at ${dampest(a)} humidity in ${a.id}, at ${dampest(b)} in ${b.id}: drier is safer.`
    : "";
  const both = alike ? `Both stay sound.${dampness}` : `${ofA} ${ofB}`;
  return `${comparison} ${both}`;
}

function inReturn(input: ReportInput, option: ReportedOption): string[] {
  const { answers, units } = input;
  const items: string[] = [];
  const row = answers.drying?.rows.find((each) => each.option === option.id);
  // Without a wetting test the ordinary year says it.
  const ordinary = option.summary.sheathingBudget;
  const share = row === undefined ? (ordinary === null ? null : shareInward(ordinary)) : row.inwardShare;
  if (share !== null && share >= 0.65)
    items.push(
      `Wall ${option.id} dries to the room: ${say([amount("share", share)], units)} of the water that leaves in spring leaves that way. Leave the room side open: paint, no plastic sheet, no vinyl paper.`,
    );
  else if (share !== null && share <= 0.35)
    items.push(`Wall ${option.id} dries to the weather. Keep the space behind the cladding open.`);
  else if (share !== null) items.push(`Wall ${option.id} dries both ways. Close neither side.`);
  const limit = answers.humidity;
  if (limit?.option === option.id && limit.upTo !== null)
    items.push(
      limit.beyondRange
        ? `The room may be as humid as ${say([amount("humidity", limit.upTo)], units)} in winter; more was not tried.`
        : `Keep the house at or below ${say([amount("humidity", limit.upTo)], units)} in the coldest month.`,
    );
  const worst = worstPath(option);
  if (option.paths.length > 1) items.push(`The wettest place is the ${worst.name.toLowerCase()}.`);
  for (const gap of option.breaks.slice(0, 3)) items.push(gap);
  if (items.length === 0)
    items.push("Nothing was asked beyond the run itself: drying, humidity and breaks were not looked at.");
  return items;
}
