import type { Case, CaseLayer } from "../model/index.ts";
import { dayOfDate } from "./calendar.ts";
import { layerOf, withLayer } from "./change-case.ts";
import { sumOver, type WaterBudget } from "./budget.ts";
import { amount, joined, phrase, type Phrase } from "./phrase.ts";
import type { Done, Member, Study } from "./study.ts";
import type { DryingTime, MemberSummary } from "./summary.ts";

/** What is put into the wall: an amount of water, or a moisture content of a wooden layer. */
export type Wetting = { readonly water_kgm2: number } | { readonly moistureContent_percent: number };

export interface DryingQuestion {
  /** One case an option, on the same loads. */
  readonly cases: readonly Case[];
  /** Layer that is wetted, per case (same order), or one id for all. */
  readonly layer: string | readonly string[];
  readonly wetting: Wetting;
  /** Month and day, like "10-01": the test starts wet on this date. */
  readonly date: string;
  /** How long it is followed [years], 1 by default. */
  readonly years?: number;
}

/** Ready-made wettings, each with what it stands for. Common practice, no source, but where one is named. */
export const wettings: readonly {
  readonly id: string;
  readonly label: string;
  readonly wetting: Wetting;
  readonly source: string;
}[] = [
  {
    id: "rainedOn",
    label: "Sheathing rained on before it was closed, 25 %",
    wetting: { moistureContent_percent: 25 },
    source: "common practice, no source",
  },
  {
    id: "windowLeakMonth",
    label: "A month of a leaking window, 1 kg/m² at once",
    wetting: { water_kgm2: 1 },
    source: "common practice, no source; one wet spot is not 1 kg on every square metre",
  },
  {
    id: "wetCellulose",
    label: "Damp-sprayed cellulose, 5 kg/m²",
    wetting: { water_kgm2: 5 },
    source: "common practice, no source",
  },
];

/** An option's answer. */
export interface DryingRow {
  readonly option: string;
  readonly optionName: string;
  readonly path: string;
  readonly layer: string;
  readonly layerName: string;
  readonly finished: boolean;
  /** To 20 % and to 16 % of the wooden layer that got wet (else of the wood nearest to it); empty without wood. */
  readonly times: readonly DryingTime[];
  /** Water of the wetted run by month: from the sheathing, and from the whole wall; from the test's first month. */
  readonly sheathing: WaterBudget | null;
  readonly wall: WaterBudget | null;
  /** The same two for the ordinary year. */
  readonly ordinarySheathing: WaterBudget | null;
  readonly ordinaryWall: WaterBudget | null;
  /** Share of the water leaving the sheathing from March to June of the ordinary year that leaves to the room; null where none leaves. */
  readonly inwardShare: number | null;
  readonly sentence: Phrase;
}

export interface DryingAnswer {
  readonly rows: readonly DryingRow[];
  /** Options from quickest to slowest to 20 %. */
  readonly order: readonly string[];
  /** Largest error of any budget that is shown. */
  readonly worstClosure: number;
  readonly lead: Phrase;
}

const spring = [2, 3, 4, 5] as const;

/** Which way does it dry? An ordinary year of each option, and a wetted one followed until dry. */
export function whichWayItDries(question: DryingQuestion): Study<DryingAnswer> {
  const layerOfCase = (index: number): string =>
    typeof question.layer === "string" ? question.layer : question.layer[index]!;
  dayOfDate(question.date);
  const members: Member[] = question.cases.flatMap((aCase, index) => [
    {
      key: `${index}:wet`,
      label: `${aCase.option}, wetted`,
      case: wetted(aCase, layerOfCase(index), question.wetting, question.date, question.years ?? 1),
    },
    { key: `${index}:ordinary`, label: `${aCase.option}, ordinary year`, case: aCase },
  ]);
  return {
    id: `drying:${question.cases.map((aCase) => `${aCase.option}/${aCase.path}`).join("+")}`,
    members,
    reduce: (done) => {
      const rows = question.cases.map((aCase, index) => rowOf(aCase, layerOfCase(index), done, index));
      const timed = rows.filter((row) => row.finished && row.times.length > 0);
      const order = [...timed].sort((a, b) => timeTo(a, 20) - timeTo(b, 20)).map((row) => row.option);
      const budgets = rows.flatMap((row) => [row.sheathing, row.wall, row.ordinarySheathing, row.ordinaryWall]);
      return {
        rows,
        order,
        worstClosure: Math.max(0, ...budgets.map((budget) => budget?.closure ?? 0)),
        lead: lead(timed),
      };
    },
  };
}

const timeTo = (row: DryingRow, threshold: number): number =>
  row.times.find((time) => time.threshold_percent === threshold)?.first_days ?? Infinity;

/**
 * The case started wet on a date: the layer holds what it would hold at the start, and the wetting on top; a moisture
 * content replaces what it holds. The other layers start as the run says.
 */
export function wetted(aCase: Case, layerId: string, wetting: Wetting, date: string, years: number): Case {
  const layer = layerOf(aCase, layerId);
  if (!(layer.thickness_m > 0)) throw new RangeError(`layerId must name a layer with a thickness, got "${layerId}"`);
  return {
    ...withLayer(aCase, layerId, (each) => ({ ...each, initial: { water_kgm3: wetContent_kgm3(layer, wetting) } })),
    run: { ...aCase.run, start: date, years, untilItRepeats: false },
  };
}

