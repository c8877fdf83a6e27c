import { commands, isCommandId, type CommandId } from "../../electron/shared/index.ts";
import { chooseWeather, newWall, openDemo, openDocument, saveDocument } from "../state/documents.ts";
import { addLayer, moveLayer, removeLayer } from "../state/layer-commands.ts";
import { duplicateOption, moveOption, removeOption } from "../state/option-commands.ts";
import { redo, undo } from "../state/project-store.ts";
import { isRunning } from "../state/rerun.ts";
import { runAgain, stopRuns, useViewStore, view } from "../state/index.ts";
import { exportCsv } from "./export-csv.ts";
import { movePane } from "./panes.ts";

const doing: Record<CommandId, () => void> = {
  "file.new": newWall,
  "file.open": () => void openDocument(),
  "file.openDemo": openDemo,
  "file.save": () => void saveDocument(false),
  "file.saveAs": () => void saveDocument(true),
  "file.openWeather": () => void chooseWeather(),
  "file.exportCsv": () => void exportCsv(),
  "file.savePdf": () => void import("../report/save-report.ts").then(({ savePdf }) => savePdf()),
  "edit.undo": undo,
  "edit.redo": redo,
  "edit.addLayer": addLayer,
  "edit.removeLayer": removeLayer,
  "edit.moveLayerOut": () => moveLayer(-1),
  "edit.moveLayerIn": () => moveLayer(1),
  "edit.duplicateOption": duplicateOption,
  "edit.removeOption": removeOption,
  "edit.moveOptionForward": () => moveOption(-1),
  "edit.moveOptionBack": () => moveOption(1),
  "sheet.wall": () => view({ sheet: "wall" }),
  "sheet.exposure": () => view({ sheet: "exposure" }),
  "sheet.year": () => view({ sheet: "year" }),
  "sheet.sideBySide": () => view({ sheet: "sideBySide" }),
  "sheet.questions": () => view({ sheet: "questions" }),
  "sheet.report": () => view({ sheet: "report" }),
  "sheet.nextPane": () => movePane(1),
  "sheet.previousPane": () => movePane(-1),
  "run.now": runAgain,
  "run.stop": stopRuns,
  "view.unitsInchPound": () => view({ units: "ip" }),
  "view.unitsMetric": () => view({ units: "si" }),
  "view.unitsBoth": () => view({ units: "both" }),
  "view.light": () => view({ themeChoice: "light" }),
  "view.dark": () => view({ themeChoice: "dark" }),
  "view.system": () => view({ themeChoice: "system" }),
  "help.keys": () => view({ openDialog: "keys" }),
  "help.words": () => view({ openDialog: "words" }),
  "help.about": () => view({ openDialog: "about" }),
};

const layerCommands = new Set<string>(["edit.addLayer", "edit.removeLayer", "edit.moveLayerOut", "edit.moveLayerIn"]);

/** Whether a key press may be taken as this command now. */
export function canRun(id: string): boolean {
  if (id === "run.stop") return isRunning();
  if (layerCommands.has(id)) return useViewStore.getState().sheet === "wall";
  return true;
}

export function runCommand(id: string): void {
  if (isCommandId(id) && canRun(id)) doing[id]();
}

/** "Undo change thickness, layer 3" where there is something to undo. */
export function labelOf(
  id: CommandId,
  history: { readonly undo: string | null; readonly redo: string | null },
): string {
  const { label } = commands.find((command) => command.id === id)!;
  const edit = id === "edit.undo" ? history.undo : id === "edit.redo" ? history.redo : null;
  return edit === null ? label : `${label}: ${edit.charAt(0).toLowerCase()}${edit.slice(1)}`;
}
