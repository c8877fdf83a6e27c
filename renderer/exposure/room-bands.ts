import type { ExposureSurvey } from "./survey.ts";

export const bandWidth_K = 5;

type Days = Pick<ExposureSurvey, "mean_C" | "roomHumidity">;

export interface Band {
  readonly from_C: number;
  readonly days: number;
  readonly mean: number;
}

/** Days sorted by their outdoor mean into bands of 5 K, coldest first. */
export function bandsOf({ mean_C, roomHumidity }: Days): readonly Band[] {
  const sums = new Map<number, { days: number; sum: number }>();
  mean_C.forEach((T, day) => {
    const from = Math.floor(T / bandWidth_K) * bandWidth_K;
    const band = sums.get(from) ?? { days: 0, sum: 0 };
    sums.set(from, { days: band.days + 1, sum: band.sum + roomHumidity[day]! });
  });
  return [...sums]
    .sort(([one], [other]) => one - other)
    .map(([from_C, { days, sum }]) => ({ from_C, days, mean: sum / days }));
}
