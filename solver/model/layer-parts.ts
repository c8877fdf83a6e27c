import type { Material } from "../materials/index.ts";
import { materialById } from "../materials/index.ts";
import { materialAtThickness, materialOfLayer, type MaterialLookup } from "./layer-material.ts";
import type { Layer, Path } from "./project.ts";

/** A layer with its material found and set to its thickness, for the checks that need no run. */
export interface FoundLayer {
  readonly layer: Layer;
  readonly material: Material;
  readonly thickness_m: number;
  /** A space that breathes outdoor air. */
  readonly ventilated: boolean;
}

/** The layers of a path whose materials are known, outside first. */
export function foundLayers(path: Pick<Path, "layers">, lookup: MaterialLookup): readonly FoundLayer[] {
  return path.layers.flatMap((layer) => {
    const found = materialOfLayer(layer, lookup);
    if (!found) return [];
    const thickness_m = found.kind === "membrane" ? 0 : (layer.thickness_m ?? 0);
    const usual = typeof layer.material === "string" ? (materialById(layer.material)?.usualAirChangesPerHour ?? 0) : 0;
    const changes = layer.ventilation?.airChangesPerHour ?? usual;
    return [
      {
        layer,
        material: materialAtThickness(found, thickness_m),
        thickness_m,
        ventilated: found.kind === "air" && (changes === "driven" || changes > 0),
      },
    ];
  });
}

const insulationGroup = /insulation/i;
const insulationWords = /batt|wool|foam|polystyrene|isocyanurate|cellulose|insulation|cork|straw|hemp/i;

/** Insulation by its catalogue group, or by name and conductivity where the user wrote it out. */
export function isInsulation(material: Material): boolean {
  if (material.kind !== "bulk") return false;
  if (material.group && insulationGroup.test(material.group)) return true;
  if (material.id === "insul_sheath_pir") return true;
  const conductivity =
    typeof material.conductivity_WmK === "number" ? material.conductivity_WmK : material.conductivity_WmK?.dry_WmK;
  return (
    conductivity !== undefined &&
    conductivity <= 0.065 &&
    (insulationWords.test(material.name) || material.group === undefined)
  );
}

export const isFoam = (material: Material): boolean =>
  material.kind === "bulk" &&
  /foam|polystyrene|isocyanurate|urethane|phenolic/i.test(`${material.group ?? ""} ${material.name}`);
export const isSprayFoam = (material: Material): boolean => /spray/i.test(material.name) && isFoam(material);

/** Framing lumber crossing the wall, by group and depth: a stud, plate, header, rim or ledger. */
export const isFraming = (found: FoundLayer): boolean =>
  found.material.wood === true && found.thickness_m >= 0.03 && !/siding|sheathing/i.test(found.material.name);

const boards = /OSB|strand|plywood|fibreboard|fiberboard|sheathing|glass-mat/i;
/** A sheathing board: wood panel, boards, fibreboard or exterior gypsum. */
export const isSheathing = (material: Material): boolean =>
  material.kind === "bulk" &&
  !isFoam(material) &&
  (material.group === "Sheathing" || (material.group === undefined && boards.test(material.name)));

/** Masonry, concrete and stone that carry themselves. */
export const isMasonry = (material: Material): boolean =>
  material.kind === "bulk" &&
  (material.group === "Masonry" || /brick|concrete|masonry|stone|stucco|adobe/i.test(material.name));
