import { host } from "../host.ts";
import { openProject, writeProject } from "../../solver/index.ts";
import { isDirty, useDocumentStore } from "./documents.ts";
import { replaceProject, useProjectStore } from "./project-store.ts";
import { view } from "./view-store.ts";

interface JournalEntry {
  readonly format: "wallyear-unsaved";
  /** File name of the document; null for one that was never saved. */
  readonly name: string | null;
  readonly text: string;
}

const settle_ms = 500;
let timer: ReturnType<typeof setTimeout> | undefined;
let told = false;

/** Keeps unsaved work outside of its document, a moment after each edit. */
export function noteUnsavedWork(): void {
  clearTimeout(timer);
  timer = setTimeout(() => void write(), settle_ms);
}

async function write(): Promise<void> {
  try {
    if (!isDirty()) return await host.journal.clear();
    const { name } = useDocumentStore.getState();
    const text = writeProject(useProjectStore.getState().project);
    const entry: JournalEntry = { format: "wallyear-unsaved", name, text };
    await host.journal.write(JSON.stringify(entry));
    told = false;
  } catch (error) {
    // Said once, not after every keystroke.
    if (!told) view({ notice: error instanceof Error ? error.message : String(error) });
    told = true;
  }
}

/** Brings back what a window that ended without saving left behind. */
export async function bringBackUnsavedWork(): Promise<void> {
  let kept: string | null;
  try {
    kept = await host.journal.read();
  } catch {
    kept = null;
  }
  if (kept === null) return;
  const entry = readEntry(kept);
  const opened = entry ? openProject(entry.text) : null;
  if (!entry || !opened?.ok) {
    view({ notice: "Unsaved work was found, but it was damaged and could not be brought back." });
    await host.journal.clear().catch(() => undefined);
    return;
  }
  const { project } = opened.value;
  replaceProject(project);
  useDocumentStore.setState({ handle: null, name: entry.name, readOnly: opened.value.readOnly, saved: { ...project } });
  view({
    option: project.options[0]!.id,
    path: project.options[0]!.paths[0]!.id,
    layer: null,
    notice: `Unsaved work on ${entry.name ?? project.name} was brought back. Save it, or open something else to leave it.`,
  });
}

function readEntry(text: string): JournalEntry | null {
  try {
    const read: unknown = JSON.parse(text);
    if (typeof read !== "object" || read === null) return null;
    const { format, name, text: inner } = read as Record<string, unknown>;
    if (format !== "wallyear-unsaved" || typeof inner !== "string") return null;
    return { format, name: typeof name === "string" ? name : null, text: inner };
  } catch {
    return null;
  }
}
