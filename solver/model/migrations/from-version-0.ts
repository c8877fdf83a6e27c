import type { Migration } from "./migration.ts";

/**
 * Version 0 was the draft of the format: one wall under "wall" in place of a list of options, thicknesses in millimetres.
 */
export const fromVersion0: Migration = (file) => {
  const { wall, ...rest } = file;
  const options = Array.isArray(rest["options"])
    ? rest["options"]
    : wall === undefined
      ? []
      : [{ id: "A", name: "Wall", ...(wall as object) }];
  const layerInMetres = (layer: unknown): unknown => {
    if (typeof layer !== "object" || layer === null || !("thickness_mm" in layer)) return layer;
    const { thickness_mm, ...others } = layer;
    return { ...others, thickness_m: typeof thickness_mm === "number" ? thickness_mm / 1000 : thickness_mm };
  };
  const within = (list: unknown, name: string, change: (item: unknown) => unknown): unknown => {
    if (!Array.isArray(list)) return list;
    return list.map((item: unknown) =>
      typeof item === "object" && item !== null && Array.isArray((item as Record<string, unknown>)[name])
        ? { ...item, [name]: ((item as Record<string, unknown>)[name] as unknown[]).map(change) }
        : item,
    );
  };
  const metres = (path: unknown): unknown => (within([path], "layers", layerInMetres) as unknown[])[0];
  return { ...rest, formatVersion: 1, options: within(options, "paths", metres) };
};
