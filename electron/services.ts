import type { BrowserWindow } from "electron";
import type { CloseGuard } from "./close-guard.ts";
import type { Documents } from "./documents.ts";
import type { Handle } from "./handle.ts";
import { HostFailure } from "./host-failure.ts";
import type { Journal } from "./journal.ts";
import { channels } from "./shared/channels.ts";

interface Wiring {
  readonly handle: Handle;
  readonly window: BrowserWindow;
  readonly documents: Documents;
  readonly journal: Journal;
  readonly closeGuard: CloseGuard;
  /** The window listens for documents from now on. */
  readonly onListening: () => void;
}

/** Puts every channel in place. */
export function provideServices({ handle, window, documents, journal, closeGuard, onListening }: Wiring): void {
  handle(channels.openProject, () => documents.open(window));
  handle(channels.openRecent, ({ handle: document }) => documents.openHandle(document));
  handle(channels.recent, () => documents.references());
  handle(channels.openWeather, () => documents.openWeather(window));
  handle(channels.saveProject, async (given) => {
    try {
      const saved = await documents.save(window, given);
      if (saved === null) closeGuard.staysOpen();
      return saved;
    } catch (error) {
      closeGuard.staysOpen();
      throw error;
    }
  });
  handle(channels.saveText, ({ suggestedName, text }) => documents.export(window, suggestedName, text));
  handle(channels.savePdf, async ({ suggestedName }) => {
    let pdf: Uint8Array;
    try {
      pdf = await window.webContents.printToPDF({ printBackground: true, preferCSSPageSize: true });
    } catch {
      throw new HostFailure("The report could not be laid out for print. Try again, or save it as HTML.");
    }
    return documents.export(window, suggestedName, pdf);
  });
  handle(channels.journalWrite, ({ text }) => journal.write(text));
  handle(channels.journalRead, () => journal.read());
  handle(channels.journalClear, () => journal.clear());
  handle(channels.dirty, ({ dirty, title }) => {
    window.setTitle(title === "" ? "Wallyear" : `${dirty ? "• " : ""}${title} – Wallyear`);
    window.setDocumentEdited(dirty);
    closeGuard.setDirty(dirty, title);
  });
  handle(channels.progress, ({ fraction }) => window.setProgressBar(fraction ?? -1));
  handle(channels.listening, () => onListening());
}
