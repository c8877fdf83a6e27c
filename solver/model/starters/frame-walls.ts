import type { Layer, Path } from "../project.ts";
import {
  board,
  frame,
  gypsumAndPaint,
  kraft,
  lapSiding,
  option,
  project,
  sheet,
  strandBoard,
  stud2x4_mm,
  stud2x6_mm,
  studOf,
  wrap,
  type StarterWall,
} from "./parts.ts";

const batt2x4 = (): Layer[] => [board("cavity", "glass_fibre_batt", stud2x4_mm)];
const batt2x6 = (): Layer[] => [board("cavity", "glass_fibre_batt", stud2x6_mm)];

/** A 2x4 or 2x6 wall with lap siding, with or without a board outside the sheathing. */
function plain(stud_mm: number, batt: () => Layer[], ci: Layer[], retarder: Layer[]): Path[] {
  return frame({
    outside: () => [...lapSiding(), ...ci, wrap(), strandBoard()],
    cavity: batt,
    framing: studOf(stud_mm),
    inside: () => [...retarder, ...gypsumAndPaint()],
  });
}
const foam = (material: string, thickness_mm: number): Layer[] => [
  board("ci", material, thickness_mm, { roles: ["thermal"] }),
];

const doubleStud = (): Path[] =>
  frame({
    outside: () => [...lapSiding(), wrap(), strandBoard()],
    cavity: () => [board("cavity", "cellulose_dense", 305, { roles: ["thermal"] })],
    framing: () => [
      board("framing", "spf_framing", 89),
      board("between", "cellulose_dense", 127, { roles: ["thermal"] }),
      board("framing2", "spf_framing", 89),
    ],
    inside: () => [sheet("retarder", "smart_pa", { roles: ["vapour"] }), ...gypsumAndPaint()],
  });

/** Insulating sheathing: a strand board with a factory water-resistive face, foam laminated to its inner side. */
const panel = (): Layer[] => [
  board("sheathing", "insul_sheath_osb", 11.1, { roles: ["water", "air"] }),
  board("ci", "insul_sheath_pir", 25, { roles: ["thermal"] }),
];
const panelFrame = (): Path[] =>
  frame(
    {
      outside: () => [...lapSiding(), ...panel()],
      cavity: batt2x6,
      framing: studOf(stud2x6_mm),
      inside: gypsumAndPaint,
      leakTo: "ci",
    },
    0.94,
  );
const rimBehind = (outside: Layer[]): Path => ({
  id: "band",
  kind: "rimJoist",
  name: "Rim band",
  areaShare: 0.06,
  layers: [
    ...lapSiding(),
    ...outside,
    board("framing", "spf_framing", 38),
    board("cavity", "glass_fibre_batt", stud2x6_mm),
  ],
  leaks: [{ id: "leak", to: "framing", at: "inside", flow_m3hm2: 0.2 }],
});

