const monthLengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
export const monthNames = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"] as const;

export interface Month {
  readonly name: string;
  /** Days from the start of the axis, the first one at or before 0. */
  readonly from: number;
  readonly to: number;
}

const firstDays = monthLengths.map((_, month) =>
  monthLengths.slice(0, month).reduce((sum: number, days) => sum + days, 0),
);

/** Day of the calendar year on the axis day. */
export const calendarDay = (startDay: number, day: number): number => (((startDay + day) % 365) + 365) % 365;

const monthOf = (yearDay: number): number => firstDays.findLastIndex((first) => first <= yearDay);

/** "14 Feb" */
export function dateWords(startDay: number, day: number): string {
  const yearDay = calendarDay(startDay, day);
  const month = monthOf(yearDay);
  return `${yearDay - firstDays[month]! + 1} ${monthNames[month]!}`;
}

/** The months along an axis of 365 days that begins on `startDay`. */
export function monthsFrom(startDay: number): readonly Month[] {
  const months: Month[] = [];
  let from = firstDays[monthOf(startDay)]! - startDay;
  for (let month = monthOf(startDay); from < 365; month = (month + 1) % 12) {
    const to = from + monthLengths[month]!;
    if (to > 0) months.push({ name: monthNames[month]!, from: Math.max(0, from), to: Math.min(365, to) });
    from = to;
  }
  return months;
}
