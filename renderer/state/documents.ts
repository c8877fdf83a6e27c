import { host } from "../host.ts";
import { create } from "zustand";
import type { HostDocument } from "../../electron/shared/index.ts";
import { openProject, writeProject, type Project } from "../../solver/index.ts";
import { keepFile } from "./files-store.ts";
import { openingProject } from "./opening-project.ts";
import { sentence } from "./issue-words.ts";
import { applyEdit, replaceProject, useProjectStore } from "./project-store.ts";
import { view } from "./view-store.ts";

interface DocumentState {
  readonly handle: string | null;
  /** File name; null for what has never been saved. */
  readonly name: string | null;
  /** The project as it is on disk, or as it was opened. */
  readonly saved: Project;
  /** A newer program wrote it: it may be looked at and saved under another name. */
  readonly readOnly: boolean;
}

export const useDocumentStore = create<DocumentState>()(() => ({
  handle: null,
  name: null,
  saved: useProjectStore.getState().project,
  readOnly: false,
}));

export const isDirty = (): boolean => useProjectStore.getState().project !== useDocumentStore.getState().saved;

/** Shows a document's project, or says why it cannot be shown; the one on the board then stays. */
export function showDocument(document: HostDocument): void {
  const read = openProject(document.text);
  if (!read.ok) {
    const [first, ...others] = read.issues.filter((issue) => issue.severity === "error");
    const more = others.length > 0 ? ` ${others.length} more to put right.` : "";
    view({ notice: `${document.name} was not opened. ${sentence(first)}${more}` });
    return;
  }
  const { project, readOnly, reason } = read.value;
  show(project, { handle: document.handle || null, name: document.name, readOnly });
  if (readOnly) view({ notice: reason ?? "This file opens for reading only." });
}

function show(project: Project, document: Omit<DocumentState, "saved">): void {
  replaceProject(project);
  useDocumentStore.setState({ ...document, saved: project });
  view({ option: project.options[0]!.id, path: project.options[0]!.paths[0]!.id, layer: null, notice: null });
}

export async function openDocument(): Promise<void> {
  await orSay(async () => {
    const document = await host.openProject();
    if (document) showDocument(document);
  });
}

export async function openRecent(handle: string): Promise<void> {
  await orSay(async () => {
    const document = await host.openRecent(handle);
    if (document) showDocument(document);
    else view({ notice: "That document is no longer there. Open it from where it was moved to." });
  });
}

export async function saveDocument(saveAs: boolean): Promise<void> {
  await orSay(async () => {
    const { project } = useProjectStore.getState();
    const { handle, readOnly } = useDocumentStore.getState();
    const reference = await host.saveProject(handle, writeProject(project), saveAs || readOnly);
    if (!reference) return;
    useDocumentStore.setState({ ...reference, saved: project, readOnly: false });
    view({ notice: `Saved as ${reference.name}.` });
  });
}

/** Lets the user choose a weather file and puts it in the place of the project's weather. */
export async function chooseWeather(): Promise<void> {
  await orSay(async () => {
    const file = await host.openWeather();
    if (file) putWeather(file.name, file.text);
  });
}

export function putWeather(name: string, text: string): void {
  keepFile(name, text);
  applyEdit(`Use the weather of ${name}`, (project) =>
    project.site ? { ...project, site: { ...project.site, weather: { file: name } } } : project,
  );
  view({ sheet: "exposure" });
}

export function openDemo(): void {
  show(openingProject(), { handle: null, name: null, readOnly: false });
}

export function newWall(): void {
  view({ openDialog: "newWall" });
}

export function showNew(project: Project): void {
  show(project, { handle: null, name: null, readOnly: false });
}

/** Files dropped on the window: a project is opened, anything else is taken for weather. */
export function listenForDrops(): void {
  window.addEventListener("dragover", (event) => event.preventDefault());
  window.addEventListener("drop", (event) => {
    const file = event.dataTransfer?.files[0];
    if (!file || event.defaultPrevented) return;
    event.preventDefault();
    void orSay(async () => {
      const text = await file.text();
      if (/\.json$/i.test(file.name)) showDocument({ handle: "", name: file.name, text });
      else putWeather(file.name, text);
    });
  });
}

async function orSay(action: () => Promise<void>): Promise<void> {
  try {
    await action();
  } catch (error) {
    view({ notice: error instanceof Error ? error.message : String(error) });
  }
}
