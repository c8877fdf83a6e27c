import { quantile, rankInputs } from "./ranking.ts";
import type { Done } from "./study.ts";
import { holdsAll, type MemberSummary } from "./summary.ts";
import type { Unknown } from "./unknowns.ts";

/** The sample's spread, and which inputs it follows. */
export interface Band {
  readonly runs: number;
  /** 10 %, 50 % and 90 % of the runs. */
  readonly peakMoisture_percent: readonly [number, number, number];
  readonly thirtyDayHumidity: readonly [number, number, number];
  /** By calendar month, January first: 10 % and 90 % of the wood's mean moisture content. */
  readonly woodMoisture_percent: readonly (readonly [number, number])[];
  /** Share of the runs in which every deciding finding holds. */
  readonly holdingShare: number;
  /** Inputs by weight on the peak moisture content, heaviest first; null when the sample is too small to say. */
  readonly ranking: {
    readonly explained: number;
    readonly inputs: readonly { readonly id: string; readonly label: string; readonly weight: number }[];
  } | null;
}

/** Band of the sample runs that have finished; null before there are two. */
export function bandOf(tried: readonly Unknown[], sample: readonly (readonly number[])[], done: Done): Band | null {
  const runs = sample.flatMap((row, index) => {
    const summary = done.get(`sample:${index}`);
    return summary?.status === "finished" ? [{ row, summary }] : [];
  });
  if (runs.length < 2) return null;
  const three = (of: (summary: MemberSummary) => number): [number, number, number] => {
    const values = runs.map(({ summary }) => of(summary));
    return [quantile(values, 0.1), quantile(values, 0.5), quantile(values, 0.9)];
  };
  const ranking = rankInputs(
    runs.map(({ row }) => row),
    runs.map(({ summary }) => summary.peakMoisture_percent ?? summary.thirtyDayHumidity),
  );
  return {
    runs: runs.length,
    peakMoisture_percent: three((summary) => summary.peakMoisture_percent ?? Number.NaN),
    thirtyDayHumidity: three((summary) => summary.thirtyDayHumidity),
    woodMoisture_percent: Array.from({ length: 12 }, (_, month): [number, number] => {
      const values = runs.flatMap(({ summary }) => summary.woodMoisture_percent[month] ?? []);
      return [quantile(values, 0.1), quantile(values, 0.9)];
    }),
    holdingShare: runs.filter(({ summary }) => holdsAll(summary) === true).length / runs.length,
    ranking:
      ranking === null
        ? null
        : {
            explained: ranking.explained,
            inputs: tried
              .map((unknown, index) => ({ id: unknown.id, label: unknown.label, weight: ranking.weights[index]! }))
              .sort((a, b) => Math.abs(b.weight) - Math.abs(a.weight)),
          },
  };
}
