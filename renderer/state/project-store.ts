import { temporal } from "zundo";
import { create } from "zustand";
import { openingProject } from "./opening-project.ts";
import type { Project } from "../../solver/index.ts";

interface Edited {
  readonly project: Project;
  /** Name of the edit that led here: "Change thickness, layer 3"; null for a document as opened. */
  readonly edit: string | null;
}

interface ProjectState extends Edited {
  /** Replaces the project by an edited one; the name appears in Undo and beside stale results. */
  readonly apply: (edit: string, change: (project: Project) => Project) => void;
  /** A document opened: nothing before it can be undone. */
  readonly replace: (project: Project) => void;
}

export const useProjectStore = create<ProjectState>()(
  temporal(
    (set) => ({
      project: openingProject(),
      edit: null,
      apply: (edit, change) =>
        set((state) => {
          const project = change(state.project);
          return project === state.project ? state : { project, edit };
        }),
      replace: (project) => set({ project, edit: null }),
    }),
    {
      limit: 200,
      partialize: ({ project, edit }): Edited => ({ project, edit }),
      equality: (before, after) => before.project === after.project,
    },
  ),
);

export const applyEdit = (edit: string, change: (project: Project) => Project): void =>
  useProjectStore.getState().apply(edit, change);

/** Name of the edit that Undo would take back; null: there is none. */
export function nextUndo(): string | null {
  return useProjectStore.temporal.getState().pastStates.length > 0 ? useProjectStore.getState().edit : null;
}

/** Name of the edit that Redo would bring back; null: there is none. */
export function nextRedo(): string | null {
  return useProjectStore.temporal.getState().futureStates.at(-1)?.edit ?? null;
}

export const undo = (): void => useProjectStore.temporal.getState().undo();
export const redo = (): void => useProjectStore.temporal.getState().redo();

/** Opens a project in place of the one on the board. */
export function replaceProject(project: Project): void {
  useProjectStore.getState().replace(project);
  useProjectStore.temporal.getState().clear();
}
