/** Minutes since midnight of 1 January 1970 of a calendar date, without regard to time zones. Source: Gregorian day count. */
export function minutesOfDate(year: number, month: number, day: number, minuteOfDay: number): number {
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const yearOfEra = y - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return (era * 146_097 + dayOfEra - 719_468) * 1440 + minuteOfDay;
}

/** Year, month 1..12 and day of a day count since 1 January 1970. */
export function dateOfDays(days: number): { readonly year: number; readonly month: number; readonly day: number } {
  const z = days + 719_468;
  const era = Math.floor(z / 146_097);
  const dayOfEra = z - era * 146_097;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36_524) - Math.floor(dayOfEra / 146_096)) / 365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const mp = Math.floor((5 * dayOfYear + 2) / 153);
  const month = mp < 10 ? mp + 3 : mp - 9;
  return {
    year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0),
    month,
    day: dayOfYear - Math.floor((153 * mp + 2) / 5) + 1,
  };
}

export interface Stamp {
  /** Clock time as minutes since 1970. */
  readonly minutes: number;
  /** Offset from UTC in minutes where the stamp gives one. */
  readonly utcOffset: number | null;
  /** The date was written a/b/year: which of the two is the month is a guess. */
  readonly slashed: boolean;
}

const daysOf = (year: number, month: number): number =>
  month === 2
    ? year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0)
      ? 29
      : 28
    : [4, 6, 9, 11].includes(month)
      ? 30
      : 31;

const isoDate = /^(\d{4})[-/](\d{1,2})[-/](\d{1,2})/;
const slashedDate = /^(\d{1,2})\/(\d{1,2})\/(\d{4}|\d{2})(?!\d)/;
const dottedDate = /^(\d{1,2})\.(\d{1,2})\.(\d{4}|\d{2})(?!\d)/;
const clock = /^(\d{1,2}):(\d{2})(?::(\d{2})(?:[.,]\d+)?)?\s*([ap])?\.?m?\.?\s*(z|[+-]\d{2}:?\d{2})?$/i;

/**
 * A date and clock time: 2024-01-31 13:00, 2024-01-31T13:00:00Z, 1/31/2024 1:00 PM, 31.1.2024 13:00. Null for anything else.
 * @param dayFirst  reads slashed dates as day/month/year
 */
export function readStamp(text: string, dayFirst: boolean): Stamp | null {
  const t = text.trim();
  let date = isoDate.exec(t);
  let [year, month, day] = date ? [Number(date[1]), Number(date[2]), Number(date[3])] : [0, 0, 0];
  let slashed = false;
  if (!date) {
    date = slashedDate.exec(t) ?? dottedDate.exec(t);
    if (!date) return null;
    slashed = t.includes("/");
    const first = Number(date[1]);
    const second = Number(date[2]);
    [month, day] = slashed && !dayFirst ? [first, second] : [second, first];
    year = Number(date[3]) + (date[3]!.length === 2 ? 2000 : 0);
  }
  if (month < 1 || month > 12 || day < 1 || day > daysOf(year, month)) return null;
  const rest = t.slice(date[0].length).replace(/^[T,\s]+/, "");
  if (rest === "") return { minutes: minutesOfDate(year, month, day, 0), utcOffset: null, slashed };
  const time = clock.exec(rest);
  if (!time) return null;
  let hour = Number(time[1]);
  const minute = Number(time[2]) + Number(time[3] ?? 0) / 60;
  const half = time[4]?.toLowerCase();
  if (half) {
    if (hour < 1 || hour > 12) return null;
    hour = (hour % 12) + (half === "p" ? 12 : 0);
  }
  if (hour > 24 || minute >= 60 || (hour === 24 && minute > 0)) return null;
  return { minutes: minutesOfDate(year, month, day, hour * 60 + minute), utcOffset: offsetOf(time[5]), slashed };
}

function offsetOf(text: string | undefined): number | null {
  if (text === undefined) return null;
  if (text.toLowerCase() === "z") return 0;
  const sign = text.startsWith("-") ? -1 : 1;
  return sign * (Number(text.slice(1, 3)) * 60 + Number(text.slice(-2)));
}
