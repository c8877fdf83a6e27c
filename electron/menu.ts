import type { MenuItemConstructorOptions } from "electron";
import { commands, menuNames, type Command, type CommandId, type MenuName } from "./shared/commands.ts";

interface Wiring {
  readonly isMac: boolean;
  readonly send: (command: CommandId) => void;
  readonly recent: readonly { readonly name: string; readonly open: () => void }[];
}

/** Items that the system gives, where people expect them. */
function systemItems(menu: MenuName, isMac: boolean): MenuItemConstructorOptions[] {
  if (menu === "Edit")
    return [{ type: "separator" }, { role: "cut" }, { role: "copy" }, { role: "paste" }, { role: "selectAll" }];
  if (menu === "View")
    return [
      { type: "separator" },
      { role: "resetZoom" },
      { role: "zoomIn" },
      { role: "zoomOut" },
      { role: "togglefullscreen" },
    ];
  if (menu === "File") return [{ type: "separator" }, isMac ? { role: "close" } : { role: "quit" }];
  return [];
}

/** The menu bar, read from the command table. */
export function menuTemplate({ isMac, send, recent }: Wiring): MenuItemConstructorOptions[] {
  const item = (command: Command & { id: CommandId }): MenuItemConstructorOptions[] => [
    ...(command.startsGroup === true ? [{ type: "separator" } as const] : []),
    {
      id: command.id,
      label: command.label,
      ...(command.keys === undefined ? {} : { accelerator: command.keys }),
      // The window hears the keys itself, on the desktop as in a browser; heard twice, an undo would undo two steps.
      registerAccelerator: false,
      click: () => send(command.id),
    },
    ...(command.id === "file.open" && recent.length > 0
      ? [
          {
            label: "Open recent",
            submenu: recent.map((document) => ({ label: document.name, click: document.open })),
          },
        ]
      : []),
  ];
  const all: readonly (Command & { id: CommandId })[] = commands;
  return [
    ...(isMac ? [{ role: "appMenu" } as const] : []),
    ...menuNames.map((menu) => ({
      label: menu,
      submenu: [...all.filter((command) => command.menu === menu).flatMap(item), ...systemItems(menu, isMac)],
    })),
  ];
}
