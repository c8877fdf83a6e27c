import type { Flag } from "./material.ts";

type Points = readonly (readonly [number, number])[];

/** Another curve that was published or is believed for the same material, to be run beside the catalogue's own. */
export interface VapourAlternative {
  readonly id: string;
  readonly side: "tight" | "open";
  /** Resistance factor over relative humidity, or permeance [kg/(m2 s Pa)] over mean relative humidity. */
  readonly resistanceFactor?: Points;
  readonly permeance_kgm2sPa?: Points;
  readonly flag: Flag;
  readonly source: string;
}

const ng = (points: Points): Points => points.map(([humidity, value]) => [humidity, value * 1e-12]);

/**
 * Where one curve cannot stand alone: strand board, kraft, painted gypsum board, latex paint and faced polyisocyanurate differ from
 * product to product by more than a verdict can bear.
 */
export const vapourAlternatives: readonly VapourAlternative[] = [
  {
    id: "osb_111",
    side: "tight",
    resistanceFactor: [
      [0.25, 450],
      [0.75, 200],
      [0.9, 80],
    ],
    flag: "MIXED",
    source: "German glossary entry on strand board, 350 to 450 (SEEN); shape over humidity ASSUMED",
  },
  {
    id: "osb_111",
    side: "open",
    resistanceFactor: [
      [0.25, 257],
      [0.75, 51],
      [0.9, 20],
    ],
    flag: "MIXED",
    source:
      "40 ng at 19 mm in published answers, 5 times more open wet in a North American data set, second-hand (SEEN); shape ASSUMED",
  },
  {
    id: "kraft_facing",
    side: "open",
    permeance_kgm2sPa: ng([
      [0.25, 17],
      [0.5, 200],
      [0.6, 570],
      [0.9, 900],
    ]),
    flag: "MIXED",
    source: "A research figure quoted second-hand has 10 perm at 60 % RH (SEEN); shape ASSUMED",
  },
  {
    id: "gypsum_board_latex",
    side: "open",
    permeance_kgm2sPa: ng([
      [0.25, 250],
      [0.75, 1000],
    ]),
    flag: "MIXED",
    source: "Painted board rising fourfold from dry to wet, second-hand (SEEN)",
  },
  {
    id: "paint_latex",
    side: "tight",
    permeance_kgm2sPa: ng([
      [0.25, 172],
      [0.75, 172],
    ]),
    flag: "MEMORY",
    source: "3 perm, tight end of what is measured on latex paint",
  },
  {
    id: "paint_latex",
    side: "open",
    permeance_kgm2sPa: ng([
      [0.25, 1144],
      [0.75, 2300],
    ]),
    flag: "MIXED",
    source: "20 to 40 perm, flat latex and painted board (SEEN, second-hand for the wet end)",
  },
  {
    id: "pir_glass",
    side: "open",
    permeance_kgm2sPa: ng([
      [0.25, 570],
      [0.75, 600],
    ]),
    flag: "SEEN-RANGE",
    source: "10 perm, open end of glass-mat and felt facers in published builder answers",
  },
];

/** The alternatives of one catalogue material; empty for most. */
export const alternativesOf = (id: string): readonly VapourAlternative[] =>
  vapourAlternatives.filter((one) => one.id === id);
