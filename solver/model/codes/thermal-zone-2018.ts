/**
 * Thermal zone by the rules to 2018, where zones 3 and 4 part by cooling degree-days unless they are marine. The rules from 2021
 * stand in the climate room.
 *
 * @param heating18_Kd heating degree-days base 18 degC [K d]
 * @param cooling10_Kd cooling degree-days base 10 degC [K d]
 * Source: IRC 2018 Table N1101.7.2(2), adopted state text (SEEN).
 */
export function thermalZone2018(heating18_Kd: number, cooling10_Kd: number, marine: boolean): number {
  if (cooling10_Kd > 5000) return 1;
  if (cooling10_Kd > 3500) return 2;
  if (heating18_Kd > 7000) return 8;
  if (heating18_Kd > 5000) return 7;
  if (heating18_Kd > 4000) return 6;
  if (heating18_Kd > 3000) return 5;
  if (marine) return heating18_Kd <= 2000 ? 3 : 4;
  return cooling10_Kd > 2500 ? 3 : 4;
}
