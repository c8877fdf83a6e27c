import type { CatalogueRow } from "../catalogue-row.ts";

/** Paints and wall coverings. Units, flags and reading rules: catalogue-row.ts. */
export const coatings: readonly CatalogueRow[] = [
  {
    id: "paint_latex",
    name: "Latex paint system, primer + two finish coats",
    layer: "coating",
    stock_mm: [0.1],
    permeance_ng: { meanRH: [0.25, 0.5, 0.75], permeance: [285, 403, 570], range: "170-2300", flag: "MIXED" },
    confidence: "B",
    sources: ["paintHelp", "paintAnswers", "openHvacTables", "builderAnswers", "builderThreads", "danish178"],
    note: "SEEN: semigloss latex 4.98 perm, flat latex 27 perm (trade paint page); primer-sealer 6.3, vinyl-acrylic primer 8.6 perm (published Q&A quoting handbook table); 285-860 ng two coats (open HVAC page). Dry point = the 4.98 perm value. The doubling from 25 to 75% mean RH is SEEN only second-hand (discussion of a research figure); mid point COMPUTED (geometric mean). SEEN: two coats of latex on board about 5 perm (second page, agrees). Upper range widened: the painted-board figures quoted second-hand reach 17 to 40 perm wet. Danish direction of 1993 SEEN: emulsion paint 2.5e9 m2 s Pa/kg = 400 ng, the mid point here; silicate paint 1000, whitewash 2000 ng.",
  },
  {
    id: "paint_vr_primer",
    name: "Vapour-retarder primer/paint",
    layer: "coating",
    stock_mm: [0.08],
    permeance_ng: { meanRH: [0.25, 0.75], permeance: [37, 57], range: "23-57", flag: "MIXED" },
    confidence: "B",
    sources: ["paintAnswers", "builderAnswers"],
    note: "SEEN 0.4-0.9 perm. Second point is an allowance, MEMORY. SEEN again on a second page: 0.5-0.9 perm.",
  },
  {
    id: "paint_oil",
    name: "Oil/alkyd enamel, two to three coats",
    layer: "coating",
    stock_mm: [0.1],
    permeance_ng: { meanRH: [0.25, 0.75], permeance: [57, 85], range: "17-170", flag: "MIXED" },
    confidence: "B",
    sources: ["paintHelp", "paintAnswers", "danish178"],
    note: "SEEN alkyd semigloss 0.57 perm; 3 coats oil 0.3-1.0 perm; 2 coats oil on plaster 1.6-3.0 perm. Flat alkyd 19.9 perm is far more open. Wet point MEMORY. Danish direction SEEN: alkyd oil paint 15e9 = 67 ng, inside the points here.",
  },
  {
    id: "vinyl_wallpaper",
    name: "Vinyl wall covering, unperforated",
    layer: "coating",
    stock_mm: [0.4],
    permeance_ng: { meanRH: [0.25, 0.75], permeance: [25, 35], range: "5-100", flag: "MEMORY" },
    confidence: "C",
    sources: ["iso10456Recalled"],
    note: "ISO 10456 Table 5 sd = 2 m (97 ng) is for common domestic vinyl paper; commercial vinyl is tighter.",
  },
];
