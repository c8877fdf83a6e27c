import { ratedResistance_m2KW, type Case } from "../model/index.ts";
import { sumOver } from "./budget.ts";
import { monthNames } from "./calendar.ts";
import { shareInward } from "./drying.ts";
import { amount, phrase, type Phrase } from "./phrase.ts";
import type { Done, Study } from "./study.ts";
import { holdsAll, type MemberSummary } from "./summary.ts";

/** An option with all its paths, and what does not need a run. */
export interface OptionToCompare {
  readonly id: string;
  readonly name: string;
  readonly cases: readonly Case[];
  /** Whole-wall transmittance by the method chosen elsewhere [W/(m2 K)]; null: not worked out. */
  readonly wholeWallU_Wm2K: number | null;
  /** The user's own figures. */
  readonly price_perM2: number | null;
  readonly carbon_kgCO2ePerM2: number | null;
}

export interface SideBySideQuestion {
  /** Two to eight, on the same loads. */
  readonly options: readonly OptionToCompare[];
  /** The option that the others are compared with; by default the first. */
  readonly against?: string;
  /** Path compared month by month, by id; by default the first stud bay that all have, else each option's first path. */
  readonly path?: string;
}

/** One line of the table; differences are against the chosen option, null where a value is missing. */
export interface ComparedRow {
  readonly id: string;
  readonly label: string;
  readonly unit: string;
  readonly values: readonly (number | null)[];
  readonly differences: readonly (number | null)[];
}

export interface ComparedOption {
  readonly id: string;
  readonly name: string;
  /** Summary of the compared path; null until it has run. */
  readonly shown: MemberSummary | null;
  /** Path with the wettest wood among those that have run: the worst path governs. */
  readonly worstPath: string | null;
  readonly holds: boolean | null;
  readonly summaries: readonly MemberSummary[];
}

export interface SideBySideAnswer {
  readonly options: readonly ComparedOption[];
  readonly against: string;
  readonly rows: readonly ComparedRow[];
  /** Monthly figures, January first, by option and as difference against the chosen one. */
  readonly monthly: readonly MonthlyComparison[];
  readonly missing: number;
  readonly lead: Phrase;
}

export interface MonthlyComparison {
  readonly id: "faceTemperature" | "faceHumidity" | "woodMoisture" | "leavingInward" | "leavingOutward";
  readonly label: string;
  readonly unit: string;
  readonly values: readonly (readonly number[] | null)[];
  readonly differences: readonly (readonly number[] | null)[];
}

/** Two to eight ways to build the wall on one axis. */
export function sideBySide(question: SideBySideQuestion): Study<SideBySideAnswer> {
  const { options } = question;
  if (options.length < 2 || options.length > 8) throw new RangeError(`options must be 2 to 8, got ${options.length}`);
  const against = question.against ?? options[0]!.id;
  const reference = options.findIndex((option) => option.id === against);
  if (reference === -1)
    throw new RangeError(`against must be one of ${options.map((option) => option.id).join(", ")}, got "${against}"`);
  const shownPath = (option: OptionToCompare): Case =>
    option.cases.find((each) => each.path === question.path) ??
    option.cases.find((each) => each.pathKind === "studBay") ??
    option.cases[0]!;
  const keyOf = (option: OptionToCompare, aCase: Case): string => `${option.id}/${aCase.path}`;
  // The compared paths first, so that the picture fills before the table's last rows.
  const members = [
    ...options.map((option) => [option, shownPath(option)] as const),
    ...options.flatMap((option) =>
      option.cases.filter((each) => each !== shownPath(option)).map((each) => [option, each] as const),
    ),
  ].map(([option, each]) => ({ key: keyOf(option, each), label: `${option.id}, ${each.pathName}`, case: each }));
  return {
    id: `side-by-side:${options.map((option) => option.id).join("+")}`,
    members,
    reduce: (done) => {
      const compared = options.map((option) => comparedOption(option, done, keyOf(option, shownPath(option)), keyOf));
      const monthly = monthlyRows(compared, reference);
      return {
        options: compared,
        against,
        rows: tableRows(options.map(shownPath), options, compared, reference),
        monthly,
        missing: members.filter((member) => done.get(member.key)?.status !== "finished").length,
        lead: lead(compared, reference),
      };
    },
  };
}

function comparedOption(
  option: OptionToCompare,
  done: Done,
  shownKey: string,
  keyOf: (option: OptionToCompare, aCase: Case) => string,
): ComparedOption {
  const summaries = option.cases
    .flatMap((each) => done.get(keyOf(option, each)) ?? [])
    .filter((summary) => summary.status === "finished");
  const shown = done.get(shownKey);
  const wettest = summaries.reduce<MemberSummary | null>(
    (worst, each) =>
      worst === null || (each.peakMoisture_percent ?? 0) > (worst.peakMoisture_percent ?? 0) ? each : worst,
    null,
  );
  const verdicts = summaries.map(holdsAll);
  return {
    id: option.id,
    name: option.name,
    shown: shown?.status === "finished" ? shown : null,
    worstPath: wettest?.path ?? null,
    holds: verdicts.includes(false) ? false : verdicts.length === option.cases.length ? true : null,
    summaries,
  };
}

