import type { Case } from "../model/index.ts";
import type { RunResult } from "../run/index.ts";
import { assessmentOf, placeOf } from "./assessment.ts";
import type { Assessment } from "./assessment.ts";
import { monthNames } from "./dates.ts";
import { dewPointMargin } from "./dew-point-margin.ts";
import type { Finding } from "./finding.ts";
import { thirtyDayHumidity } from "./thirty-day-humidity.ts";
import { capitalised, inSentence } from "./wording.ts";
import type { Units } from "./wording.ts";

/** A run that has been judged. */
export interface Told {
  readonly aCase: Case;
  readonly result: RunResult;
  readonly findings: readonly Finding[];
}

const byId = (findings: readonly Finding[], id: string): Finding | undefined => findings.find((one) => one.id === id);

/** What breaks a wall first, the worst harm first. */
const harms = [
  "decay",
  "yearOnYear",
  "mouldIndex",
  "woodMoisture",
  "freezeThaw",
  "condensate",
  "woodMoistureElsewhere",
  "mouldIndexElsewhere",
  "mouldIndexFromStart",
  "roomFaceHumidity",
  "thirtyDayHumidity",
  "dewPointMargin",
] as const;
/** What asks for a look without deciding the wall. */
const seconds = ["thirtyDayHumidityElsewhere", "surfaceFactor", "corrosion", "woodMoistureInnerFace"] as const;

/**
 * The sentence that answers: how the deciding layer fares, with the number that decides and its date.
 * It opens the Year sheet; the findings prove it.
 */
export function leadSentence(
  aCase: Case,
  result: RunResult,
  findings: readonly Finding[],
  options: { readonly units?: Units } = {},
): string {
  const a = assessmentOf(aCase, result, options);
  const layer = inSentence(a.governing.layer.name);
  if (result.status === "failed") {
    const failure = result.failure;
    return failure
      ? `Not judged: the run cannot go on past ${failure.date}, in ${failure.layer}. ${failure.remedy}`
      : "Not judged: the run cannot go on.";
  }
  if (result.status === "stopped") {
    return `Not judged: the run was stopped after ${a.say.duration(result.hours)}. Run it on to its last year.`;
  }
  if (findings.length === 0) return "Not judged: the run holds too few hours.";

  const moisture = byId(findings, "woodMoisture");
  const open = seconds.filter((id) => byId(findings, id)?.holds === false).length;
  const look =
    open === 0 ? "" : open === 1 ? " One finding below asks for a look." : ` ${open} findings below ask for a look.`;
  const worst = harms.map((id) => byId(findings, id)).find((finding) => finding?.holds === false);
  if (worst) return harmSentence(a, layer, worst, findings);

  if (moisture) {
    const month = monthOf(moisture.when);
    return `The ${layer} stays dry: it peaks at ${a.say.moisture(moisture.measured)} in ${month}, ${a.say.points(moisture.margin ?? 0)} under the usual limit.${look}`;
  }
  const frost = byId(findings, "freezeThaw");
  const humidity = byId(findings, "thirtyDayHumidity");
  if (humidity && humidity.holds) {
    const tail = frost ? ", and frost never finds it full of water" : "";
    return `The ${layer} stays dry: its dampest 30 days average ${a.say.humidity(humidity.measured / 100)}, to ${lastDate(humidity.when)}${tail}.${look}`;
  }
  const mould = byId(findings, "mouldIndex");
  return mould
    ? `${mould.statement} Nothing else asks for a change.`
    : `Nothing in the ${layer} reaches a limit over the judged year.`;
}

/** A damp spell longer than this is no spell [h]. */
const dampMonths_h = 1440;

/** "14 March" to "March"; a laboratory's "hour 12" stays. */
const monthOf = (when: string): string => monthNames.find((name) => when.includes(name)) ?? when;
const lastDate = (when: string): string => when.split(" to ").at(-1)!;

function harmSentence(a: Assessment, layer: string, worst: Finding, findings: readonly Finding[]): string {
  const moisture = byId(findings, "woodMoisture");
  const peak = moisture ? `it peaks at ${a.say.moisture(moisture.measured)} in ${monthOf(moisture.when)}` : null;
  switch (worst.id) {
    case "decay":
      return `Rot can start in the ${layer} from ${worst.when}${peak ? `: ${peak}` : ""}.`;
    case "mouldIndex":
      return `The ${layer} grows mould that the eye sees, most of it by ${worst.when}${peak ? `; ${peak}` : ""}.`;
    case "woodMoisture": {
      const harmless = ["mouldIndex", "decay"].every((id) => byId(findings, id)?.holds === true);
      const calm = harmless ? ", though neither mould nor decay follows" : "";
      return `The ${layer} gets too wet: ${peak ?? ""}, ${a.say.points(worst.margin ?? 0)} over the limit${calm}.`;
    }
    case "thirtyDayHumidity": {
      const calm = moisture
        ? `; the ${inSentence(a.governing.layer.name)} as a whole peaks at ${a.say.moisture(moisture.measured)}`
        : "";
      const face = a.probes.find((probe) => probe.id === worst.probe) ?? null;
      const spell_h = face ? (thirtyDayHumidity(face.T_C, face.RH)?.hoursFailing ?? 0) : 0;
      const where = face ? placeOf(face) : `the ${layer}`;
      const worstDays = `averages ${a.say.humidity(worst.measured / 100)} over the 30 days to ${lastDate(worst.when)}`;
      return spell_h > dampMonths_h
        ? `${capitalised(where)} is damp for ${a.say.duration(spell_h)} of the year: it ${worstDays}${calm}.`
        : `${capitalised(where)} goes through a damp spell and recovers: it ${worstDays}${calm}.`;
    }
    case "dewPointMargin":
      return `Air that leaks out of the room can wet the ${layer} in ${worst.when}: its face averages ${a.say.kelvins(worst.measured)} below the room's dew point${peak ? `, though ${peak}` : ""}.`;
    default:
      return worst.statement;
  }
}

