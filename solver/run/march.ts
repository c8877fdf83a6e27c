import type { Ledger } from "./books.ts";
import { firstStep_s, meetJump } from "./load-jump.ts";
import type { Stepper } from "./stepper.ts";
import { accept, tryStep } from "./time-step.ts";

export interface MarchFailure {
  readonly time_s: number;
  readonly node: number;
  readonly cause: string;
}

export interface MarchCount {
  steps: number;
  rejected: number;
}

/** Shortest step that is tried [s]. */
const shortestStep_s = 1e-7;
const caution = 0.85;
const fastestGrowth = 4;
const strongestCut = 0.15;
/** A step spans at most this share of an interval of the loads: the error of one that spans it whole can hide from its own estimate. */
const longest = 0.5;

export interface March {
  /** Goes through interval k of the loads. Returns null, or why it could not. */
  through(k: number): MarchFailure | null;
}

/**
 * Steps through the intervals of the loads with local error control, never across their ends. A step whose error is too large, or
 * whose equations cannot be solved, is tried again shorter.
 */
export function march(
  s: Stepper,
  intervals: number,
  count: MarchCount,
  book: Ledger,
  onStep: (h: number) => void,
): March {
  let wanted = firstStep_s;
  return {
    through(k) {
      const start = s.cursor.start(k);
      const duration = s.cursor.duration(k);
      if (s.cursor.jumps(k)) {
        const meets = meetJump(s, book, k);
        if (meets === null) return { time_s: start, node: 0, cause: "a held face is outside of -83 to 117 degC" };
        wanted = Math.min(wanted, meets);
      }
      let tau = 0;
      while (tau < 1) {
        const left = (1 - tau) * duration;
        // What is left of the interval is shared out evenly, so that no sliver remains.
        let h = left / Math.max(1, Math.ceil(left / Math.min(wanted, longest * duration) - 1e-6));
        for (;;) {
          const end = h >= left * (1 - 1e-9) ? 1 : tau + h / duration;
          const last = k === intervals - 1 && end === 1;
          const error = tryStep(s, k, tau, end, h, last);
          if (error <= 1) {
            accept(s, h);
            onStep(h);
            count.steps++;
            tau = end;
            const growth = error > 0 ? caution * Math.pow(error, -1 / 3) : fastestGrowth;
            wanted = h * Math.min(Math.max(growth, strongestCut), fastestGrowth);
            break;
          }
          count.rejected++;
          const shrink = error < Infinity ? Math.max(caution * Math.pow(error, -1 / 3), strongestCut) : 0.25;
          h *= Math.min(shrink, 0.7);
          wanted = h;
          if (h < shortestStep_s) {
            return {
              time_s: start + tau * duration,
              node: Math.max(s.troubleNode, 0),
              cause: s.trouble === "" ? "the state changes too fast to follow" : s.trouble,
            };
          }
        }
      }
      return null;
    },
  };
}
