import type { CaseLayer } from "../../model/index.ts";
import type { Assessment, Draft } from "../assessment.ts";
import { dateOfDay, monthNames } from "../dates.ts";
import { dryingSplit } from "../drying-split.ts";
import { capitalised, inSentence } from "../wording.ts";

/**
 * The layers whose drying is told: the governing one; where the condensing plane lies further in (foam on the inside of the
 * board), all from the board to the fill that touches that plane, because the water stands between them.
 */
function group(a: Assessment): readonly CaseLayer[] {
  const { layers } = a.aCase;
  const { governing } = a;
  if (governing.condensing.id === governing.layer.id) return [governing.layer];
  const plane = layers.indexOf(governing.condensing);
  if (plane < governing.index) return [governing.layer];
  const fill = layers.findIndex((layer, index) => index > plane && layer.thickness_m > 0);
  return layers.slice(governing.index, (fill >= 0 ? fill : plane) + 1);
}

/** Which way the deciding layer dries, and what wets it. */
export function waterPathFindings(a: Assessment): Draft[] {
  const flows = a.result.monthly;
  if (!flows || a.dates.laboratory) return [];
  const layers = group(a);
  const firstMonth = dateOfDay(a.result.startDay).month;
  const split = dryingSplit(
    flows,
    layers.map((layer) => layer.id),
    firstMonth,
  );
  if (!split) return [];
  const subject =
    layers.length === 1
      ? `the ${inSentence(layers[0]!.name)}`
      : `what lies from the ${inSentence(layers[0]!.name)} to the ${inSentence(layers[layers.length - 1]!.name)}`;
  return [dryingDraft(a, split, subject), wettingDraft(a, split, subject)].filter(
    (draft): draft is Draft => draft !== null,
  );
}

const fifths = ["hardly any", "about a fifth", "two fifths", "three fifths", "four fifths", "nearly all"] as const;
const inFifths = (share: number): string => fifths[Math.min(5, Math.max(0, Math.round(share * 5)))]!;
/** A side that takes this share is the one to keep open. */
const mainSide = 0.7;
/** Less water than this a month of drying is noise [kg/m2]. */
const nextToNothing_kgm2 = 0.01;

type Split = NonNullable<ReturnType<typeof dryingSplit>>;

function dryingDraft(a: Assessment, split: Split, subject: string): Draft | null {
  const whole = split.dryingMonths.insideShare === null ? split.year : split.dryingMonths;
  if (whole.insideShare === null) return null;
  const total_kgm2 = whole.toInside_kgm2 + whole.toOutside_kgm2;
  if (total_kgm2 < nextToNothing_kgm2) return null;
  const inside = whole.insideShare;
  const main = inside >= 0.5 ? "to the room" : "to the weather";
  const keep =
    inside >= mainSide
      ? " Keep that side open."
      : inside <= 1 - mainSide
        ? " Keep the outside open."
        : " It dries both ways.";
  const leaves = (one: Split["quarters"][number]): number => one.leaving.toInside_kgm2 + one.leaving.toOutside_kgm2;
  const busiest = split.quarters.reduce((best, one) => (leaves(one) > leaves(best) ? one : best));
  const when = `${monthNames[busiest.firstMonth]} to ${monthNames[(busiest.firstMonth + 2) % 12]}`;
  return {
    id: "dryingSplit",
    probe: `${a.governing.layer.id}-mean`,
    statement: `While ${subject} dries, ${inFifths(Math.max(inside, 1 - inside))} of what leaves goes ${main}, most of it from ${when}; ${a.say.water(total_kgm2)} leaves in all.${keep}`,
    measured: inside * 100,
    unit: "% to the room",
    limit: null,
    margin: null,
    when,
    holds: null,
    source: "the run's own flows across both faces, by month; no published limit",
    sway: "moisture",
  };
}

function wettingDraft(a: Assessment, split: Split, subject: string): Draft | null {
  const { arriving } = split;
  const ways = [
    { words: "through the layers from the room", water: arriving.fromInside_kgm2 },
    { words: "from outside", water: arriving.fromOutside_kgm2 },
    ...Object.entries(arriving.byCause_kgm2).map(([cause, water]) => ({
      words: causeWords[cause] ?? `by ${cause}`,
      water,
    })),
  ]
    .filter((way) => way.water >= nextToNothing_kgm2)
    .sort((x, y) => y.water - x.water);
  const most = ways[0];
  if (!most) return null;
  const total_kgm2 = ways.reduce((sum, way) => sum + way.water, 0);
  const leak_kgm2 = arriving.byCause_kgm2["air leak"] ?? 0;
  const told = ways.slice(0, 3).map((way, index) => {
    const amount = index === 0 ? a.say.water(way.water) : a.say.waterAgain(way.water);
    return `${amount} ${way.words}`;
  });
  return {
    id: "wettingSplit",
    probe: `${a.governing.layer.id}-mean`,
    statement: `${capitalised(subject)} takes in ${told.join(", ")}.`,
    measured: (leak_kgm2 / total_kgm2) * 100,
    unit: "% with leaking air",
    limit: null,
    margin: null,
    when: "over the judged year, months of gain",
    holds: null,
    source: "the run's own flows and sources, by month; no published limit",
    sway: "moisture",
  };
}

const causeWords: Readonly<Record<string, string>> = {
  "air leak": "with leaking air",
  "rain leak": "with leaking rain",
  "cavity air": "from the ventilated space",
};
