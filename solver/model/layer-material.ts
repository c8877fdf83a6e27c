import {
  airPermeability23_kgmsPa,
  materialById,
  materialSchema,
  type Material,
  type MaterialNeeds,
} from "../materials/index.ts";
import { airSpaceOfThickness } from "./air-space.ts";
import type { Layer, Project } from "./project.ts";

const schemaKeys = Object.keys(materialSchema.shape) as (keyof typeof materialSchema.shape)[];

/** Finds materials for a project: its own first, then the catalogue. */
export type MaterialLookup = (id: string) => Material | undefined;

export function lookupFor(project: Pick<Project, "materials">): MaterialLookup {
  const own = new Map((project.materials ?? []).map((material) => [material.id, material]));
  return (id) => own.get(id) ?? materialById(id);
}

/** The material that a layer names or writes out; undefined where nobody knows the name. */
export function materialOfLayer(layer: Layer, lookup: MaterialLookup): Material | undefined {
  return typeof layer.material === "string" ? lookup(layer.material) : layer.material;
}

/**
 * The material as the solver takes it: only the properties of the schema, an air space set to its depth, and a board whose
 * facers govern turned into a resistance factor at its own thickness (the permeance stays, whatever the thickness).
 */
export function materialAtThickness(material: Material, thickness_m: number): Material {
  const plain = Object.fromEntries(
    schemaKeys.filter((key) => material[key] !== undefined).map((key) => [key, material[key]]),
  ) as Material;
  if (plain.kind === "air") return airSpaceOfThickness(plain, thickness_m);
  if (plain.kind !== "bulk" || plain.permeance_kgm2sPa === undefined) return plain;
  const { permeance_kgm2sPa: permeance, ...rest } = plain;
  const factor = (value: number): number => airPermeability23_kgmsPa / (Math.max(value, 1e-18) * thickness_m);
  return {
    ...rest,
    vapour: {
      resistanceFactor:
        typeof permeance === "number"
          ? factor(permeance)
          : permeance.map(([humidity, value]): [number, number] => [humidity, factor(value)]),
    },
  };
}

/** What this project's runs ask of a material: a laboratory case may switch off heat or moisture. */
export function needsOf(project: Pick<Project, "lab">): MaterialNeeds {
  return { heat: project.lab?.physics?.heat !== false, moisture: project.lab?.physics?.moisture !== false };
}
