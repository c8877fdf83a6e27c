/** Days of 24 h, counted from the first hour, on which a course falls below freezing. */
export function frostDays(temperature_C: ArrayLike<number>): { readonly days: number; readonly coldestHour: number } {
  let days = 0;
  let coldestHour = 0;
  let coldDay = -1;
  for (let hour = 0; hour < temperature_C.length; hour += 1) {
    if (temperature_C[hour]! < temperature_C[coldestHour]!) coldestHour = hour;
    const day = Math.floor(hour / 24);
    if (temperature_C[hour]! < 0 && day !== coldDay) {
      coldDay = day;
      days += 1;
    }
  }
  return { days, coldestHour };
}
