/**
 * The one command table: the desktop menu, the window's keys and its shortcut sheet are all read from it.
 * `keys` is written the way Electron writes accelerators; `CommandOrControl` is Command on a Mac.
 */
export interface Command {
  readonly id: string;
  /** Imperative, sentence case. */
  readonly label: string;
  readonly menu: MenuName;
  readonly keys?: string;
  /** True: a rule stands above it in the menu. */
  readonly startsGroup?: boolean;
}

export const menuNames = ["File", "Edit", "Sheet", "Run", "View", "Help"] as const;
export type MenuName = (typeof menuNames)[number];

export const commands = [
  { id: "file.new", label: "New wall…", menu: "File", keys: "CommandOrControl+N" },
  { id: "file.open", label: "Open…", menu: "File", keys: "CommandOrControl+O" },
  { id: "file.openDemo", label: "Open the demo", menu: "File" },
  { id: "file.save", label: "Save", menu: "File", keys: "CommandOrControl+S", startsGroup: true },
  { id: "file.saveAs", label: "Save as…", menu: "File", keys: "CommandOrControl+Shift+S" },
  { id: "file.openWeather", label: "Use a weather file…", menu: "File", startsGroup: true },
  { id: "file.exportCsv", label: "Save hourly results as CSV…", menu: "File" },
  { id: "file.savePdf", label: "Save report as PDF…", menu: "File", keys: "CommandOrControl+P" },

  { id: "edit.undo", label: "Undo", menu: "Edit", keys: "CommandOrControl+Z" },
  { id: "edit.redo", label: "Redo", menu: "Edit", keys: "CommandOrControl+Shift+Z" },
  { id: "edit.addLayer", label: "Add a layer inward of this one", menu: "Edit", keys: "Alt+Insert", startsGroup: true },
  { id: "edit.removeLayer", label: "Remove this layer", menu: "Edit", keys: "Alt+Delete" },
  { id: "edit.moveLayerOut", label: "Move this layer outward", menu: "Edit", keys: "Alt+Up" },
  { id: "edit.moveLayerIn", label: "Move this layer inward", menu: "Edit", keys: "Alt+Down" },
  {
    id: "edit.duplicateOption",
    label: "Copy this option",
    menu: "Edit",
    keys: "CommandOrControl+D",
    startsGroup: true,
  },
  { id: "edit.removeOption", label: "Remove this option", menu: "Edit" },
  { id: "edit.moveOptionForward", label: "Move this option forward", menu: "Edit", keys: "Alt+Shift+Left" },
  { id: "edit.moveOptionBack", label: "Move this option back", menu: "Edit", keys: "Alt+Shift+Right" },

  { id: "sheet.wall", label: "Wall", menu: "Sheet", keys: "CommandOrControl+1" },
  { id: "sheet.exposure", label: "Exposure", menu: "Sheet", keys: "CommandOrControl+2" },
  { id: "sheet.year", label: "Year", menu: "Sheet", keys: "CommandOrControl+3" },
  { id: "sheet.sideBySide", label: "Side by Side", menu: "Sheet", keys: "CommandOrControl+4" },
  { id: "sheet.questions", label: "Questions", menu: "Sheet", keys: "CommandOrControl+5" },
  { id: "sheet.report", label: "Report", menu: "Sheet", keys: "CommandOrControl+6" },
  { id: "sheet.nextPane", label: "Next pane", menu: "Sheet", keys: "F6", startsGroup: true },
  { id: "sheet.previousPane", label: "Previous pane", menu: "Sheet", keys: "Shift+F6" },

  { id: "run.now", label: "Run again", menu: "Run", keys: "F5" },
  { id: "run.stop", label: "Stop the run", menu: "Run", keys: "Escape" },

  { id: "view.unitsInchPound", label: "Inch-pound units", menu: "View" },
  { id: "view.unitsMetric", label: "Metric units", menu: "View" },
  { id: "view.unitsBoth", label: "Both units", menu: "View" },
  { id: "view.light", label: "Light paper", menu: "View", startsGroup: true },
  { id: "view.dark", label: "Dark paper", menu: "View" },
  { id: "view.system", label: "Paper as the system has it", menu: "View" },

  { id: "help.keys", label: "Keys", menu: "Help", keys: "F1" },
  { id: "help.words", label: "Words and sources", menu: "Help" },
  { id: "help.about", label: "About Wallyear", menu: "Help" },
] as const satisfies readonly Command[];

export type CommandId = (typeof commands)[number]["id"];

export const isCommandId = (id: string): id is CommandId => commands.some((command) => command.id === id);
