import { dropLayer, shiftLayer } from "./edits.ts";
import { pathInView } from "./hooks.ts";
import { applyEdit, useProjectStore } from "./project-store.ts";
import { useViewStore, view } from "./view-store.ts";
import type { Layer, Option, Path } from "../../solver/index.ts";

/** The layer that the schedule stands on, with its path and option. */
function here(): { option: Option; path: Path; layer: Layer; number: number } | null {
  const { project } = useProjectStore.getState();
  const { option: letter, path: pathId, layer: layerId } = useViewStore.getState();
  const option = project.options.find((candidate) => candidate.id === letter) ?? project.options[0]!;
  const path = pathInView(option, pathId);
  const at = path.layers.findIndex((candidate) => candidate.id === layerId);
  return at < 0 ? null : { option, path, layer: path.layers[at]!, number: at + 1 };
}

const chooseFirst = "Choose a layer in the schedule first.";

export function addLayer(): void {
  if (here()) view({ askingMaterial: "add" });
  else view({ notice: chooseFirst });
}

export function removeLayer(): void {
  const place = here();
  if (!place) return view({ notice: chooseFirst });
  if (place.path.layers.length === 1) return view({ notice: "A path needs at least one layer." });
  const neighbour = place.path.layers[place.number] ?? place.path.layers[place.number - 2]!;
  applyEdit(
    `Remove layer ${place.number}, ${place.path.id} of ${place.option.id}`,
    dropLayer(place.option.id, place.path.id, place.layer.id, useViewStore.getState().throughAll),
  );
  view({ layer: neighbour.id });
}

export function moveLayer(step: 1 | -1): void {
  const place = here();
  if (!place) return view({ notice: chooseFirst });
  applyEdit(
    `Move layer ${place.number} ${step < 0 ? "outward" : "inward"}, ${place.path.id} of ${place.option.id}`,
    shiftLayer(place.option.id, place.path.id, place.layer.id, step, useViewStore.getState().throughAll),
  );
}
