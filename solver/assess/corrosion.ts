/**
 * Hours in which a metal surface counts as wet: 80 % or more above freezing.
 * Source: ISO 9223, time of wetness (MEMORY).
 */
export function wetHoursForMetal(temperature_C: ArrayLike<number>, relativeHumidity: ArrayLike<number>): number {
  let hours = 0;
  for (let hour = 0; hour < temperature_C.length; hour += 1) {
    if (temperature_C[hour]! > 0 && relativeHumidity[hour]! >= 0.8) hours += 1;
  }
  return hours;
}
