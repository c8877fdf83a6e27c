import { evaluate } from "../physics/balance.ts";
import type { Ledger } from "./books.ts";
import { jumpHeldFaces } from "./held-faces.ts";
import type { Stepper } from "./stepper.ts";

/** First step of a run, and after a held face has jumped [s]. */
export const firstStep_s = 2;

/** A first step after a jump would move no unknown by more than this, in units of the step's tolerance, if the new rates lasted. */
const firstMove = 12;

/**
 * Meets loads that jump at the start of interval k, as rain does when it begins: the rates take their new values, and the step is cut to what
 * they allow, which saves trying longer ones in vain. A held face has no such rates; it jumps itself.
 *
 * @returns longest step to begin with [s]; null where a held face is out of range
 */
export function meetJump(s: Stepper, book: Ledger, k: number): number | null {
  const { wall, work, cursor, holding, rate, weight } = s;
  cursor.read(k, 0);
  const { outside, inside } = holding;
  if (outside.temperatureHeld || outside.moistureHeld || inside.temperatureHeld || inside.moistureHeld) {
    s.smooth = false;
    return jumpHeldFaces(s, book) ? firstStep_s : null;
  }
  work.x.set(s.x);
  evaluate(wall, work, cursor.values, holding, false);
  let fastest = 0;
  for (let i = 0; i < 2 * wall.nodes; i += 2) {
    const byT = (Math.abs(work.rate[i]! - rate[i]!) / work.capacity[2 * i]!) * weight[i]!;
    const byTheta = (Math.abs(work.rate[i + 1]! - rate[i + 1]!) / work.capacity[2 * i + 3]!) * weight[i + 1]!;
    if (byT > fastest) fastest = byT;
    if (byTheta > fastest) fastest = byTheta;
  }
  rate.set(work.rate);
  s.smooth = true;
  return firstMove / fastest;
}
