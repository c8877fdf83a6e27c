import { basename, join } from "node:path";
import { app, dialog, ipcMain, Menu, session } from "electron";
import { isOwnAddress, serveAppScheme } from "./app-scheme.ts";
import { CloseGuard } from "./close-guard.ts";
import { Documents } from "./documents.ts";
import { guardAllContents, guardSession } from "./guards.ts";
import { handleBy } from "./handle.ts";
import type { IncomingDocuments } from "./incoming-documents.ts";
import { openJournal } from "./journal.ts";
import { openLog } from "./log.ts";
import { menuTemplate } from "./menu.ts";
import { openRecentDocuments } from "./recent-documents.ts";
import { provideServices } from "./services.ts";
import { notices } from "./shared/channels.ts";
import { createWindow } from "./window.ts";

/** Where the built parts lie, seen from the built main. */
const built = (part: string): string => join(import.meta.dirname, "..", part);

/** Everything that happens once Electron is ready. */
export function startDesktop(incoming: IncomingDocuments): void {
  const userData = app.getPath("userData");
  const log = openLog(join(userData, "log.txt"));
  guardAllContents(app, log);
  guardSession(session.defaultSession, log);
  serveAppScheme(built("renderer"));

  const recent = openRecentDocuments(join(userData, "recent.json"));
  const documents = new Documents({
    dialog,
    recent,
    onUse: (path) => {
      app.addRecentDocument(path);
      void showMenu();
    },
  });
  const journal = openJournal(join(userData, "unsaved-work.journal"), log);
  const window = createWindow({ preload: built("preload/preload.cjs"), userData });
  const send = (notice: string, value: unknown): void => {
    if (!window.isDestroyed()) window.webContents.send(notice, value);
  };

  const showMenu = async (): Promise<void> => {
    const paths = await recent.list();
    const template = menuTemplate({
      isMac: process.platform === "darwin",
      send: (command) => send(notices.command, command),
      recent: paths.map((path) => ({ name: basename(path), open: () => incoming.take(path) })),
    });
    Menu.setApplicationMenu(Menu.buildFromTemplate(template));
  };
  void showMenu();

  const closeGuard = new CloseGuard(window, {
    dialog,
    askToSave: () => send(notices.command, "file.save"),
    onDiscard: () => journal.clear(),
  });
  provideServices({
    handle: handleBy({ ipcMain, isOwnAddress, log }),
    window,
    documents,
    journal,
    closeGuard,
    onListening: () =>
      incoming.deliverTo({
        documents,
        send: (document) => send(notices.document, document),
        showFailure: (sentence) => void dialog.showMessageBox(window, { type: "warning", message: sentence }),
      }),
  });

  app.on("second-instance", () => {
    if (window.isMinimized()) window.restore();
    window.focus();
  });
  window.webContents.on("render-process-gone", (_event, details) => {
    log(`The window's process ended: ${details.reason}.`);
    incoming.pause();
    if (details.reason !== "clean-exit") window.webContents.reload();
  });
  app.on("window-all-closed", () => app.quit());
}
