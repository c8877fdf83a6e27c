import {
  findingsOf,
  governingLayer,
  waterBudget,
  type Case,
  type CaseLayer,
  type Finding,
  type RunResult,
  type WaterBudget,
} from "../../solver/index.ts";
import { dailyMeans, hourly, monthlyMeans, timeScaleOf } from "../plots/series.ts";
import type { TimeScale } from "../plots/calendar.ts";

/** What the sheet reads of one option: its deciding layer's course over the year and its water. */
export interface Member {
  readonly id: string;
  readonly name: string;
  readonly case: Case;
  readonly result: RunResult;
  readonly time: TimeScale;
  readonly layer: CaseLayer;
  readonly findings: readonly Finding[];
  /** Daily means: % by mass of the whole layer (null where it is not wood), % RH and degC of its inner face. */
  readonly moisture: Float64Array | null;
  readonly humidity: Float64Array;
  readonly temperature: Float64Array;
  readonly budget: WaterBudget | null;
}

/** Null where the run holds no whole day at the deciding layer. */
export function memberOf(id: string, name: string, aCase: Case, result: RunResult, units: "ip" | "si"): Member | null {
  const { layer, index } = governingLayer(aCase);
  const face = result.probes.find((probe) => probe.id === `${layer.id}-inside`);
  const mean = result.probes.find((probe) => probe.id === `${layer.id}-mean`);
  if (!face) return null;
  const humidity = dailyMeans(hourly(result, face, "humidity"));
  if (humidity.length === 0) return null;
  return {
    id,
    name,
    case: aCase,
    result,
    time: timeScaleOf(result, aCase.exposure.kind === "lab"),
    layer,
    findings: findingsOf(aCase, result, { units }),
    moisture: mean && mean.woodDensity_kgm3 !== null ? dailyMeans(hourly(result, mean, "moisture")) : null,
    humidity,
    temperature: dailyMeans(hourly(result, face, "temperature")),
    budget: waterBudget(aCase, result, index, index),
  };
}

/** Mean of a calendar month (0..11) at the inner face; null where the year holds none of it. */
export function monthMean(member: Member, values: ArrayLike<number>, month: number): number | null {
  if (member.time.startDay === null) return null;
  return monthlyMeans(values, member.time.startDay).find((entry) => entry.month === month)?.mean ?? null;
}
