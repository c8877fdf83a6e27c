/** Dates of a run: a year has 365 days, day 0 is the first day shown. */
const lengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
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
];
const firstDays = lengths.reduce<number[]>((days, length) => [...days, days.at(-1)! + length], [0]);

export interface CalendarDay {
  /** 0 to 11. */
  readonly month: number;
  /** 1 to 31. */
  readonly date: number;
}

export function calendarDay(dayOfYear: number): CalendarDay {
  const day = ((Math.floor(dayOfYear) % 365) + 365) % 365;
  const month = firstDays.findLastIndex((first) => first <= day);
  return { month, date: day - firstDays[month]! + 1 };
}

/** "14 Feb" */
export function shortDate(dayOfYear: number): string {
  const { month, date } = calendarDay(dayOfYear);
  return `${date} ${monthNames[month]!.slice(0, 3)}`;
}

/** "14 February" */
export function longDate(dayOfYear: number): string {
  const { month, date } = calendarDay(dayOfYear);
  return `${date} ${monthNames[month]!}`;
}

export interface MonthSpan {
  /** 0 to 11. */
  readonly month: number;
  /** Days from the first day shown; `to` is the first day after. */
  readonly from: number;
  readonly to: number;
}

/** The months that `days` days from `startDay` (day of the year) touch, in order; the first and last may be cut. */
export function monthSpans(startDay: number, days: number): MonthSpan[] {
  const spans: MonthSpan[] = [];
  for (let from = 0; from < days;) {
    const { month, date } = calendarDay(startDay + from);
    const to = Math.min(days, from + lengths[month]! - date + 1);
    spans.push({ month, from, to });
    from = to;
  }
  return spans;
}

/** How days along a chart are named: by the calendar for a site, by number for a laboratory run. */
export interface TimeScale {
  readonly days: number;
  /** Day of the year of day 0; null in a laboratory. */
  readonly startDay: number | null;
}

export const dayName = (scale: TimeScale, day: number): string =>
  scale.startDay === null ? `day ${Math.floor(day) + 1}` : shortDate(scale.startDay + day);

export const dayNameLong = (scale: TimeScale, day: number): string =>
  scale.startDay === null ? `day ${Math.floor(day) + 1}` : longDate(scale.startDay + day);

/** "21 Jan – 20 Feb", or one date. */
export const spanName = (scale: TimeScale, from: number, to: number): string =>
  from === to ? dayName(scale, from) : `${dayName(scale, from)} – ${dayName(scale, to)}`;

/** Ticks along the foot of a chart: a label in the middle of each span, a stroke between spans. */
export function timeTicks(
  scale: TimeScale,
  letters: 1 | 3 = 3,
): { labels: { at: number; text: string }[]; strokes: number[] } {
  if (scale.startDay === null) {
    const step =
      [1, 2, 5, 10, 20, 30, 50, 100, 200, 365, 500, 1000].find((candidate) => scale.days / candidate <= 13) ?? 2000;
    const at = Array.from({ length: Math.floor(scale.days / step) + 1 }, (_, i) => i * step);
    return {
      labels: at.slice(0, -1).map((day) => ({ at: day + step / 2, text: `${day + 1}` })),
      strokes: at.slice(1, -1),
    };
  }
  const spans = monthSpans(scale.startDay, scale.days);
  return {
    labels: spans
      .filter((span) => span.to - span.from >= 12)
      .map((span) => ({ at: (span.from + span.to) / 2, text: monthNames[span.month]!.slice(0, letters) })),
    strokes: spans.slice(1).map((span) => span.from),
  };
}
