import { contextBridge, ipcRenderer } from "electron";
import { channels, notices, type Channel, type Reply } from "./shared/channels.ts";
import { tidyFileName } from "./shared/file-name.ts";
import type { HostDocument, HostReference, WallyearHost } from "./shared/host.ts";

/** Asks the main process; its refusals and failures become rejections with a sentence fit to be shown. */
async function ask<T>(channel: Channel, payload?: unknown): Promise<T> {
  const reply = (await ipcRenderer.invoke(channel, payload)) as Reply;
  if (!reply.ok) throw new Error(reply.message);
  return reply.value as T;
}

/** For what the window only tells: a failure is in the main process's log, and there is nobody to show it to. */
const tell = (channel: Channel, payload?: unknown): void => void ask(channel, payload).catch(() => undefined);

/** The Electron event stays on this side: it would hand the page a way to send on any channel. */
function listen<T>(notice: string, listener: (value: T) => void): () => void {
  const relay = (_event: unknown, value: T): void => listener(value);
  ipcRenderer.on(notice, relay);
  return () => void ipcRenderer.removeListener(notice, relay);
}

/** The name of the project in the text, for the save dialog. */
function nameIn(text: string): string {
  try {
    const name = (JSON.parse(text) as { name?: unknown }).name;
    return typeof name === "string" ? name : "";
  } catch {
    return "";
  }
}

const host: WallyearHost = {
  kind: "desktop",
  openProject: () => ask<HostDocument | null>(channels.openProject),
  saveProject: (handle, text, saveAs) =>
    ask<HostReference | null>(channels.saveProject, {
      handle,
      text,
      saveAs,
      suggestedName: tidyFileName(`${tidyFileName(nameIn(text)).slice(0, 100)}.wallyear.json`),
    }),
  openWeather: () => ask<{ name: string; text: string } | null>(channels.openWeather),
  saveText: (suggestedName, text, type) =>
    ask<boolean>(channels.saveText, { suggestedName: tidyFileName(suggestedName), text, type }),
  savePdf: (suggestedName) => ask<boolean>(channels.savePdf, { suggestedName: tidyFileName(suggestedName) }),
  recent: () => ask<readonly HostReference[]>(channels.recent),
  openRecent: (handle) => ask<HostDocument | null>(channels.openRecent, { handle }),
  journal: {
    write: (text) => ask<void>(channels.journalWrite, { text }),
    read: () => ask<string | null>(channels.journalRead),
    clear: () => ask<void>(channels.journalClear),
  },
  setDirty: (dirty, title) => tell(channels.dirty, { dirty, title: title.slice(0, 200) }),
  setProgress: (fraction) => tell(channels.progress, { fraction }),
  onCommand: (listener) => listen<string>(notices.command, listener),
  onDocument: (listener) => {
    const stop = listen<HostDocument>(notices.document, listener);
    tell(channels.listening);
    return stop;
  },
};

contextBridge.exposeInMainWorld("wallyearHost", host);
