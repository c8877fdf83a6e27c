import { sectionsOf, zoneOf, type Edition } from "../model/index.ts";
import { class3Row } from "../model/codes/retarder-tables.ts";
import { rsiPerR } from "../units.ts";
import type { CodeRow } from "./how-thick-beside.ts";

/**
 * The row that allows a Class III retarder with continuous insulation, for a zone like "6A" and a frame; null where the
 * edition has no such row (non-marine zone 4 in the IRC, warmer zones) or the zone is not one.
 */
export function codeRowOf(edition: Edition, zone: string, frame: "2x4" | "2x6"): CodeRow | null {
  const found = zoneOf(zone);
  const row = found === null ? null : class3Row(edition, found);
  if (row === null) return null;
  const table = sectionsOf(edition).class3;
  return {
    edition,
    row: `${table}, zone ${row.words}, over ${frame}`,
    least_m2KW: (frame === "2x4" ? row.over2x4 : row.over2x6) * rsiPerR,
    source: `${edition}, ${table}`,
  };
}
