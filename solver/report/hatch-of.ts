import type { Case, CaseLayer } from "../model/index.ts";
import type { Hatch } from "./report.ts";

/** Told from the words of the trade in a material's id, name and group; the first that fits. */
const told: readonly (readonly [RegExp, Hatch])[] = [
  [/insulating sheathing, outer|strand|\bosb/, "strandBoard"],
  [/plywood/, "plywood"],
  [/framing lumber|stud|joist|header|spruce|douglas|southern pine|cross-laminated|lumber/, "lumberAcross"],
  [/spray/, "sprayedFoam"],
  [/gypsum|plaster/, "gypsum"],
  [/fibre-?_? ?cement/, "fibreCement"],
  [
    /fibreboard|wool (rigid )?board|rigid (stone|glass|mineral)|wood-fibre insulation board|cork|calcium silicate|rigid glass-fibre/,
    "fibreBoard",
  ],
  [/batt|cellulose|wool|straw|hemp|fill|fibre$/, "fibreFill"],
  [/polystyrene|polyiso|phenolic|foam|cellular glass|\bxps|\beps|\bpir/, "rigidFoam"],
  [/brick|sandstone|limestone/, "brick"],
  [/concrete|mortar|stucco|masonry|aac|lamina/, "concrete"],
  [/steel|aluminium|vinyl/, "metal"],
  [/siding|cedar|pine|wood|board/, "woodBoard"],
];

/** Drafting hatch of a layer. A stud runs through the section; plates, rims and headers are cut across. */
export function hatchOf(layer: CaseLayer, pathKind: Case["pathKind"]): Hatch {
  if (layer.material.kind === "membrane") return "membrane";
  if (layer.material.kind === "air") return "air";
  const text = `${layer.material.id} ${layer.name}`.toLowerCase();
  const hatch = told.find(([words]) => words.test(text))?.[1] ?? "plain";
  return hatch === "lumberAcross" && pathKind === "stud" ? "lumberThrough" : hatch;
}
