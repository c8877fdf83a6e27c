import type { Book, Finding, ProbeSeries, RunResult } from "../../../solver/index.ts";
import { moistureContent_percent, monthlyMeans, rangeOf } from "./judged-year.ts";

function probeJson(probe: ProbeSeries, result: RunResult): object {
  const moisture = moistureContent_percent(probe);
  const monthly = {
    T_C: monthlyMeans(probe.T_C, result),
    RH: monthlyMeans(probe.RH, result),
    MC_percent: moisture === null ? null : monthlyMeans(moisture, result),
  };
  return {
    id: probe.id,
    label: probe.label,
    layer: probe.layer,
    depth_m: probe.depth_m,
    kind: probe.kind,
    T_C: rangeOf(probe.T_C, result),
    RH: rangeOf(probe.RH, result),
    w_kgm3: rangeOf(probe.w_kgm3, result),
    MC_percent: moisture === null ? null : rangeOf(moisture, result),
    monthly: monthly.T_C === null ? null : monthly,
  };
}

const bookJson = (book: Book, unit: "kgm2" | "MJm2"): object => ({
  [`in_${unit}`]: book.in,
  [`out_${unit}`]: book.out,
  [`stored_${unit}`]: book.stored,
  closure: book.closure,
  byFaceAndSource: book.byFaceAndSource,
});

/** One run of the result document. Ranges and monthly means are those of the judged year. */
export function runJson(result: RunResult, findings: readonly Finding[]): object {
  return {
    option: result.option,
    path: result.path,
    status: result.status,
    failure: result.failure,
    caseHash: result.caseHash,
    hours: result.hours,
    startDay: result.startDay,
    judged: { from_h: result.judgedFrom, hours: result.judgedHours },
    probes: result.probes.map((probe) => probeJson(probe, result)),
    findings,
    books: { water: bookJson(result.water, "kgm2"), heat: bookJson(result.heat, "MJm2") },
    monthlyFlows: result.monthly,
    yearEndWater_kgm2: result.yearEndWater_kgm2,
    log: result.log,
  };
}

/** What every result document begins with. */
export const documentHead = (project: string, weather: object | null): object => ({
  format: "wallyear-result",
  formatVersion: 1,
  project,
  weather,
  conventions: {
    judged: "Ranges and monthly means are those of the last whole year of the run; monthly means begin with January.",
    units: "T in degC, RH from 0 to 1, w in kg/m3, MC in % of the dry mass, water in kg/m2, heat in MJ/m2.",
    probes: "Depths count from the outer face.",
  },
});

/** JSON has no infinities: they become null, as a value that does not exist. */
export const jsonText = (document: object): string => JSON.stringify(document, null, 2);
