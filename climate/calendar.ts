/** The calendar of a WeatherYear: 365 days of 24 hours from 1 January. */
export const daysInMonth = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
export const firstDayOfMonth = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334] as const;
export const monthNames = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"] as const;
export const hoursOfYear = 8760;

/** Month 0..11 of a day 0..364; days beyond count into the next year. */
export function monthOfDay(day: number): number {
  const d = ((Math.floor(day) % 365) + 365) % 365;
  let month = 11;
  while (firstDayOfMonth[month]! > d) month--;
  return month;
}

/** Month 0..11 of every hour of the year. */
export const monthOfHour: Uint8Array = Uint8Array.from({ length: hoursOfYear }, (_, hour) =>
  monthOfDay(Math.floor(hour / 24)),
);

/** "14 Mar 05:00": the end of hour `hour` (0..8759), as the files stamp it. */
export function stampOfHour(hour: number): string {
  const day = Math.floor(hour / 24) % 365;
  const month = monthOfDay(day);
  return `${day - firstDayOfMonth[month]! + 1} ${monthNames[month]} ${String((hour % 24) + 1).padStart(2, "0")}:00`;
}

/** Twelve means (or sums) of an hourly series of a whole year. */
export function monthlyMeans(hourly: ArrayLike<number>): number[] {
  return daysInMonth.map((days, month) => {
    let sum = 0;
    const from = firstDayOfMonth[month]! * 24;
    for (let k = 0; k < days * 24; k++) sum += hourly[from + k]!;
    return sum / (days * 24);
  });
}

/** Monthly values joined by straight lines from mid-month to mid-month; `hour` may be fractional. */
export function betweenMonths(monthly: readonly number[], hour: number): number {
  const day = (((hour / 24) % 365) + 365) % 365;
  const month = monthOfDay(day);
  const middle = firstDayOfMonth[month]! + daysInMonth[month]! / 2;
  const later = day >= middle;
  const other = later ? (month + 1) % 12 : (month + 11) % 12;
  const halfSpan = (daysInMonth[month]! + daysInMonth[other]!) / 2;
  const share = Math.abs(day - middle) / halfSpan;
  return monthly[month]! * (1 - share) + monthly[other]! * share;
}

/** Mean over the `width` hours that end with each hour; the year repeats. */
export function trailingMean(hourly: Float64Array, width: number): Float64Array {
  const n = hourly.length;
  const out = new Float64Array(n);
  let sum = 0;
  for (let k = n - width; k < n; k++) sum += hourly[(k + n) % n]!;
  for (let k = 0; k < n; k++) {
    sum += hourly[k]! - hourly[(k - width + n) % n]!;
    out[k] = sum / width;
  }
  return out;
}
