/** Days of a 365-day year. Hour 0 of a run is midnight of its start day. */
export const monthLengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
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
export const hoursPerYear = 8760;

/** Day of the year (0..364) of "MM-DD"; 29 February is read as 28. */
export function dayOfYear(monthAndDay: string): number {
  const month = Number(monthAndDay.slice(0, 2));
  const day = Number(monthAndDay.slice(3, 5));
  const length = monthLengths[month - 1];
  if (length === undefined || !(day >= 1))
    throw new RangeError(`a date is month and day like "10-01", got "${monthAndDay}"`);
  let before = 0;
  for (let m = 0; m < month - 1; m++) before += monthLengths[m]!;
  return before + Math.min(day, length) - 1;
}

/** Month (0..11) and day of the month (1..31) of a day of the year; days past 364 count on into the next year. */
export function dateOfDay(day: number): { month: number; day: number } {
  let left = ((Math.floor(day) % 365) + 365) % 365;
  for (let month = 0; month < 12; month++) {
    if (left < monthLengths[month]!) return { month, day: left + 1 };
    left -= monthLengths[month]!;
  }
  throw new RangeError(`day must be a number, got ${day}`);
}

/** "15 February, 04:00" for an hour of the run. */
export function dateOfHour(startDay: number, hour: number): string {
  const { month, day } = dateOfDay(startDay + Math.floor(hour / 24));
  const clock = String(Math.floor(hour % 24)).padStart(2, "0");
  return `${day} ${monthNames[month]}, ${clock}:00`;
}

/** Ends of the twelve months of a year that starts on `startDay`, in hours from its start; the last is 8760. */
export function monthEnds(startDay: number): number[] {
  const { month } = dateOfDay(startDay);
  let hour = 0;
  return Array.from({ length: 12 }, (_, i) => {
    hour += 24 * monthLengths[(month + i) % 12]!;
    return hour;
  });
}
