import { app } from "electron";
import { registerAppScheme } from "./app-scheme.ts";
import { startDesktop } from "./desktop.ts";
import { IncomingDocuments, projectIn } from "./incoming-documents.ts";

const incoming = new IncomingDocuments();

registerAppScheme();

if (app.requestSingleInstanceLock()) {
  incoming.take(projectIn(process.argv, process.cwd()));
  app.on("second-instance", (_event, words, folder) => incoming.take(projectIn(words, folder)));
  app.on("open-file", (event, path) => {
    event.preventDefault();
    incoming.take(path);
  });
  // Not awaited: Electron becomes ready only after this module has loaded, so waiting here would wait for ever.
  void app.whenReady().then(() => startDesktop(incoming));
} else {
  app.quit();
}