/** Walls of new frame houses. */
export const frameWalls: readonly StarterWall[] = [
  {
    id: "two-by-four",
    title: "2x4 wall, no exterior insulation",
    sentence: "The plain wall of many older plans, with a kraft-faced batt: what everything else is measured against.",
    project: project(
      { name: "Cedar Bend cottage", notes: "An invented cottage in zone 5A.", city: "boston-ma", zone: "5A" },
      [option("A", "2x4, no exterior insulation", plain(stud2x4_mm, batt2x4, [], [kraft()]))],
    ),
  },
  {
    id: "two-by-four-foam",
    title: "2x4 wall with 1 and 1½ in. of foam outside",
    sentence: "Where the table asks for R-5 over 2x4: one board meets it, the thicker one shows what the margin buys.",
    project: project(
      {
        name: "Quarry Lane house",
        notes: "An invented house in zone 5A; latex paint is the only retarder.",
        city: "boston-ma",
        zone: "5A",
      },
      [
        option("A", "2x4 with 1 in. foam", plain(stud2x4_mm, batt2x4, foam("xps", 25.4), [])),
        option("B", "2x4 with 1½ in. foam", plain(stud2x4_mm, batt2x4, foam("xps", 38.1), [])),
      ],
    ),
  },
  {
    id: "two-by-six",
    title: "2x6 wall, no exterior insulation",
    sentence: "A full stud bay makes the sheathing colder: kraft facing against paint alone in a cold climate.",
    project: project(
      { name: "Millrace house", notes: "An invented house in zone 6A.", city: "burlington-vt", zone: "6A" },
      [
        option("A", "2x6 with paint only", plain(stud2x6_mm, batt2x6, [], [])),
        option("B", "2x6 with kraft facing", plain(stud2x6_mm, batt2x6, [], [kraft()])),
      ],
    ),
  },
  {
    id: "two-by-six-foam",
    title: "2x6 wall with 1 and 2½ in. of foam outside",
    sentence: "The 20+5 wall that meets the energy table and not the vapour table, beside one that meets both.",
    project: project(
      {
        name: "Upper Field house",
        notes: "An invented house in zone 6A; latex paint is the only retarder.",
        city: "burlington-vt",
        zone: "6A",
      },
      [
        option("A", "2x6 with 1 in. foam", plain(stud2x6_mm, batt2x6, foam("xps", 25.4), [])),
        option("B", "2x6 with 2½ in. foam", plain(stud2x6_mm, batt2x6, foam("xps", 63.5), [])),
      ],
    ),
  },
  {
    id: "two-by-six-mineral-wool",
    title: "2x6 wall with mineral wool board outside",
    sentence: "As warm as foam of the same R and open to drying outward: compare the spring, not the midwinter.",
    project: project(
      { name: "Stone Ferry house", notes: "An invented house in zone 6A.", city: "burlington-vt", zone: "6A" },
      [
        option("A", "2x6 with 3 in. mineral wool", plain(stud2x6_mm, batt2x6, foam("stone_wool_board", 76), [])),
        option("B", "2x6 with foam of like R", plain(stud2x6_mm, batt2x6, foam("xps", 63.5), [])),
      ],
    ),
  },
  {
    id: "insulating-sheathing",
    title: "Insulating sheathing: foam laminated to the inner side of the strand board",
    sentence:
      "The plane where room air could condense is the foam's inner face, not the board; leaving the panel off one band makes that band the wettest.",
    project: project(
      {
        name: "Tanner's Row house",
        notes: "An invented house in zone 5A with about R-6 of laminated foam.",
        city: "boston-ma",
        zone: "5A",
      },
      [
        option("A", "Panel carried over the rim band", [...panelFrame(), rimBehind(panel())]),
        option("B", "Panel interrupted at the rim band", [
          ...panelFrame(),
          rimBehind([wrap(), board("board", "osb_111", 11.1)]),
        ]),
      ],
    ),
  },
  {
    id: "double-stud",
    title: "Double-stud wall with 12 in. of dense-pack cellulose",
    sentence:
      "Much insulation inside of a cold sheathing, with a responsive retarder: watch the sheathing rise each winter and dry each spring.",
    project: project(
      { name: "Long Meadow house", notes: "An invented house in zone 6A.", city: "burlington-vt", zone: "6A" },
      [option("A", "Double stud, cellulose", doubleStud())],
    ),
  },
  {
    id: "flash-and-batt",
    title: "Closed-cell flash-and-batt in a 2x6 wall",
    sentence:
      "Two inches of closed-cell foam against the sheathing and a batt inside of it: the foam's inner face is the plane to watch.",
    project: project(
      { name: "Ridge Street duplex", notes: "An invented duplex in zone 6A.", city: "minneapolis-mn", zone: "6A" },
      [
        option(
          "A",
          "2 in. closed-cell foam and batt",
          frame({
            outside: () => [...lapSiding(), wrap(), strandBoard()],
            cavity: () => [board("foam", "ccspf", 51, { roles: ["thermal"] }), board("cavity", "glass_fibre_batt", 89)],
            framing: studOf(stud2x6_mm),
            inside: gypsumAndPaint,
            leakTo: "foam",
          }),
        ),
      ],
    ),
  },
  {
    id: "wood-fibre",
    title: "Wood-fibre board outside, open to vapour both ways",
    sentence: "No film anywhere: a wall that is meant to dry to both sides in a mild, wet climate.",
    project: project(
      {
        name: "Harbour Steps house",
        notes: "An invented house in zone 4C.",
        city: "seattle-wa",
        zone: "4C",
        azimuth_deg: 180,
        leakTo: "ci",
      },
      [
        option(
          "A",
          "2x6 with 60 mm wood fibre",
          frame({
            outside: () => [
              ...lapSiding(),
              sheet("wrb", "wrb_self_adhered_open", { roles: ["water", "air"] }),
              board("ci", "wood_fibre_board", 60, { roles: ["thermal"] }),
            ],
            cavity: () => [board("cavity", "cellulose_dense", stud2x6_mm)],
            framing: studOf(stud2x6_mm),
            inside: () => [board("sheathing", "osb_111", 11.1, { roles: ["vapour"] }), ...gypsumAndPaint()],
            leakTo: "ci",
          }),
        ),
      ],
    ),
  },
];
