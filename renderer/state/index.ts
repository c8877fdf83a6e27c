/**
 * What sheets need to know of the state of things. Import from here only.
 *
 * `useRun(option, path)` tells what may be shown (see RunView); `applyEdit(name, change)` edits the project, and everything
 * that depends on it runs again by itself.
 */
export {
  pathInView,
  useActiveOption,
  useActivePath,
  useHistory,
  useProject,
  useRun,
  useSelectedDay,
  useTheme,
  useUnits,
} from "./hooks.ts";
export { applyEdit, replaceProject, useProjectStore } from "./project-store.ts";
export { keepFile, useFilesStore } from "./files-store.ts";
export { runAgain, stopRuns } from "./rerun.ts";
export type { RunView } from "./run-view.ts";
export {
  setSelectedDay,
  useViewStore,
  view,
  type QuestionId,
  type SheetId,
  type ThemeChoice,
  type Units,
} from "./view-store.ts";
