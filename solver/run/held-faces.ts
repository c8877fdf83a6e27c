import { evaluate } from "../physics/balance.ts";
import { heatIndex, waterIndex } from "../physics/book-entries.ts";
import { insideOffset, load } from "../physics/load-cursor.ts";
import type { Ledger } from "./books.ts";
import type { Stepper } from "./stepper.ts";

/**
 * A held face takes its given state at once when that jumps, at the start or at a step of a table. What its node's storage takes or
 * gives in the jump is booked as having come through that face: no time scheme can follow a jump that takes no time.
 * The loads of the instant must stand in the cursor. Returns false if the state is out of range.
 */
export function jumpHeldFaces(s: Stepper, book: Ledger): boolean {
  const { wall, work, holding, x, cursor } = s;
  const faces = [
    {
      held: holding.outside,
      node: 0,
      offset: 0,
      water: waterIndex[holding.outside.inLiquid ? "outside rain taken up" : "outside vapour"],
      heat: heatIndex["outside air"],
    },
    {
      held: holding.inside,
      node: wall.nodes - 1,
      offset: insideOffset,
      water: waterIndex[holding.inside.inLiquid ? "inside water taken up" : "inside vapour"],
      heat: heatIndex["inside air"],
    },
  ];
  if (!faces.some(({ held }) => held.temperatureHeld || held.moistureHeld)) return true;
  work.x.set(x);
  if (evaluate(wall, work, cursor.values, holding, false) >= 0) return false;
  const before = faces.map(({ node }) => [work.stored[2 * node]!, work.stored[2 * node + 1]!] as const);
  for (const { held, node, offset } of faces) {
    if (held.temperatureHeld && wall.physics.heat) x[2 * node] = cursor.values[offset + load.temperature]!;
    if (held.moistureHeld && wall.physics.moisture) x[2 * node + 1] = cursor.values[offset + load.heldPotential]!;
  }
  work.x.set(x);
  if (evaluate(wall, work, cursor.values, holding, false) >= 0) return false;
  faces.forEach(({ node, water, heat }, i) => {
    const gainedHeat = work.stored[2 * node]! - before[i]![0];
    const gainedWater = work.stored[2 * node + 1]! - before[i]![1];
    s.stored[2 * node]! += gainedHeat;
    s.stored[2 * node + 1]! += gainedWater;
    book.water[water]! += gainedWater;
    book.heat[heat]! += gainedHeat;
    if (gainedWater > 0) book.waterIn += gainedWater;
    else book.waterOut -= gainedWater;
    if (gainedHeat > 0) book.heatIn += gainedHeat;
    else book.heatOut -= gainedHeat;
  });
  return true;
}
