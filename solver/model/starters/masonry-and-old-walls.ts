import type { Layer, Path } from "../project.ts";
import {
  board,
  frame,
  gypsumAndPaint,
  kraft,
  option,
  path,
  project,
  sheet,
  strandBoard,
  stud2x4_mm,
  stud2x6_mm,
  studOf,
  wrap,
  type StarterWall,
} from "./parts.ts";

const brickOutside = (): Layer[] => [
  board("cladding", "brick_veneer", 90),
  board("gap", "vent_cavity_25_brick", 25, { ventilation: { airChangesPerHour: 4 } }),
  wrap(),
];
const batt2x4 = (): Layer[] => [board("cavity", "glass_fibre_batt", stud2x4_mm)];
const brickWall = (finish: Layer[]): Path[] =>
  frame({
    outside: () => [...brickOutside(), board("sheathing", "fibreboard_sheathing", 12.7, { roles: ["air"] })],
    cavity: batt2x4,
    framing: studOf(stud2x4_mm),
    inside: () => [board("gypsum", "gypsum_board_127", 12.7), ...finish],
  });

const solid = (layers: Layer[]): Path[] => [
  path("wall", "solid", 1, [board("brick", "brick_historic", 330, { roles: ["water"] }), ...layers]),
];

const oldOutside = (): Layer[] => [
  board("cladding", "pine_lap_siding", 19),
  board("sheathing", "board_sheathing_pine", 19),
];
const oldWall = (cavity: Layer): Path[] =>
  frame({
    outside: oldOutside,
    cavity: () => [cavity],
    framing: studOf(stud2x4_mm),
    inside: () => [board("plaster", "lime_plaster", 20), sheet("paint", "paint_oil")],
  });

const stucco = (gap: Layer[]): Path[] =>
  frame({
    outside: () => [
      board("cladding", "stucco_cement_lime", 22),
      ...gap,
      sheet("wrb", "building_paper_60", { roles: ["water"] }),
      strandBoard(),
    ],
    cavity: () => [board("cavity", "glass_fibre_batt", stud2x6_mm)],
    framing: studOf(stud2x6_mm),
    inside: () => [kraft(), ...gypsumAndPaint()],
  });

const overPoly = (ci: string): Path[] =>
  frame({
    outside: () => [
      board("cladding", "fibre_cement", 8),
      board("gap", "vent_cavity_19", 19, { ventilation: { airChangesPerHour: 200 } }),
      board("ci", ci, 38.1, { roles: ["thermal"] }),
      wrap(),
      strandBoard(),
    ],
    cavity: batt2x4,
    framing: studOf(stud2x4_mm),
    inside: () => [sheet("retarder", "poly_6mil", { roles: ["vapour"] }), ...gypsumAndPaint()],
  });

const cooled = { method: "fixed", temperature_C: 23.5, relativeHumidity: 0.5 } as const;

/** Masonry, stucco and walls of existing houses. */
export const masonryAndOldWalls: readonly StarterWall[] = [
  {
    id: "brick-veneer",
    title: "Brick veneer on a 2x4 wall in a hot, humid place",
    sentence:
      "Rain stored in the brick is driven inward by the sun: paint lets it through, vinyl wall covering stops it inside the wall.",
    project: project(
      {
        name: "Bayou Corner house",
        notes: "An invented house in zone 2A, cooled all summer.",
        city: "houston-tx",
        zone: "2A",
        azimuth_deg: 180,
        indoor: cooled,
      },
      [
        option("A", "Brick, latex paint", brickWall([sheet("paint", "paint_latex")])),
        option("B", "Brick, vinyl wall covering", brickWall([sheet("paint", "vinyl_wallpaper")])),
      ],
    ),
  },
  {
    id: "solid-brick",
    title: "Solid brick, insulated inside",
    sentence: "Insulation inside makes old brick colder and wetter: count its freezing while wet before deciding.",
    project: project(
      {
        name: "Ropewalk mill",
        notes: "An invented mill in zone 5A with a 13 in. brick wall.",
        city: "boston-ma",
        zone: "5A",
        azimuth_deg: 225,
        leakTo: "brick",
        leakShare: 0,
      },
      [
        option("A", "Bare brick and plaster", solid([board("plaster", "lime_plaster", 20)])),
        option(
          "B",
          "2 in. closed-cell foam inside",
          solid([board("insulation", "ccspf", 51, { roles: ["thermal", "air"] }), ...gypsumAndPaint()]),
        ),
        option(
          "C",
          "50 mm calcium silicate inside",
          solid([
            board("insulation", "calcium_silicate_board", 50, { roles: ["thermal"] }),
            board("plaster", "lime_plaster", 10),
          ]),
        ),
      ],
    ),
  },
  {
    id: "old-frame",
    title: "Old frame with lath and plaster, empty or dense-packed",
    sentence: "Filling an empty bay ends the warmth that kept leaks harmless for decades: mend the rain leaks first.",
    project: project(
      {
        name: "Chapel Hill Road farmhouse",
        notes:
          "An invented farmhouse in zone 6A without a water-resistive barrier, its paint weathered away; 2 % of the driving rain leaks in.",
        city: "burlington-vt",
        zone: "6A",
        azimuth_deg: 90,
        leakShare: 0.02,
      },
      [
        option("A", "Empty bays", oldWall(board("cavity", "air_89", 89))),
        option("B", "Dense-pack cellulose", oldWall(board("cavity", "cellulose_dense", 89, { roles: ["thermal"] }))),
      ],
    ),
  },
  {
    id: "stucco",
    title: "Stucco on a 2x6 wall, with and without a drained gap",
    sentence: "Reservoir cladding tight on the sheathing against the same wall with a gap of 3/8 in. behind it.",
    project: project(
      {
        name: "Terrace Nine townhouse",
        notes: "An invented townhouse in zone 4C.",
        city: "seattle-wa",
        zone: "4C",
        azimuth_deg: 180,
      },
      [
        option("A", "Stucco on paper", stucco([])),
        option(
          "B",
          "Stucco on a drained gap",
          stucco([board("gap", "vent_cavity_10", 10, { ventilation: { airChangesPerHour: 20 } })]),
        ),
      ],
    ),
  },
  {
    id: "over-polyethylene",
    title: "Exterior foam added over a wall with polyethylene inside",
    sentence: "Foil-faced foam outside and polyethylene inside leave no way to dry; unfaced foam leaves a little.",
    project: project(
      {
        name: "Orchard Gate split-level",
        notes: "An invented house in zone 5A; the polyethylene was found behind the drywall.",
        city: "boston-ma",
        zone: "5A",
        run: { start: "10-01", years: 2, initial: "rainedOn" },
      },
      [
        option("A", "Foil-faced foam over polyethylene", overPoly("pir_foil")),
        option("B", "Unfaced foam over polyethylene", overPoly("xps")),
      ],
    ),
  },
];
