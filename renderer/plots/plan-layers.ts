import { lookupFor, materialOfLayer, type CaseLayer, type Path, type Project } from "../../solver/index.ts";

/** The layers of a path as they would be drawn before anything was run; layers that cannot be drawn yet are left out. */
export function planLayers(project: Project, path: Path): CaseLayer[] {
  const lookup = lookupFor(project);
  return path.layers.flatMap((layer) => {
    const material = materialOfLayer(layer, lookup);
    if (!material) return [];
    return [
      {
        id: layer.id,
        name: material.name,
        material,
        thickness_m: material.kind === "membrane" ? 0 : Math.max(0, layer.thickness_m ?? 0),
        contact: null,
        airChangesPerHour: material.kind === "air" ? (layer.ventilation?.airChangesPerHour ?? null) : null,
        initial: { relativeHumidity: 0.5 },
      },
    ];
  });
}
