export const hoursIn30Days = 720;

export interface ThirtyDayHumidity {
  /** Highest 30-day mean of humidity while the 30-day mean temperature is in the band [0..1]; null: never in the band. */
  readonly worst: number | null;
  /** Last hour of those 30 days. */
  readonly worstEnd: number;
  /** Hours whose trailing 30 days are at or above the limit. */
  readonly hoursFailing: number;
  readonly firstFailing: number | null;
  readonly lastFailing: number | null;
}

/** Temperatures between which the rule speaks [degC]. Source: ANSI/ASHRAE 160-2009 (SEEN in an abstract of ASTM STP1599). */
export const growthBand_C = { from: 5, to: 40 } as const;

/**
 * The older surface rule: the mean humidity of any 30 days stays under 80 % while their mean temperature is 5 to 40 degC.
 * Trailing means over 720 h, none before hour 719, nothing wrapped round the year's end. Judged too strict in practice.
 *
 * @param band null leaves the temperature out, as for corrosion
 * @returns null when the course is shorter than 30 days
 * Source: ANSI/ASHRAE 160-2009 (SEEN).
 * Checked: tests/solver/assess/thirty-day-humidity.test.ts.
 */
export function thirtyDayHumidity(
  temperature_C: ArrayLike<number>,
  relativeHumidity: ArrayLike<number>,
  limit = 0.8,
  band: { readonly from: number; readonly to: number } | null = growthBand_C,
): ThirtyDayHumidity | null {
  if (temperature_C.length < hoursIn30Days) return null;
  let sumT = 0;
  let sumRH = 0;
  let worst: number | null = null;
  let worstEnd = hoursIn30Days - 1;
  let hoursFailing = 0;
  let firstFailing: number | null = null;
  let lastFailing: number | null = null;
  for (let hour = 0; hour < temperature_C.length; hour += 1) {
    sumT += temperature_C[hour]!;
    sumRH += relativeHumidity[hour]!;
    if (hour >= hoursIn30Days) {
      sumT -= temperature_C[hour - hoursIn30Days]!;
      sumRH -= relativeHumidity[hour - hoursIn30Days]!;
    }
    if (hour < hoursIn30Days - 1) continue;
    const meanT = sumT / hoursIn30Days;
    const meanRH = sumRH / hoursIn30Days;
    if (band && (meanT < band.from || meanT > band.to)) continue;
    if (worst === null || meanRH > worst) {
      worst = meanRH;
      worstEnd = hour;
    }
    if (meanRH >= limit) {
      hoursFailing += 1;
      firstFailing ??= hour;
      lastFailing = hour;
    }
  }
  return { worst, worstEnd, hoursFailing, firstFailing, lastFailing };
}