function tableRows(
  cases: readonly Case[],
  options: readonly OptionToCompare[],
  compared: readonly ComparedOption[],
  reference: number,
): ComparedRow[] {
  const row = (id: string, label: string, unit: string, values: readonly (number | null)[]): ComparedRow => {
    const from = values[reference] ?? null;
    return {
      id,
      label,
      unit,
      values,
      differences: values.map((value) => (value === null || from === null ? null : value - from)),
    };
  };
  const ofRun = (of: (summary: MemberSummary) => number | null): (number | null)[] =>
    compared.map(({ shown }) => (shown === null ? null : of(shown)));
  const winter = (of: (summary: MemberSummary) => readonly number[], month: number) =>
    ofRun((summary) => of(summary)[month] ?? null);
  const rows = [
    row(
      "thickness",
      "Thickness",
      "m",
      cases.map((each) => each.layers.reduce((sum, layer) => sum + layer.thickness_m, 0)),
    ),
    row(
      "ratedResistance",
      "Rated resistance of the compared path",
      "m² K/W",
      cases.map((each) =>
        each.layers.reduce((sum, layer) => sum + ratedResistance_m2KW(layer.material, layer.thickness_m), 0),
      ),
    ),
    row(
      "wholeWallU",
      "Whole wall U",
      "W/(m² K)",
      options.map((option) => option.wholeWallU_Wm2K),
    ),
    row(
      "faceTemperatureJanuary",
      "Inner face of the sheathing in January",
      "°C",
      winter((summary) => summary.faceTemperature_C, 0),
    ),
    row(
      "peakMoisture",
      "Wettest hour of the sheathing",
      "%",
      ofRun((summary) => summary.peakMoisture_percent),
    ),
    row(
      "thirtyDayHumidity",
      "Dampest 30 days at its inner face",
      "%",
      ofRun((summary) => summary.thirtyDayHumidity * 100),
    ),
    row(
      "hoursAbove80",
      "Hours above 80 % there",
      "h",
      ofRun((summary) => summary.hoursAbove80),
    ),
    row(
      "mouldIndex",
      "Mould index, largest",
      "",
      ofRun((summary) => summary.mouldIndex),
    ),
    row(
      "inwardShare",
      "Water leaving inward, March to June",
      "%",
      ofRun((summary) => (summary.sheathingBudget === null ? null : percent(shareInward(summary.sheathingBudget)))),
    ),
    row(
      "heatFromRoom",
      "Heat lost through the compared path in a year",
      "MJ/m²",
      ofRun((summary) => summary.heatFromRoom_MJm2),
    ),
    row(
      "price",
      "Price",
      "per m²",
      options.map((option) => option.price_perM2),
    ),
    row(
      "carbon",
      "Embodied carbon",
      "kg CO₂e/m²",
      options.map((option) => option.carbon_kgCO2ePerM2),
    ),
  ];
  return rows.filter((each) => each.values.some((value) => value !== null));
}

const percent = (share: number | null): number | null => (share === null ? null : share * 100);

function monthlyRows(compared: readonly ComparedOption[], reference: number): MonthlyComparison[] {
  const row = (
    id: MonthlyComparison["id"],
    label: string,
    unit: string,
    of: (summary: MemberSummary) => readonly number[] | null,
  ): MonthlyComparison => {
    const values = compared.map(({ shown }) => {
      const twelve = shown === null ? null : of(shown);
      return twelve === null || twelve.length === 0 ? null : twelve;
    });
    const from = values[reference] ?? null;
    return {
      id,
      label,
      unit,
      values,
      differences: values.map((twelve) =>
        twelve === null || from === null ? null : twelve.map((value, month) => value - from[month]!),
      ),
    };
  };
  const byCalendar = (summary: MemberSummary, side: "inward" | "outward"): readonly number[] | null => {
    const budget = summary.sheathingBudget;
    return budget === null ? null : monthNames.map((_, month) => sumOver(budget, budget[side], [month]));
  };
  return [
    row("faceTemperature", "Inner face of the sheathing", "°C", (summary) => summary.faceTemperature_C),
    row("faceHumidity", "Humidity at its inner face", "", (summary) => summary.faceHumidity),
    row("woodMoisture", "Moisture content of the sheathing", "%", (summary) => summary.woodMoisture_percent),
    row("leavingInward", "Water leaving inward", "kg/m²", (summary) => byCalendar(summary, "inward")),
    row("leavingOutward", "Water leaving outward", "kg/m²", (summary) => byCalendar(summary, "outward")),
  ];
}

function lead(compared: readonly ComparedOption[], reference: number): Phrase {
  const from = compared[reference]!;
  const other = compared.find((option, index) => index !== reference && option.shown !== null);
  if (from.shown === null || other?.shown == null) return phrase`Not known yet: fewer than two options have been run.`;
  const january = 0;
  const warmer = other.shown.faceTemperature_C[january]! - from.shown.faceTemperature_C[january]!;
  const temperature = phrase`In January the sheathing's inner face is at ${amount("temperature", from.shown.faceTemperature_C[january]!)} in ${from.id} and ${amount("temperature", other.shown.faceTemperature_C[january]!)} in ${other.id}`;
  if (from.shown.peakMoisture_percent === null || other.shown.peakMoisture_percent === null)
    return [...temperature, warmer >= 0 ? ", warmer." : ", colder."];
  return [
    ...temperature,
    ...phrase`; the wood peaks at ${amount("moisture", from.shown.peakMoisture_percent)} and ${amount("moisture", other.shown.peakMoisture_percent)}.`,
  ];
}
