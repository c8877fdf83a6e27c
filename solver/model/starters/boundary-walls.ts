import type { Layer, Path } from "../project.ts";
import {
  board,
  frame,
  gypsumAndPaint,
  lapSiding,
  option,
  path,
  project,
  sheet,
  stud2x4_mm,
  stud2x6_mm,
  studOf,
  type StarterWall,
} from "./parts.ts";

const ci = (): Layer => board("ci", "xps", 50.8, { roles: ["thermal"] });
/** A self-adhered membrane over the sheathing is water and air control in one. */
const membrane = (): Layer => sheet("wrb", "wrb_self_adhered_open", { roles: ["water", "air"] });
const sheathing = (): Layer => board("sheathing", "osb_111", 11.1);
const field = (of: number): Path[] =>
  frame(
    {
      outside: () => [...lapSiding(), ci(), membrane(), sheathing()],
      cavity: () => [board("cavity", "glass_fibre_batt", stud2x6_mm)],
      framing: studOf(stud2x6_mm),
      inside: gypsumAndPaint,
    },
    of,
  );
const rimInside = (): Layer[] => [board("framing", "spf_framing", 38), board("cavity", "stone_wool_batt", 89)];
const rim = (): Path =>
  path("rim", "rimJoist", 0.05, [...lapSiding(), ci(), membrane(), sheathing(), ...rimInside()], {
    leaks: [{ id: "leak", to: "framing", at: "inside", flow_m3hm2: 0.2 }],
  });
const ledger = (tied: boolean): Path =>
  path(
    "ledger",
    "ledger",
    0.03,
    [
      board("ledger", "spf_framing", 38),
      ...(tied
        ? [board("standoff", "air_25", 25), ci(), membrane()]
        : [sheet("flashing", "bituminous_self_adhered", { roles: ["water"] })]),
      sheathing(),
      ...rimInside(),
    ],
    {
      name: "Deck ledger",
      leaks: [{ id: "leak", to: "framing", at: "inside", flow_m3hm2: 0.2 }],
      tieIns: { to: ["rim"], ...(tied ? {} : { water: true }) },
    },
  );

const panelOutside = (): Layer[] => [
  ...lapSiding(),
  board("sheathing", "insul_sheath_osb", 11.1, { roles: ["water", "air"] }),
  board("ci", "insul_sheath_pir", 51, { roles: ["thermal"] }),
];
const panelField = (of: number): Path[] =>
  frame(
    {
      outside: panelOutside,
      cavity: () => [board("cavity", "stone_wool_batt", stud2x4_mm)],
      framing: studOf(stud2x4_mm),
      inside: gypsumAndPaint,
      leakTo: "ci",
    },
    of,
  );
const band = (sheathed: boolean): Path =>
  path(
    "band",
    "studBay",
    0.08,
    [
      ...(sheathed
        ? [board("porch", "spf_framing", 38), board("standoff", "air_25", 25), ...panelOutside().slice(2)]
        : [board("porchSpace", "vent_cavity_25_brick", 100, { ventilation: { airChangesPerHour: 10 } })]),
      board("cavity", "stone_wool_batt", stud2x4_mm),
      ...gypsumAndPaint(),
    ],
    {
      name: "Band behind the porch roof",
      leaks: [{ id: "leak", to: "cavity", at: "outside", flow_m3hm2: sheathed ? 0.05 : 0.6 }],
      tieIns: { to: ["bay"] },
    },
  );

/** Walls whose boundary is interrupted, each beside the same wall with the boundary closed. */
export const boundaryWalls: readonly StarterWall[] = [
  {
    id: "ledger-and-rim",
    title: "Deck ledger bolted through the insulation, and the same ledger hung outside it",
    sentence:
      "The ledger stops the continuous insulation and the air barrier where the rim is leakiest; running both behind it removes both findings.",
    project: project(
      {
        name: "Otter Landing house",
        notes: "An invented house in zone 6A with a deck along one side.",
        city: "burlington-vt",
        zone: "6A",
      },
      [
        option("A", "Ledger on the sheathing", [...field(0.92), rim(), ledger(false)]),
        option("B", "Ledger outside the boundary", [...field(0.92), rim(), ledger(true)]),
      ],
    ),
  },
  {
    id: "porch-band",
    title: "Sheathing left out behind an attached porch roof",
    sentence:
      "A band of studs and batts without sheathing: the boundary does not close there; sheathing the whole wall first and hanging the porch outside of it closes it.",
    project: project(
      {
        name: "Willow Porch house",
        notes: "An invented house in zone 5A, insulating sheathing on a 2x4 frame.",
        city: "boston-ma",
        zone: "5A",
      },
      [
        option("A", "No sheathing behind the porch", [...panelField(0.92), band(false)]),
        option("B", "Porch hung outside the sheathing", [...panelField(0.92), band(true)]),
      ],
    ),
  },
];