interface Compared {
  readonly label: string;
  readonly layer: string;
  readonly coldest: { readonly month: number; readonly mean_C: number } | null;
  readonly peak_percent: number | null;
  readonly damp: number | null;
  readonly mould: number | null;
}

function compared(told: Told, label: string, units: Units): Compared {
  const a = assessmentOf(told.aCase, told.result, { units });
  const plane = a.face(a.governing.condensing, "inside");
  const margin =
    plane && !a.dates.laboratory
      ? dewPointMargin(plane.T_C, new Float64Array(plane.T_C.length), (hour) => a.dates.month(hour) ?? 0)
      : null;
  return {
    label,
    layer: plane ? placeOf(plane) : `the ${inSentence(a.governing.layer.name)}`,
    coldest:
      margin && Number.isFinite(margin.coldestMonth_C)
        ? { month: margin.coldestMonth, mean_C: margin.coldestMonth_C }
        : null,
    peak_percent: byId(told.findings, "woodMoisture")?.measured ?? null,
    damp: byId(told.findings, "thirtyDayHumidity")?.measured ?? null,
    mould: byId(told.findings, "mouldIndex")?.measured ?? null,
  };
}

/** Differences smaller than this are within what the run can tell. */
const smallest = { kelvins: 0.5, points: 0.5, humidity: 1, mould: 0.5 };

/** Two options in one sentence: how cold the deciding plane gets, how wet the layer, and what grows on it where that differs. */
export function comparisonSentence(first: Told, second: Told, options: { readonly units?: Units } = {}): string {
  const units = options.units ?? "si";
  const sameOption = first.aCase.option === second.aCase.option;
  const label = (told: Told): string => (sameOption ? told.aCase.pathName : told.aCase.option);
  const a = compared(first, label(first), units);
  const b = compared(second, label(second), units);
  const say = assessmentOf(first.aCase, first.result, { units }).say;
  const parts: string[] = [];
  if (a.coldest && b.coldest && Math.abs(a.coldest.mean_C - b.coldest.mean_C) >= smallest.kelvins) {
    const [warm, cold] = a.coldest.mean_C > b.coldest.mean_C ? [a, b] : [b, a];
    const place = warm.layer === cold.layer ? warm.layer : "the plane that room air would wet first";
    parts.push(
      `in ${monthNames[cold.coldest!.month]} ${place} averages ${say.temperature(warm.coldest!.mean_C)} in ${warm.label}, ${say.temperature(cold.coldest!.mean_C)} in ${cold.label}`,
    );
  }
  if (a.peak_percent !== null && b.peak_percent !== null) {
    if (Math.abs(a.peak_percent - b.peak_percent) >= smallest.points) {
      const [dry, wet] = a.peak_percent < b.peak_percent ? [a, b] : [b, a];
      parts.push(
        `${dry.label} peaks at ${say.moisture(dry.peak_percent!)} moisture, ${wet.label} at ${say.moisture(wet.peak_percent!)}`,
      );
    }
  } else if (a.damp !== null && b.damp !== null && Math.abs(a.damp - b.damp) >= smallest.humidity) {
    const [dry, wet] = a.damp < b.damp ? [a, b] : [b, a];
    parts.push(
      `the dampest 30 days average ${say.humidity(dry.damp! / 100)} in ${dry.label}, ${say.humidity(wet.damp! / 100)} in ${wet.label}`,
    );
  }
  if (a.mould !== null && b.mould !== null && Math.abs(a.mould - b.mould) >= smallest.mould) {
    const [less, more] = a.mould < b.mould ? [a, b] : [b, a];
    if (more.mould! >= 1) {
      parts.push(
        `the mould index reaches ${less.mould!.toFixed(1)} in ${less.label}, ${more.mould!.toFixed(1)} in ${more.label}`,
      );
    }
  }
  if (parts.length === 0) return `${a.label} and ${b.label} fare alike, as closely as a run can tell.`;
  return `${capitalised(parts.join("; "))}.`;
}
