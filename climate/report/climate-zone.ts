import { daysInMonth } from "../calendar.ts";

export interface ZoneInput {
  /** Heating degree-days base 65 degF (18.33 degC) and cooling degree-days base 50 degF (10 degC), from daily means [K d]. */
  readonly heating65F_Kd: number;
  readonly cooling10_Kd: number;
  readonly temperature_C: readonly number[];
  /** Monthly sums [mm]; null where not known. */
  readonly rain_mm: readonly number[] | null;
  readonly latitude_deg: number;
}

/**
 * Thermal zone 0 to 8. Source: International Residential Code 2021 and 2024, table N1101.7.2 (SEEN in adopted state texts):
 * zones 3 and 4 both end at CDD10 3500 and part at HDD 2000. The metric table prints 18 degC, but its limits are the Fahrenheit
 * ones (3600, 5400, 7200 ... at 65 degF) divided by 1.8, so degree-days are counted from 65 degF here.
 */
export function thermalZone(heating65F_Kd: number, cooling10_Kd: number): number {
  if (cooling10_Kd > 6000) return 0;
  if (cooling10_Kd > 5000) return 1;
  if (cooling10_Kd > 3500) return 2;
  if (heating65F_Kd <= 2000) return 3;
  if (heating65F_Kd <= 3000) return 4;
  if (heating65F_Kd <= 4000) return 5;
  if (heating65F_Kd <= 5000) return 6;
  return heating65F_Kd <= 7000 ? 7 : 8;
}

/**
 * Moisture letter: C marine, B dry, A humid. Source: IRC 2021 and 2024 N1101.7.2 (marine test and the three rain shares SEEN in adopted
 * texts; dry limits 20 (T + 14), 20 (T + 7), 20 T in mm from MEMORY, the middle one equal to the 2018 rule).
 */
export function moistureLetter(
  temperature_C: readonly number[],
  rain_mm: readonly number[],
  latitude_deg: number,
): "A" | "B" | "C" {
  const northern = latitude_deg >= 0;
  const isCold = (month: number): boolean => (month >= 9 || month <= 2) === northern;
  const coldRain = rain_mm.filter((_, month) => isCold(month));
  const otherRain = rain_mm.filter((_, month) => !isCold(month));
  const coldest = Math.min(...temperature_C);
  const drySummer = Math.max(...coldRain) >= 3 * Math.min(...otherRain);
  const mild = temperature_C.filter((mean) => mean > 10).length >= 4;
  if (coldest >= -3 && coldest <= 18 && Math.max(...temperature_C) < 22 && mild && drySummer) return "C";
  const total = rain_mm.reduce((sum, month) => sum + month, 0);
  const mean = temperature_C.reduce((sum, month, k) => sum + (month * daysInMonth[k]!) / 365, 0);
  const share = total > 0 ? otherRain.reduce((sum, month) => sum + month, 0) / total : 0.5;
  const limit = 20 * (mean + (share >= 0.7 ? 14 : share > 0.3 ? 7 : 0));
  return total < limit ? "B" : "A";
}

/**
 * Climate zone computed from a year: advice only, since the code assigns zones by county table. Zones 7 and 8 carry no letter;
 * without rain the letter is left out.
 */
export function computedClimateZone(input: ZoneInput): string {
  const zone = thermalZone(input.heating65F_Kd, input.cooling10_Kd);
  if (zone >= 7 || input.rain_mm === null) return String(zone);
  return `${zone}${moistureLetter(input.temperature_C, input.rain_mm, input.latitude_deg)}`;
}