function wetContent_kgm3(layer: CaseLayer, wetting: Wetting): number {
  if ("water_kgm2" in wetting) {
    if (!(wetting.water_kgm2 >= 0)) throw new RangeError(`water_kgm2 must be >= 0, got ${wetting.water_kgm2}`);
    return startContent_kgm3(layer) + wetting.water_kgm2 / layer.thickness_m;
  }
  const density = layer.material.density_kgm3;
  if (density === undefined)
    throw new RangeError(`a moisture content needs a material with a density, got "${layer.material.id}"`);
  return (wetting.moistureContent_percent / 100) * density;
}

/** Water that the layer holds at the start of the run, from its sorption points; a layer without them holds next to none. */
function startContent_kgm3(layer: CaseLayer): number {
  if ("water_kgm3" in layer.initial) return layer.initial.water_kgm3;
  const humidity = layer.initial.relativeHumidity;
  const sorption = layer.material.sorption;
  if (sorption === undefined || !("relativeHumidity" in sorption))
    return sorption !== undefined && "slope_kgm3" in sorption ? sorption.slope_kgm3 * humidity : 0;
  const points: readonly (readonly [number, number])[] = [[0, 0], ...sorption.relativeHumidity];
  const upper = points.findIndex((point) => point[0] >= humidity);
  if (upper === -1) return points[points.length - 1]![1];
  if (upper === 0) return points[0]![1];
  const a = points[upper - 1]!;
  const b = points[upper]!;
  return a[1] + ((b[1] - a[1]) * (humidity - a[0])) / (b[0] - a[0]);
}

function rowOf(aCase: Case, layerId: string, done: Done, index: number): DryingRow {
  const wet = done.get(`${index}:wet`);
  const ordinary = done.get(`${index}:ordinary`);
  const finished = wet?.status === "finished";
  const times = wet === undefined ? [] : timesOf(wet, layerId);
  const inwardShare =
    ordinary === undefined || ordinary.sheathingBudget === null ? null : shareInward(ordinary.sheathingBudget);
  return {
    option: aCase.option,
    optionName: aCase.optionName,
    path: aCase.path,
    layer: layerId,
    layerName: layerOf(aCase, layerId).name,
    finished,
    times,
    sheathing: wet?.sheathingBudget ?? null,
    wall: wet?.wallBudget ?? null,
    ordinarySheathing: ordinary?.sheathingBudget ?? null,
    ordinaryWall: ordinary?.wallBudget ?? null,
    inwardShare,
    sentence: joined(timesSentence(finished, times), ...(inwardShare === null ? [] : [directionSentence(inwardShare)])),
  };
}

function timesOf(summary: MemberSummary, layerId: string): readonly DryingTime[] {
  const own = summary.dryingTimes.filter((time) => time.layer === layerId);
  return own.length > 0 ? own : summary.dryingTimes.filter((time) => time.layer === summary.plane.wood);
}

/** Share of what leaves a stretch from March to June that leaves inward; faces through which water comes in count nothing. */
export function shareInward(budget: WaterBudget): number | null {
  const inward = Math.max(0, sumOver(budget, budget.inward, spring));
  const outward = Math.max(0, sumOver(budget, budget.outward, spring));
  return inward + outward > 0 ? inward / (inward + outward) : null;
}

function timesSentence(finished: boolean, times: readonly DryingTime[]): Phrase {
  if (!finished) return phrase`Not followed to the end yet.`;
  const to = (threshold: number): DryingTime | undefined => times.find((time) => time.threshold_percent === threshold);
  const twenty = to(20);
  const sixteen = to(16);
  if (twenty === undefined || sixteen === undefined) return phrase`No wood near the wetting to judge by.`;
  if (twenty.first_days === null)
    return phrase`Still above ${amount("moisture", 20)} at the end of the test: it has no way out.`;
  const first = phrase`At ${amount("moisture", 20)} after ${amount("days", twenty.first_days)}`;
  return sixteen.first_days === null
    ? [...first, ...phrase`, not at ${amount("moisture", 16)} within the test.`]
    : [...first, ...phrase`, at ${amount("moisture", 16)} after ${amount("days", sixteen.first_days)}.`];
}

function directionSentence(share: number): Phrase {
  if (share >= 0.65)
    return phrase`${amount("share", share)} of the water that leaves from March to June leaves to the room. Keep that side open.`;
  if (share <= 0.35)
    return phrase`${amount("share", 1 - share)} of the water that leaves from March to June leaves to the weather. Keep that side open.`;
  return phrase`It dries both ways: ${amount("share", share)} to the room from March to June.`;
}

function lead(timed: readonly DryingRow[]): Phrase {
  if (timed.length === 0) return phrase`Not known yet: no wetted run has finished.`;
  const quickest = timed.reduce((best, row) => (timeTo(row, 20) < timeTo(best, 20) ? row : best));
  const slowest = timed.reduce((worst, row) => (timeTo(row, 20) > timeTo(worst, 20) ? row : worst));
  const say = (row: DryingRow): Phrase => {
    const days = timeTo(row, 20);
    return Number.isFinite(days)
      ? phrase`${row.option} is at ${amount("moisture", 20)} after ${amount("days", days)}`
      : phrase`${row.option} does not get there within the test`;
  };
  return timed.length === 1 ? [...say(quickest), "."] : [...say(quickest), "; ", ...say(slowest), "."];
}
