import type { MemberSummary } from "../../../solver/index.ts";
import { limited } from "../../../solver/index.ts";
import { metric, temperatureStep } from "../../plots/quantities.ts";
import type { Units } from "../../state/index.ts";

/** How the figures of a kind of finding are named and drawn. `face` and `wood` are the places in the wall. */
interface FindingKind {
  /** Title of an axis. */
  readonly title: (face: string, wood: string) => string;
  /** In a row of a table. */
  readonly short: string;
  readonly unit: (units: Units) => string;
  readonly digits: number;
  readonly shown: (value: number, units: Units) => number;
}

const plain = (value: number): number => value;
const percent = (): string => "%";
const none = (): string => "";
const step = (value: number, units: Units): number => temperatureStep(value, units);
const degree = (units: Units): string => (metric(units) ? "K" : "°F");

const kinds: Readonly<Record<string, FindingKind>> = {
  woodMoisture: {
    title: (_, wood) => `Wettest hour of the ${wood}, moisture content %`,
    short: "Moisture of the wood",
    unit: percent,
    digits: 1,
    shown: plain,
  },
  woodMoistureElsewhere: {
    title: () => "Wettest hour of the other wood, moisture content %",
    short: "Moisture of other wood",
    unit: percent,
    digits: 1,
    shown: plain,
  },
  woodMoistureInnerFace: {
    title: (_, wood) => `Wettest hour of the ${wood}'s inner face, moisture content %`,
    short: "Moisture of the wood's inner face",
    unit: percent,
    digits: 1,
    shown: plain,
  },
  decay: {
    title: (_, wood) => `Decay of the ${wood}, share of its start`,
    short: "Decay",
    unit: none,
    digits: 2,
    shown: plain,
  },
  mouldIndex: { title: (face) => `Mould index at ${face}`, short: "Mould index", unit: none, digits: 1, shown: plain },
  mouldIndexFromStart: {
    title: () => "Mould index counted from the wet start",
    short: "Mould from a wet start",
    unit: none,
    digits: 1,
    shown: plain,
  },
  mouldIndexElsewhere: {
    title: () => "Mould index elsewhere in the wall",
    short: "Mould elsewhere",
    unit: none,
    digits: 1,
    shown: plain,
  },
  thirtyDayHumidity: {
    title: (face) => `Dampest 30 days at ${face}, % RH`,
    short: "Dampest 30 days, cold face",
    unit: percent,
    digits: 0,
    shown: plain,
  },
  thirtyDayHumidityElsewhere: {
    title: () => "Dampest 30 days elsewhere in the wall, % RH",
    short: "Dampest 30 days, elsewhere",
    unit: percent,
    digits: 0,
    shown: plain,
  },
  corrosion: {
    title: (face) => `Dampest 30 days of fasteners at ${face}, % RH`,
    short: "Fasteners",
    unit: percent,
    digits: 0,
    shown: plain,
  },
  dewPointMargin: {
    title: (face) => `Coldest month at ${face}, above the room's dew point`,
    short: "Dew point, coldest month",
    unit: degree,
    digits: 1,
    shown: step,
  },
  dewPointWorstDay: {
    title: (face) => `Worst day at ${face}, above the room's dew point`,
    short: "Dew point, worst day",
    unit: degree,
    digits: 1,
    shown: step,
  },
  condensate: {
    title: (face) => `Water that gathers at ${face}`,
    short: "Condensate",
    unit: () => "kg/m²",
    digits: 2,
    shown: plain,
  },
  yearOnYear: {
    title: () => "Water gained from year to year",
    short: "Gain from year to year",
    unit: () => "kg/m²",
    digits: 3,
    shown: plain,
  },
  roomFaceHumidity: {
    title: () => "Dampest month at the room's face, % RH",
    short: "Room's face, dampest month",
    unit: percent,
    digits: 0,
    shown: plain,
  },
  freezeThaw: {
    title: () => "Freezing while wet, cycles",
    short: "Freezing while wet",
    unit: none,
    digits: 0,
    shown: plain,
  },
  surfaceFactor: { title: () => "Surface factor", short: "Surface factor", unit: none, digits: 2, shown: plain },
};

export const everyKind: readonly string[] = Object.keys(kinds);

/** A kind of finding that has no words here yet goes by its name, so that nothing is left out. */
export const kindWords = (kind: string): FindingKind =>
  kinds[kind] ?? { title: () => kind, short: kind, unit: none, digits: 1, shown: plain };

/** The worst of one kind in a run: its value, its limit and whether it is kept; null where the run has none of it. */
export function worstOf(
  summary: MemberSummary,
  kind: string,
): { readonly measured: number; readonly limit: number; readonly margin: number; readonly holds: boolean } | null {
  const worst = limited(summary)
    .filter(({ id }) => id === kind)
    .reduce<ReturnType<typeof limited>[number] | null>(
      (least, finding) => (least === null || finding.margin! < least.margin! ? finding : least),
      null,
    );
  return worst === null
    ? null
    : { measured: worst.measured, limit: worst.limit!, margin: worst.margin!, holds: worst.holds === true };
}

/** A value of a kind of finding with its unit: "20 %", "1.4 °F". */
export function kindText(kind: string, value: number, units: Units): string {
  const { shown, digits, unit } = kindWords(kind);
  const text = shown(value, units).toFixed(digits).replace("-", "−").replace(/\.0+$/, "");
  const sign = unit(units);
  return sign === "" ? text : `${text} ${sign}`;
}
