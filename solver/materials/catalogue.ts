import { airSpaces } from "./catalogue/air-spaces.ts";
import { cladding } from "./catalogue/cladding.ts";
import { coatings } from "./catalogue/coatings.ts";
import { fibreInsulation } from "./catalogue/fibre-insulation.ts";
import { foamInsulation } from "./catalogue/foam-insulation.ts";
import { interiorFinishes } from "./catalogue/interior-finishes.ts";
import { lumber } from "./catalogue/lumber.ts";
import { masonry } from "./catalogue/masonry.ts";
import { membranes } from "./catalogue/membranes.ts";
import { sheathing } from "./catalogue/sheathing.ts";
import { materialOfRow } from "./material-of-row.ts";
import type { CatalogueMaterial } from "./passport.ts";

/** Every generic material, membrane, coating and air space that comes with the program, by trade group. */
export const catalogue: readonly CatalogueMaterial[] = [
  ...cladding.map((row) => materialOfRow(row, "Cladding")),
  ...airSpaces.map((row) => materialOfRow(row, "Air spaces")),
  ...sheathing.map((row) => materialOfRow(row, "Sheathing")),
  ...foamInsulation.map((row) => materialOfRow(row, "Foam insulation")),
  ...fibreInsulation.map((row) => materialOfRow(row, "Fibre and mineral insulation")),
  ...lumber.map((row) => materialOfRow(row, "Lumber")),
  ...masonry.map((row) => materialOfRow(row, "Masonry")),
  ...membranes.map((row) => materialOfRow(row, "Membranes and facers")),
  ...coatings.map((row) => materialOfRow(row, "Paints and wall coverings")),
  ...interiorFinishes.map((row) => materialOfRow(row, "Interior boards and plasters")),
];

const byId = new Map(catalogue.map((material) => [material.id, material]));

/** The catalogue material of this id, or undefined. */
export function materialById(id: string): CatalogueMaterial | undefined {
  return byId.get(id);
}
