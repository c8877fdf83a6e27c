import type { Material, Path } from "../../solver/index.ts";

/** Drafting hatches, by what is cut. */
export type HatchKind =
  | "lumberThrough"
  | "lumberAcross"
  | "woodBoard"
  | "strandBoard"
  | "plywood"
  | "fibreFill"
  | "fibreBoard"
  | "rigidFoam"
  | "sprayedFoam"
  | "gypsum"
  | "fibreCement"
  | "brick"
  | "concrete"
  | "metal"
  | "air"
  | "membrane"
  | "plain";

/** Told from the trade's words in id, group and name; the first that fits. */
const words: readonly (readonly [RegExp, HatchKind])[] = [
  [/vent|cavity|air[ _-]?(space|gap|layer)|gap/, "air"],
  [/\bboard_sheathing|solid board/, "woodBoard"],
  [/insul_sheath_osb/, "strandBoard"],
  [/insul_sheath_pir/, "rigidFoam"],
  [
    /spf_framing|framing|stud\b|lumber|spruce|douglas|southern_pine|white_pine|white_cedar|clt|header|joist|timber/,
    "lumberAcross",
  ],
  [/osb|strand|particle/, "strandBoard"],
  [/plywood|veneer_board/, "plywood"],
  [/ccspf|ocspf|spray(ed)?/, "sprayedFoam"],
  [/gypsum|plaster/, "gypsum"],
  [/fibre_cement|fibre-cement|fibre cement/, "fibreCement"],
  [/wood_fibre_board|fibreboard|stone_wool_board|glass_fibre_board|mineral.*board|cork|calcium_silicate/, "fibreBoard"],
  [/batt|cellulose|fibre|wool|straw|hemp|fill/, "fibreFill"],
  [/xps|eps|gps|pir|polyiso|phenolic|foam|styrene|cellular_glass/, "rigidFoam"],
  [/brick|stone/, "brick"],
  [/concrete|cmu|mortar|stucco|aac|masonry|lamina/, "concrete"],
  [/metal|steel|aluminium|vinyl/, "metal"],
  [/siding|cedar|pine|wood|board/, "woodBoard"],
];

/** The hatch of a material as it is cut in a path. A stud runs through the section; plates, rims and headers are cut across. */
export function hatchOf(material: Pick<Material, "id" | "name" | "kind" | "group">, path: Path["kind"]): HatchKind {
  if (material.kind === "membrane") return "membrane";
  if (material.kind === "air") return "air";
  const text = `${material.id} ${material.group ?? ""} ${material.name}`.toLowerCase();
  const kind = words.find(([pattern]) => pattern.test(text))?.[1] ?? "plain";
  return kind === "lumberAcross" && path === "stud" ? "lumberThrough" : kind;
}
