/**
 * Equilibrium moisture content of solid wood [% by mass].
 *
 * @param temperature_C about -10 to 60; @param relativeHumidity 0..1
 * Source: Wood Handbook, four-parameter sorption equation (Fahrenheit form SEEN secondary; this Celsius form MEMORY, within
 * 0.013 % of it). Panels sit lower.
 * Checked: tests/solver/assess/wood-moisture.test.ts, to the printed digits.
 */
export function woodEquilibrium_percent(temperature_C: number, relativeHumidity: number): number {
  const t = temperature_C;
  const weight = 349 + 1.29 * t + 0.0135 * t * t;
  const k = 0.805 + 0.000736 * t - 2.73e-6 * t * t;
  const k1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
  const k2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
  const kh = k * relativeHumidity;
  const dissolved = kh / (1 - kh);
  const bound = (k1 * kh + 2 * k1 * k2 * kh * kh) / (1 + k1 * kh + k1 * k2 * kh * kh);
  return (1800 / weight) * (dissolved + bound);
}

/** Lines of the trade [% by mass]: damp, the usual limit, about where decay fungi can start. */
export const woodLines_percent = { damp: 16, limit: 20, fibreSaturation: 28 } as const;

export interface WoodMoisture {
  readonly peak_percent: number;
  readonly hourOfPeak: number;
  readonly lowest_percent: number;
  readonly hourOfLowest: number;
  readonly hoursAbove16: number;
  readonly hoursAbove20: number;
  readonly hoursAbove28: number;
  /** First hour after the peak from which the course stays at or under 16 % to its end; null: it does not. */
  readonly backUnder16: number | null;
  /** Hours above 20 % while the wood is at 5 degC or warmer. */
  readonly warmHoursAbove20: number;
}

/** What an hourly course of moisture content [% by mass] says. A reading by pins above 25 to 30 % is indicative only (MEMORY). */
export function woodMoisture(moisture_percent: ArrayLike<number>, temperature_C: ArrayLike<number>): WoodMoisture {
  let hourOfPeak = 0;
  let hourOfLowest = 0;
  const above = { damp: 0, limit: 0, fibreSaturation: 0 };
  let warmHoursAbove20 = 0;
  for (let hour = 0; hour < moisture_percent.length; hour += 1) {
    const here = moisture_percent[hour]!;
    if (here > moisture_percent[hourOfPeak]!) hourOfPeak = hour;
    if (here < moisture_percent[hourOfLowest]!) hourOfLowest = hour;
    if (here > woodLines_percent.damp) above.damp += 1;
    if (here > woodLines_percent.limit) {
      above.limit += 1;
      if (temperature_C[hour]! >= 5) warmHoursAbove20 += 1;
    }
    if (here > woodLines_percent.fibreSaturation) above.fibreSaturation += 1;
  }
  let backUnder16: number | null = null;
  for (let hour = moisture_percent.length - 1; hour > hourOfPeak; hour -= 1) {
    if (moisture_percent[hour]! > woodLines_percent.damp) break;
    backUnder16 = hour;
  }
  return {
    peak_percent: moisture_percent[hourOfPeak] ?? NaN,
    hourOfPeak,
    lowest_percent: moisture_percent[hourOfLowest] ?? NaN,
    hourOfLowest,
    hoursAbove16: above.damp,
    hoursAbove20: above.limit,
    hoursAbove28: above.fibreSaturation,
    backUnder16,
    warmHoursAbove20,
  };
}
