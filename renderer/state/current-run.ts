import { pathInView } from "./hooks.ts";
import { useProjectStore } from "./project-store.ts";
import { runViewOf, type RunView } from "./run-view.ts";
import { slotName, useRunsStore } from "./runs-store.ts";

/** The run of an option and path as it stands, outside of drawing. Unknown names fall back as on the sheets. */
export function currentRun(optionId: string, pathId: string): RunView | null {
  const { options } = useProjectStore.getState().project;
  const option = options.find((candidate) => candidate.id === optionId) ?? options[0];
  if (!option) return null;
  const { slots, entries } = useRunsStore.getState();
  const slot = slots[slotName(option.id, pathInView(option, pathId).id)];
  return runViewOf(slot, slot?.key ? entries[slot.key] : undefined);
}
