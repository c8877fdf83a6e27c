import type { Edition, Zone } from "./edition.ts";
import { isIBC, yearOf } from "./edition.ts";

/** Upper limits of the classes [US perm], dry cup (ASTM E96 procedure A). Source: IRC 2021 Table R702.7(1), IBC 2021 Table 1404.3(1) (SEEN in adopted texts). */
export const classLimits_perm = { I: 0.1, II: 1, III: 10 } as const;
export type RetarderClass = "I" | "II" | "III" | "none";

/** Class of a layer by its dry-cup permeance [US perm]. */
export function retarderClass(dryCup_perm: number): RetarderClass {
  if (dryCup_perm <= classLimits_perm.I) return "I";
  if (dryCup_perm <= classLimits_perm.II) return "II";
  return dryCup_perm <= classLimits_perm.III ? "III" : "none";
}

/** Wet-cup permeance from which a Class I or II retarder counts as responsive [US perm] (E96 procedure B). IRC 2024 definition, SEEN. */
export const responsiveWetCup_perm = 1;

export type Backing = "woodPanel" | "fibreboard" | "gypsum" | "other" | "none";

/** One row of the table under which a Class III retarder may stand inside. */
export interface Class3Row {
  readonly zones: readonly number[];
  /** What the row is called in the book. */
  readonly words: string;
  readonly ventedOver: readonly Backing[];
  /** Least continuous insulation, inch-pound R. */
  readonly over2x4: number;
  readonly over2x6: number;
}

const upTo7: readonly Class3Row[] = [
  { zones: [4], words: "Marine 4", ventedOver: ["woodPanel", "fibreboard", "gypsum"], over2x4: 2.5, over2x6: 3.75 },
  { zones: [5], words: "5", ventedOver: ["woodPanel", "fibreboard", "gypsum"], over2x4: 5, over2x6: 7.5 },
  { zones: [6], words: "6", ventedOver: ["fibreboard", "gypsum"], over2x4: 7.5, over2x6: 11.25 },
];

/** IRC 2015 and 2018: zones 7 and 8 share one row. Source: IRC 2018 Table R702.7.1, adopted state text (SEEN); 2015, IBC 2015 and IBC 2018 alike (MEMORY). */
const class3To2018: readonly Class3Row[] = [
  ...upTo7,
  { zones: [7, 8], words: "7 and 8", ventedOver: [], over2x4: 10, over2x6: 15 },
];
/** Source: IRC 2021 and 2024 Table R702.7(3), IBC 2021 and 2024 Table 1404.3(3), adopted texts (SEEN). */
const class3From2021: readonly Class3Row[] = [
  ...upTo7,
  { zones: [7], words: "7", ventedOver: [], over2x4: 10, over2x6: 15 },
  { zones: [8], words: "8", ventedOver: [], over2x4: 12.5, over2x6: 20 },
];

/** The row for a zone, or null where the edition asks nothing of Class III there. */
export function class3Row(edition: Edition, zone: Zone): Class3Row | null {
  const rows = yearOf(edition) >= 2021 ? class3From2021 : class3To2018;
  const row = rows.find((one) => one.zones.includes(zone.number));
  if (!row || zone.number !== 4) return row ?? null;
  if (zone.marine4) return row;
  // The IBC of 2021 and 2024 stretches the row to all of zone 4; the IRC keeps it to Marine 4.
  return isIBC(edition) && yearOf(edition) >= 2021 ? { ...row, words: "4" } : null;
}

export interface FoamRow {
  readonly zones: readonly number[];
  readonly words: string;
  readonly over2x4: number;
  readonly over2x6: number;
}
/** Class II (2024: I or II) inside with foam plastic outside. Source: IRC 2021 and 2024 Table R702.7(4), IBC Table 1404.3(4), adopted texts (SEEN). */
export const withFoamRows: readonly FoamRow[] = [
  { zones: [3], words: "3", over2x4: 2, over2x6: 2 },
  { zones: [4, 5, 6], words: "4, 5, 6", over2x4: 3, over2x6: 5 },
  { zones: [7], words: "7", over2x4: 5, over2x6: 7.5 },
  { zones: [8], words: "8", over2x4: 7.5, over2x6: 10 },
];

/** No retarder at all: least continuous insulation by zone. Source: IRC 2024 Table R702.7(5), IBC 2024 Table 1404.3(5), adopted texts (SEEN). */
export const noRetarderRows: Readonly<Record<number, number>> = { 4: 4.5, 5: 6.5, 6: 8.5, 7: 11.5, 8: 14 };
/** Everything inboard of the continuous insulation together, at most (same table). */
export const noRetarderInboard_R = 5;

/** Spray foam counts at this permeance or less, at its installed thickness [US perm] (2021 and 2024, SEEN). */
export const sprayFoamLimit_perm = 1.5;

/** May a retarder of this class stand inside a frame wall, before the footnotes? Sources: the permitted-class tables, adopted texts (SEEN); IBC 2018 as 2015 (MEMORY). */
export type Permission = "allowed" | "notPermitted" | "byTable" | "noRequirement";
export function permission(edition: Edition, zone: Zone, retarder: Exclude<RetarderClass, "none">): Permission {
  const cold = zone.marine4 || zone.number >= 5;
  const year = yearOf(edition);
  if (edition === "IRC 2015" || edition === "IRC 2018") {
    if (!cold) return "noRequirement";
    return retarder === "III" ? "byTable" : "allowed";
  }
  if (retarder === "III") {
    if (cold) return "byTable";
    return isIBC(edition) && year >= 2021 && zone.number === 4 ? "byTable" : "allowed";
  }
  if (zone.number <= 2) return "notPermitted";
  if (retarder === "I" && !cold) return "notPermitted";
  return "allowed";
}
