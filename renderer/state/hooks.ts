import { useMemo, useSyncExternalStore } from "react";
import { useStore } from "zustand";
import type { Option, Path, Project } from "../../solver/index.ts";
import { nextRedo, nextUndo, useProjectStore } from "./project-store.ts";
import { runViewOf, type RunView } from "./run-view.ts";
import { slotName, useRunsStore } from "./runs-store.ts";
import { useViewStore, type Units } from "./view-store.ts";

export const useProject = (): Project => useProjectStore((state) => state.project);

/** The option whose letter is pressed in the top strip; the first one if that letter is gone. */
export function useActiveOption(): Option {
  const letter = useViewStore((state) => state.option);
  const { options } = useProject();
  return options.find((option) => option.id === letter) ?? options[0]!;
}

/** The path in view of the active option; its first one if it has none of that name. */
export function useActivePath(): Path {
  return pathInView(
    useActiveOption(),
    useViewStore((state) => state.path),
  );
}

/** The path of an option that answers to the path in view. */
export const pathInView = (option: Option, path: string): Path =>
  option.paths.find((candidate) => candidate.id === path) ?? option.paths[0]!;

export function useRun(optionId: string, pathId: string): RunView {
  const slot = useRunsStore((state) => state.slots[slotName(optionId, pathId)]);
  const entry = useRunsStore((state) => (slot?.key ? state.entries[slot.key] : undefined));
  return useMemo(() => runViewOf(slot, entry), [slot, entry]);
}

export const useUnits = (): Units => useViewStore((state) => state.units);

/** Day of the judged year under the date cursor, 0..364; move it with `setSelectedDay`. */
export const useSelectedDay = (): number => useViewStore((state) => state.selectedDay);

const darkQuery = window.matchMedia("(prefers-color-scheme: dark)");
const watchSystem = (notify: () => void): (() => void) => {
  darkQuery.addEventListener("change", notify);
  return () => darkQuery.removeEventListener("change", notify);
};

/** The paper in use. */
export function useTheme(): "light" | "dark" {
  const choice = useViewStore((state) => state.themeChoice);
  const systemIsDark = useSyncExternalStore(watchSystem, () => darkQuery.matches);
  if (choice !== "system") return choice;
  return systemIsDark ? "dark" : "light";
}

/** Names of the edits that Undo and Redo would take back and bring back. */
export function useHistory(): { readonly undo: string | null; readonly redo: string | null } {
  useProjectStore((state) => state.project);
  useStore(useProjectStore.temporal, (state) => state.futureStates.length);
  return { undo: nextUndo(), redo: nextRedo() };
}
