import type { Finding } from "../assess/index.ts";
import type { Case } from "../model/index.ts";
import type { ProbeSeries, RunResult } from "../run/index.ts";
import { waterBudget, type WaterBudget } from "./budget.ts";
import { monthlyMeans, worstRunningMean } from "./calendar.ts";
import { condensingPlane, type CondensingPlane } from "./plane.ts";

/** Days from the start of a run until a wooden layer, as a whole, is at or below a moisture content. */
export interface DryingTime {
  readonly layer: string;
  readonly threshold_percent: number;
  /** First day at or below; null: not within the run. */
  readonly first_days: number | null;
  /** Day from which it stays there until the end of the run; null: above it at the end. */
  readonly lasting_days: number | null;
}

/** What is kept of one run, so that a long series of runs stays small. Plain data. */
export interface MemberSummary {
  readonly caseHash: string;
  readonly option: string;
  readonly path: string;
  readonly status: RunResult["status"];
  readonly failure: RunResult["failure"];
  readonly plane: CondensingPlane;
  /** Monthly means at the plane and of the wood, January first; of the judged year. */
  readonly faceTemperature_C: readonly number[];
  readonly faceHumidity: readonly number[];
  readonly woodMoisture_percent: readonly number[];
  readonly coldestMonth: { readonly month: number; readonly temperature_C: number };
  /** Wettest hour of the whole wooden layer and of its face at the plane; null without wood. */
  readonly peakMoisture_percent: number | null;
  readonly leastMoisture_percent: number | null;
  readonly peakFaceMoisture_percent: number | null;
  /** Largest 30-day mean at the plane, 0..1. */
  readonly thirtyDayHumidity: number;
  readonly sevenDayHumidity: number;
  readonly hoursAbove80: number;
  readonly hoursAbove95: number;
  /** Where water driven inward stops: largest 7-day mean at the inner face of the frame layer, and its hours above 95 %. */
  readonly liningSevenDayHumidity: number;
  readonly liningHoursAbove95: number;
  /** Largest mould index over all probes, from the findings; null where it is not judged. */
  readonly mouldIndex: number | null;
  readonly heatFromRoom_MJm2: number | null;
  /** Of the layers from the wood to the plane, and of the whole wall. */
  readonly sheathingBudget: WaterBudget | null;
  readonly wallBudget: WaterBudget | null;
  readonly dryingTimes: readonly DryingTime[];
  readonly findings: readonly Finding[];
  /** Mean water content of each layer at the end of the run [kg/m3]. */
  readonly endWater_kgm3: Readonly<Record<string, number>>;
  readonly waterClosure: number;
  readonly heatClosure: number;
  readonly seconds: number;
}

const thresholds_percent = [20, 16] as const;

/**
 * Small summary of a run.
 *
 * @param findings  what the assessment says of the same run
 */
export function summarise(aCase: Case, result: RunResult, findings: readonly Finding[]): MemberSummary {
  const plane = condensingPlane(aCase);
  const from = result.judgedFrom;
  const count = Math.max(0, Math.min(result.judgedHours, result.hours - from));
  const face = interfaceProbe(result, plane.layer, "inside");
  const wood =
    plane.wood === null
      ? undefined
      : result.probes.find((probe) => probe.kind === "layerMean" && probe.layer === plane.wood);
  const woodFace = plane.wood === null ? undefined : interfaceProbe(result, plane.wood, "inside");
  const lining = interfaceProbe(result, aCase.layers[plane.frame]!.id, "inside");
  const faceTemperature_C = monthlyMeans(face.T_C, from, count, result.startDay);
  const woodIndex = plane.wood === null ? plane.index : aCase.layers.findIndex((layer) => layer.id === plane.wood);
  return {
    caseHash: result.caseHash,
    option: result.option,
    path: result.path,
    status: result.status,
    failure: result.failure,
    plane,
    faceTemperature_C,
    faceHumidity: monthlyMeans(face.RH, from, count, result.startDay),
    woodMoisture_percent: wood === undefined ? [] : monthlyMeans(moisture_percent(wood), from, count, result.startDay),
    coldestMonth: coldest(faceTemperature_C),
    peakMoisture_percent: wood === undefined ? null : largest(moisture_percent(wood), from, count),
    leastMoisture_percent:
      wood === undefined
        ? null
        : -largest(
            moisture_percent(wood).map((value) => -value),
            from,
            count,
          ),
    peakFaceMoisture_percent:
      woodFace === undefined || woodFace.woodDensity_kgm3 === null
        ? null
        : largest(moisture_percent(woodFace), from, count),
    thirtyDayHumidity: worstRunningMean(face.RH, from, count, 720).mean,
    sevenDayHumidity: worstRunningMean(face.RH, from, count, 168).mean,
    hoursAbove80: hoursAbove(face.RH, from, count, 0.8),
    hoursAbove95: hoursAbove(face.RH, from, count, 0.95),
    liningSevenDayHumidity: worstRunningMean(lining.RH, from, count, 168).mean,
    liningHoursAbove95: hoursAbove(lining.RH, from, count, 0.95),
    mouldIndex: findings.reduce<number | null>(
      (worst, finding) => (finding.id === "mouldIndex" ? Math.max(worst ?? 0, finding.measured) : worst),
      null,
    ),
    heatFromRoom_MJm2:
      result.monthly === null ? null : result.monthly.heatFromRoom_MJm2.reduce((sum, value) => sum + value, 0),
    sheathingBudget: waterBudget(aCase, result, Math.min(woodIndex, plane.index), Math.max(woodIndex, plane.index)),
    wallBudget: waterBudget(aCase, result, 0, aCase.layers.length - 1),
    dryingTimes: result.probes
      .filter((probe) => probe.kind === "layerMean" && probe.woodDensity_kgm3 !== null)
      .flatMap((probe) => thresholds_percent.map((threshold) => dryingTime(probe, threshold, result.hours))),
    findings,
    endWater_kgm3: Object.fromEntries(
      result.probes
        .filter((probe) => probe.kind === "layerMean")
        .map((probe) => [probe.layer, probe.w_kgm3[result.hours - 1] ?? Number.NaN]),
    ),
    waterClosure: result.water.closure,
    heatClosure: result.heat.closure,
    seconds: result.log.seconds,
  };
}

