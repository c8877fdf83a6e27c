import { heatEntries, waterEntries } from "../physics/book-entries.ts";
import type { Book } from "./result.ts";
import type { StageFlows } from "./stepper.ts";
import { gamma } from "./time-step.ts";

/** The balance of a run as it goes: every entry's net gain, and what came in and went out gross. */
export interface Ledger {
  readonly water: Float64Array;
  readonly heat: Float64Array;
  readonly runOff: Float64Array;
  waterIn: number;
  waterOut: number;
  heatIn: number;
  heatOut: number;
  /** What the wall held at the start [kg/m2], [J/m2]. */
  waterAtStart: number;
  heatAtStart: number;
}

export function ledger(stored: Float64Array): Ledger {
  const [waterAtStart, heatAtStart] = totals(stored);
  return {
    water: new Float64Array(waterEntries.length),
    heat: new Float64Array(heatEntries.length),
    runOff: new Float64Array(3),
    waterIn: 0,
    waterOut: 0,
    heatIn: 0,
    heatOut: 0,
    waterAtStart,
    heatAtStart,
  };
}

/** Enters an accepted step of h seconds with the flows of its two stages. */
export function enter(book: Ledger, first: StageFlows, second: StageFlows, h: number): void {
  const a = (1 - gamma) * h;
  const b = gamma * h;
  for (let i = 0; i < book.water.length; i++) {
    const gained = a * first.water[i]! + b * second.water[i]!;
    book.water[i]! += gained;
    if (gained > 0) book.waterIn += gained;
    else book.waterOut -= gained;
  }
  for (let i = 0; i < book.heat.length; i++) {
    const gained = a * first.heat[i]! + b * second.heat[i]!;
    book.heat[i]! += gained;
    if (gained > 0) book.heatIn += gained;
    else book.heatOut -= gained;
  }
  for (let i = 0; i < 3; i++) book.runOff[i]! += a * first.runOff[i]! + b * second.runOff[i]!;
}

/** [water kg/m2, heat J/m2] in the whole wall, from stored amounts per node. */
export function totals(stored: Float64Array): [number, number] {
  let water = 0;
  let heat = 0;
  for (let i = 0; i < stored.length; i += 2) {
    heat += stored[i]!;
    water += stored[i + 1]!;
  }
  return [water, heat];
}

/** Closes the books against what the state at the end holds by its own properties. */
export function closeBooks(book: Ledger, storedByState: Float64Array): { water: Book; heat: Book } {
  const [waterAtEnd, heatAtEnd] = totals(storedByState);
  const [ran, ranInside, ranAtLeaks] = book.runOff;
  return {
    water: close(book.waterIn, book.waterOut, waterAtEnd - book.waterAtStart, {
      ...entries(waterEntries, book.water),
      "outside rain run off": ran!,
      "inside water run off": ranInside!,
      "rain leak run off": ranAtLeaks!,
    }),
    heat: close(book.heatIn, book.heatOut, heatAtEnd - book.heatAtStart, entries(heatEntries, book.heat)),
  };
}

function entries(names: readonly string[], values: Float64Array): Record<string, number> {
  const used: Record<string, number> = {};
  names.forEach((name, i) => {
    if (values[i] !== 0) used[name] = values[i]!;
  });
  return used;
}

function close(gained: number, lost: number, stored: number, byFaceAndSource: Record<string, number>): Book {
  const turnover = Math.max(gained, lost, Math.abs(stored));
  const gap = Math.abs(gained - lost - stored);
  return { in: gained, out: lost, stored, closure: turnover > 0 ? gap / turnover : 0, byFaceAndSource };
}
