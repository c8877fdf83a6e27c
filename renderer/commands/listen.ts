import { commands } from "../../electron/shared/index.ts";
import { useViewStore } from "../state/index.ts";
import { matchesKeys } from "./keys.ts";
import { canRun, runCommand } from "./run-command.ts";

const typesText = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  (target.isContentEditable ||
    target instanceof HTMLTextAreaElement ||
    target instanceof HTMLSelectElement ||
    (target instanceof HTMLInputElement && !["radio", "checkbox", "button", "range"].includes(target.type)));

/** In a text field these mean what they always mean there. */
const fieldKeeps = new Set(["edit.undo", "edit.redo", "run.stop"]);

/** Keys that work besides the table: a browser keeps Ctrl+1 and Ctrl+N to itself. */
const extraKeys: readonly (readonly [string, string])[] = [
  ["1", "sheet.wall"],
  ["2", "sheet.exposure"],
  ["3", "sheet.year"],
  ["4", "sheet.sideBySide"],
  ["5", "sheet.questions"],
  ["6", "sheet.report"],
  ["CommandOrControl+Y", "edit.redo"],
  ["CommandOrControl+Enter", "run.now"],
];

/** Turns key presses into commands. Returns the function that stops listening. */
export function listenForKeys(): () => void {
  const onKey = (event: KeyboardEvent): void => {
    if (event.defaultPrevented || useViewStore.getState().openDialog !== null) return;
    const inField = typesText(event.target);
    const table = commands.flatMap((command): [string, string][] =>
      "keys" in command ? [[command.keys, command.id]] : [],
    );
    const extra = event.key === "?" && !inField ? "help.keys" : undefined;
    const id =
      extra ??
      [...table, ...extraKeys.filter(([keys]) => !inField || keys.includes("+"))].find(([keys]) =>
        matchesKeys(event, keys),
      )?.[1];
    if (!id || (inField && fieldKeeps.has(id)) || !canRun(id)) return;
    event.preventDefault();
    runCommand(id);
  };
  window.addEventListener("keydown", onKey);
  return () => window.removeEventListener("keydown", onKey);
}
