/** Dates of a run: a year has 365 days, day 0 is 1 January. */

export const monthNames = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;

const daysOfMonth = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
const firstDays: readonly number[] = daysOfMonth.map((_, month) =>
  daysOfMonth.slice(0, month).reduce((sum, days) => sum + days, 0),
);

/** Month (0..11) of a day of the year; days past 364 go on into the next year. */
export function monthOfDay(day: number): number {
  const inYear = ((Math.floor(day) % 365) + 365) % 365;
  let month = 11;
  while (month > 0 && firstDays[month]! > inYear) month -= 1;
  return month;
}

/** "21 January" for day 20. */
export function dateOfDay(day: number): string {
  const month = monthOfDay(day);
  const inYear = ((Math.floor(day) % 365) + 365) % 365;
  return `${inYear - firstDays[month]! + 1} ${monthNames[month]}`;
}

/** Day of the year of "10-01" (273). Valid for the 365 days of a year without a leap day; throws on anything else. */
export function dayOfDate(monthAndDay: string): number {
  const parts = /^(\d\d)-(\d\d)$/.exec(monthAndDay);
  const month = Number(parts?.[1]) - 1;
  const day = Number(parts?.[2]);
  const days = daysOfMonth[month];
  if (parts === null || days === undefined || day < 1 || day > days)
    throw new RangeError(`monthAndDay must be like "10-01", got "${monthAndDay}"`);
  return firstDays[month]! + day - 1;
}

/** "10-01" for day 273. */
export function monthAndDay(day: number): string {
  const month = monthOfDay(day);
  const inYear = ((Math.floor(day) % 365) + 365) % 365;
  return `${String(month + 1).padStart(2, "0")}-${String(inYear - firstDays[month]! + 1).padStart(2, "0")}`;
}

/** Means by calendar month, January first, of an hourly stretch that starts at `startDay`; NaN for a month without hours. */
export function monthlyMeans(values: ArrayLike<number>, from: number, count: number, startDay: number): number[] {
  const sums = new Array<number>(12).fill(0);
  const hours = new Array<number>(12).fill(0);
  for (let hour = 0; hour < count; hour += 1) {
    const month = monthOfDay(startDay + Math.floor((from + hour) / 24));
    sums[month]! += values[from + hour]!;
    hours[month]! += 1;
  }
  return sums.map((sum, month) => (hours[month]! > 0 ? sum / hours[month]! : Number.NaN));
}

/** Largest trailing mean over `window` hours within [from, from + count), with the hour it ends at; the window is cut to the stretch. */
export function worstRunningMean(
  values: ArrayLike<number>,
  from: number,
  count: number,
  window: number,
): { readonly mean: number; readonly endsAt: number } {
  const span = Math.min(window, count);
  if (span < 1) return { mean: Number.NaN, endsAt: from };
  let sum = 0;
  let worst = -Infinity;
  let endsAt = from;
  for (let hour = 0; hour < count; hour += 1) {
    sum += values[from + hour]!;
    if (hour >= span) sum -= values[from + hour - span]!;
    if (hour >= span - 1 && sum / span > worst) {
      worst = sum / span;
      endsAt = from + hour;
    }
  }
  return { mean: worst, endsAt };
}
