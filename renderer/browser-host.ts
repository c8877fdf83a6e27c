import type { HostDocument, WallyearHost } from "../electron/shared/index.ts";

const keys = { journal: "wallyear.journal", recent: "wallyear.recent", document: "wallyear.document." };
const maximumRecent = 6;

interface RecentEntry {
  readonly handle: string;
  readonly name: string;
}

/** Asks for one file; null if the user thinks better of it. */
function pickFile(accept: string): Promise<{ name: string; text: string } | null> {
  return new Promise((resolve, reject) => {
    const input = document.createElement("input");
    input.type = "file";
    input.accept = accept;
    input.addEventListener("cancel", () => resolve(null));
    input.addEventListener("change", () => {
      const file = input.files?.[0];
      if (!file) return resolve(null);
      file.text().then(
        (text) => resolve({ name: file.name, text }),
        () => reject(new Error(`${file.name} could not be read. Choose it again, or copy it to another folder.`)),
      );
    });
    input.click();
  });
}

function download(name: string, text: string, type: string): void {
  const url = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement("a");
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

function isRecentEntry(value: unknown): value is RecentEntry {
  if (typeof value !== "object" || value === null) return false;
  const { handle, name } = value as Record<string, unknown>;
  return typeof handle === "string" && typeof name === "string";
}

function readRecent(): RecentEntry[] {
  try {
    const read: unknown = JSON.parse(localStorage.getItem(keys.recent) ?? "[]");
    return Array.isArray(read) ? read.filter(isRecentEntry) : [];
  } catch {
    return [];
  }
}

/** Keeps a copy of a document under a handle. A full storage loses the recent list, never the document: it was downloaded. */
function remember(entry: RecentEntry, text: string): void {
  const all = [entry, ...readRecent().filter((other) => other.name !== entry.name && other.handle !== entry.handle)];
  try {
    for (const dropped of all.slice(maximumRecent)) localStorage.removeItem(keys.document + dropped.handle);
    localStorage.setItem(keys.document + entry.handle, text);
    localStorage.setItem(keys.recent, JSON.stringify(all.slice(0, maximumRecent)));
  } catch {
    localStorage.removeItem(keys.document + entry.handle);
  }
}

/** The same services in a plain browser: file pickers, downloads, local storage, the print dialog. */
export function browserHost(): WallyearHost {
  let dirty = false;
  window.addEventListener("beforeunload", (event) => {
    if (dirty) event.preventDefault();
  });
  const newHandle = (): string => crypto.randomUUID();

  return {
    kind: "browser",

    async openProject(): Promise<HostDocument | null> {
      const picked = await pickFile(".json,application/json");
      if (!picked) return null;
      const handle = newHandle();
      remember({ handle, name: picked.name }, picked.text);
      return { handle, ...picked };
    },

    saveProject(handle, text, saveAs) {
      const known = handle !== null && !saveAs ? readRecent().find((entry) => entry.handle === handle) : undefined;
      const name = known?.name ?? suggestedName(text);
      const entry = { handle: known?.handle ?? newHandle(), name };
      download(name, text, "application/json");
      remember(entry, text);
      return Promise.resolve(entry);
    },

    openWeather: () => pickFile(".epw,.csv,.txt,text/csv,text/plain"),

    saveText(name, text, type) {
      download(name, text, type);
      return Promise.resolve(true);
    },

    savePdf(name) {
      const title = document.title;
      document.title = name.replace(/\.pdf$/i, "");
      window.print();
      document.title = title;
      return Promise.resolve(true);
    },

    recent: () =>
      Promise.resolve(readRecent().filter((entry) => localStorage.getItem(keys.document + entry.handle) !== null)),

    openRecent(handle) {
      const entry = readRecent().find((candidate) => candidate.handle === handle);
      const text = localStorage.getItem(keys.document + handle);
      return Promise.resolve(entry && text !== null ? { ...entry, text } : null);
    },

    journal: {
      write(text) {
        try {
          localStorage.setItem(keys.journal, text);
          return Promise.resolve();
        } catch {
          return Promise.reject(
            new Error("The browser's storage is full, so unsaved work is not kept. Save the project to a file."),
          );
        }
      },
      read: () => Promise.resolve(localStorage.getItem(keys.journal)),
      clear() {
        localStorage.removeItem(keys.journal);
        return Promise.resolve();
      },
    },

    setDirty(isDirty, title) {
      dirty = isDirty;
      document.title = `${isDirty ? "• " : ""}${title} · Wallyear`;
    },

    setProgress: () => undefined,
    onCommand: () => () => undefined,
    onDocument: () => () => undefined,
  };
}

function suggestedName(text: string): string {
  let name = "";
  try {
    const read: unknown = JSON.parse(text);
    if (typeof read === "object" && read !== null && "name" in read && typeof read.name === "string") name = read.name;
  } catch {
    // The name falls back below.
  }
  const plain = name
    .trim()
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-|-$/g, "");
  return `${plain || "wall"}.wallyear.json`;
}
