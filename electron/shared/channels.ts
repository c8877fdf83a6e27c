/** Names of everything that may cross between window and main process. The preload knows these and nothing else. */
export const channels = {
  openProject: "project.open",
  saveProject: "project.save",
  openWeather: "weather.open",
  saveText: "text.save",
  savePdf: "pdf.save",
  recent: "recent.list",
  openRecent: "recent.open",
  journalWrite: "journal.write",
  journalRead: "journal.read",
  journalClear: "journal.clear",
  dirty: "window.dirty",
  progress: "window.progress",
  /** The window listens now; documents that waited for it may be sent. */
  listening: "window.listening",
} as const;

export type Channel = (typeof channels)[keyof typeof channels];

/** Sent by the main process, never asked for. */
export const notices = { command: "notice.command", document: "notice.document" } as const;

/** What comes back over a channel: Electron would wrap a thrown error into words that nobody should read. */
export type Reply = { readonly ok: true; readonly value: unknown } | { readonly ok: false; readonly message: string };