function interfaceProbe(result: RunResult, layer: string, side: "outside" | "inside"): ProbeSeries {
  const probe = result.probes.find(
    (candidate) => candidate.kind === "interface" && candidate.layer === layer && candidate.side === side,
  );
  if (probe === undefined) throw new Error(`a run records every interface; none for layer "${layer}", ${side}`);
  return probe;
}

const moisture_percent = (probe: ProbeSeries): Float32Array =>
  probe.w_kgm3.map((water) => (100 * water) / (probe.woodDensity_kgm3 ?? Number.NaN));

function coldest(means: readonly number[]): { month: number; temperature_C: number } {
  let month = 0;
  for (let other = 1; other < 12; other += 1)
    if (!(means[other]! >= means[month]!)) month = Number.isNaN(means[other]!) ? month : other;
  return { month, temperature_C: means[month]! };
}

function largest(values: ArrayLike<number>, from: number, count: number): number {
  let most = -Infinity;
  for (let hour = from; hour < from + count; hour += 1) most = Math.max(most, values[hour]!);
  return most;
}

function hoursAbove(values: ArrayLike<number>, from: number, count: number, limit: number): number {
  let hours = 0;
  for (let hour = from; hour < from + count; hour += 1) if (values[hour]! > limit) hours += 1;
  return hours;
}

function dryingTime(probe: ProbeSeries, threshold_percent: number, hours: number): DryingTime {
  const limit = (threshold_percent / 100) * probe.woodDensity_kgm3!;
  let first: number | null = null;
  let lasting: number | null = null;
  for (let hour = 0; hour < hours; hour += 1) {
    const below = probe.w_kgm3[hour]! <= limit;
    if (below && first === null) first = (hour + 1) / 24;
    if (!below) lasting = null;
    else lasting ??= (hour + 1) / 24;
  }
  return { layer: probe.layer, threshold_percent, first_days: first, lasting_days: lasting };
}

/**
 * Findings that decide a wall: harm to wood, growth that is seen, water that gathers or stays. The others are shown and ask for a
 * look: the dew point by hand, the 30-day rule that ANSI/ASHRAE 160 replaced by the mould index in 2016 (SEEN), fasteners, the room's
 * face, and growth counted from a wet start.
 */
export const decidingFindings: readonly string[] = [
  "decay",
  "yearOnYear",
  "mouldIndex",
  "mouldIndexElsewhere",
  "woodMoisture",
  "woodMoistureElsewhere",
  "woodMoistureInnerFace",
  "condensate",
  "freezeThaw",
];

/** Findings that are held against a limit; those given for information only (`holds` is null) are not. */
export const limited = (summary: MemberSummary): readonly Finding[] =>
  summary.findings.filter((finding) => finding.limit !== null && finding.margin !== null && finding.holds !== null);

/** The findings of a set that are broken. */
export const broken = (summary: MemberSummary, ids: readonly string[] = decidingFindings): readonly Finding[] =>
  summary.findings.filter((finding) => finding.holds === false && ids.includes(finding.id));

/** True when no deciding finding is broken; false when one is; null for a run that did not finish. */
export function holdsAll(summary: MemberSummary): boolean | null {
  return summary.status === "finished" ? broken(summary).length === 0 : null;
}

/** Worst margin among findings of one kind (all probes), in its own unit; null when the kind does not occur. */
export function worstMargin(summary: MemberSummary, findingId: string): number | null {
  return limited(summary).reduce<number | null>(
    (worst, finding) => (finding.id === findingId ? Math.min(worst ?? Infinity, finding.margin!) : worst),
    null,
  );
}

/** Kinds of limited findings that occur in a set of summaries, in their order. */
export function findingKinds(summaries: Iterable<MemberSummary>): readonly string[] {
  const kinds = new Set<string>();
  for (const summary of summaries) for (const finding of limited(summary)) kinds.add(finding.id);
  return [...kinds];
}
