import {
  airPermeability23_kgmsPa,
  materialAtThickness,
  materialOfLayer,
  type Layer,
  type Material,
  type MaterialLookup,
} from "../../solver/index.ts";

/** What the schedule says of a layer. */
export interface LayerFigures {
  readonly material: Material | null;
  /** "Oriented strand board" */
  readonly name: string;
  /** "perm rises as it wets": the rest of the material's name. */
  readonly remark: string;
  /** Null for membranes. */
  readonly thickness_m: number | null;
  /** Null where the layer counts for nothing, or nothing is known. */
  readonly resistance_m2KW: number | null;
  /** Permeance when dry and when wet [kg/(m2 s Pa)]; one figure where they agree; null: not known or ventilated. */
  readonly permeance: readonly number[] | null;
  readonly ventilated: boolean;
}

/** Dry conductivity as tabulated [W/(m K)]; null where the material has none. */
export function tabulatedConductivity(material: Material): number | null {
  const given = material.conductivity_WmK;
  if (given === undefined) return null;
  return typeof given === "number" ? given : given.dry_WmK;
}

const ends = (points: readonly (readonly [number, number])[]): number[] => [points[0]![1], points.at(-1)![1]];

function permeanceOf(material: Material, thickness_m: number): number[] | null {
  const given = material.permeance_kgm2sPa;
  if (given !== undefined) return typeof given === "number" ? [given] : ends(given);
  if (!material.vapour || thickness_m <= 0) return null;
  if ("permeability_kgmsPa" in material.vapour) {
    const permeability = material.vapour.permeability_kgmsPa;
    return (typeof permeability === "number" ? [permeability] : ends(permeability)).map((value) => value / thickness_m);
  }
  const factor = material.vapour.resistanceFactor;
  return (typeof factor === "number" ? [factor] : ends(factor)).map(
    (value) => airPermeability23_kgmsPa / (value * thickness_m),
  );
}

export function layerFigures(layer: Layer, lookup: MaterialLookup): LayerFigures {
  const found = materialOfLayer(layer, lookup) ?? null;
  const [name = layer.id, ...remark] = (found?.name ?? layer.id).split(/, | \(|\)/).filter(Boolean);
  const thickness_m = found?.kind === "membrane" ? null : (layer.thickness_m ?? 0);
  const material = found && thickness_m !== null && thickness_m > 0 ? materialAtThickness(found, thickness_m) : found;
  const ventilated =
    material?.kind === "air" &&
    (layer.ventilation !== undefined || /vent/.test(`${material.id} ${material.group ?? ""}`));
  const conductivity = material ? tabulatedConductivity(material) : null;
  const resistance_m2KW =
    ventilated || !material
      ? null
      : (material.thermalResistance_m2KW ??
        (conductivity !== null && thickness_m !== null && thickness_m > 0 ? thickness_m / conductivity : null));
  return {
    material,
    name,
    remark: remark.join(", "),
    thickness_m,
    resistance_m2KW,
    permeance: material && !ventilated ? permeanceOf(material, thickness_m ?? 0) : null,
    ventilated,
  };
}
