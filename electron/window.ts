import { join } from "node:path";
import { BrowserWindow, screen } from "electron";
import { pageAddress } from "./app-scheme.ts";
import { keepWindowState, reachableBounds, readWindowState, smallestSize } from "./window-state.ts";

/** The program's window: sandboxed, isolated, without Node, on the program's own scheme. */
export function createWindow(folders: { readonly preload: string; readonly userData: string }): BrowserWindow {
  const stateFile = join(folders.userData, "window.json");
  const state = readWindowState(stateFile);
  const window = new BrowserWindow({
    ...reachableBounds(
      state,
      screen.getAllDisplays().map((display) => display.workArea),
    ),
    minWidth: smallestSize.width,
    minHeight: smallestSize.height,
    show: false,
    title: "Wallyear",
    webPreferences: {
      preload: folders.preload,
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      webSecurity: true,
      webviewTag: false,
      // It would fetch word lists.
      spellcheck: false,
      navigateOnDragDrop: false,
      disableDialogs: true,
    },
  });
  if (state?.maximized === true) window.maximize();
  keepWindowState(window, stateFile);
  window.once("ready-to-show", () => window.show());
  // The window's title is the document's; the page's own title would replace it.
  window.on("page-title-updated", (event) => event.preventDefault());
  void window.loadURL(pageAddress);
  return window;
}
