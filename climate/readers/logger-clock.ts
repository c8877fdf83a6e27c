import type { Issue } from "../issue.ts";
import { dateOfDays } from "./logger-time.ts";

/** "2024-03-10 02:00" of minutes since 1970. */
export function clockText(minutes: number): string {
  const days = Math.floor(minutes / 1440);
  const { year, month, day } = dateOfDays(days);
  const rest = Math.floor(minutes - days * 1440);
  const two = (n: number): string => String(n).padStart(2, "0");
  return `${year}-${two(month)}-${two(day)} ${two(Math.floor(rest / 60))}:${two(rest % 60)}`;
}

/** The usual step of a log [min]: the median of its forward steps. */
export function stepOf(minutes: ArrayLike<number>): number {
  const steps: number[] = [];
  for (let k = 1; k < minutes.length; k++) {
    const step = minutes[k]! - minutes[k - 1]!;
    if (step > 0) steps.push(step);
  }
  steps.sort((a, b) => a - b);
  return steps.length > 0 ? steps[Math.floor(steps.length / 2)]! : NaN;
}

/** Months in which clocks go forward or back, on either half of the Earth; always on a Sunday night. */
const forwardMonths = [3, 4, 9, 10];
const backMonths = [3, 4, 9, 10, 11];
/** Longest stretch of daylight-saving time, with room to spare [min]. */
const longestSummerTime = 250 * 1440;

/** 1970-01-01 was a Thursday. */
const onSundayNight = (minutes: number, months: readonly number[]): boolean => {
  const day = Math.floor(minutes / 1440);
  return (day + 4) % 7 === 0 && minutes - day * 1440 < 5 * 60 && months.includes(dateOfDays(day).month);
};

interface Jump {
  readonly at: number;
  readonly forward: boolean;
}

/**
 * Puts a log on daylight-saving clocks back to standard time, in place.
 *
 * Forward: one hour of stamps is skipped on a Sunday night of spring, and stamps repeat an hour within eight months (or the log ends).
 * Back: stamps repeat one hour on a Sunday night of autumn. A log that begins in summer time shows only the step back.
 */
export function undoDaylightSaving(minutes: Float64Array): Issue[] {
  const step = stepOf(minutes);
  // With steps above an hour a skipped or repeated hour does not show.
  if (!(step <= 60)) return [];
  const jumps = jumpsOf(minutes, step);
  if (jumps.length === 0) return [];
  let ahead = jumps[0]!.forward ? 0 : 60;
  let next = 0;
  const told: string[] = [];
  for (let k = 0; k < minutes.length; k++) {
    const jump = jumps[next];
    if (jump?.at === k) {
      told.push(`${clockText(minutes[k]!)} (${jump.forward ? "forward" : "back"})`);
      ahead = jump.forward ? 60 : 0;
      next++;
    }
    minutes[k]! -= ahead;
  }
  return [
    {
      path: "time",
      severity: "warning",
      message: `The clock changes between standard and daylight-saving time: ${told.slice(0, 6).join(", ")}. All stamps were put on standard time.`,
      remedy: "Check that the logger followed the clock; a logger on standard time has no such steps.",
    },
  ];
}

function jumpsOf(minutes: Float64Array, step: number): Jump[] {
  const found: Jump[] = [];
  for (let k = 1; k < minutes.length; k++) {
    const change = minutes[k]! - minutes[k - 1]!;
    if (Math.abs(change - (step - 60)) < 0.5 && change <= 0 && onSundayNight(minutes[k]!, backMonths))
      found.push({ at: k, forward: false });
    else if (Math.abs(change - (step + 60)) < 0.5 && onSundayNight(minutes[k]!, forwardMonths))
      found.push({ at: k, forward: true });
  }
  const end = minutes[minutes.length - 1]!;
  const kept: Jump[] = [];
  for (let j = 0; j < found.length; j++) {
    const jump = found[j]!;
    if (kept.length > 0 && kept[kept.length - 1]!.forward === jump.forward) continue;
    if (jump.forward) {
      const back = found.slice(j + 1).find((other) => !other.forward);
      const until = back ? minutes[back.at]! : end;
      if (until - minutes[jump.at]! > longestSummerTime) continue;
    }
    kept.push(jump);
  }
  return kept;
}
