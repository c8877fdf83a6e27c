/** Hours of a run as dates of a 365-day year; hour 0 begins at midnight of day `startDay` (0 is 1 January). */
const monthLengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
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

/** Month 0..11 and day 1..31 of a day of the year; days past the year's end count on into the next. */
export function dateOfDay(day: number): { readonly month: number; readonly dayOfMonth: number } {
  let left = ((Math.floor(day) % 365) + 365) % 365;
  let month = 0;
  while (left >= monthLengths[month]!) {
    left -= monthLengths[month]!;
    month += 1;
  }
  return { month, dayOfMonth: left + 1 };
}

/** Dates of the judged hours of a run; a laboratory run has hours instead. */
export interface Dates {
  /** "21 January"; in the laboratory "hour 412". */
  date(judgedHour: number): string;
  /** 0..11; null in the laboratory. */
  month(judgedHour: number): number | null;
  /** "March"; in the laboratory "hour 412". */
  monthName(judgedHour: number): string;
  readonly laboratory: boolean;
}

export function datesFrom(startDay: number, judgedFrom: number, laboratory: boolean): Dates {
  const dateOf = (hour: number): { readonly month: number; readonly dayOfMonth: number } =>
    dateOfDay(startDay + Math.floor((judgedFrom + hour) / 24));
  const inHours = (hour: number): string => `hour ${judgedFrom + hour + 1}`;
  return {
    laboratory,
    date: (hour) => {
      if (laboratory) return inHours(hour);
      const { month, dayOfMonth } = dateOf(hour);
      return `${dayOfMonth} ${monthNames[month]}`;
    },
    month: (hour) => (laboratory ? null : dateOf(hour).month),
    monthName: (hour) => (laboratory ? inHours(hour) : monthNames[dateOf(hour).month]!),
  };
}
