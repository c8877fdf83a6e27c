import { create } from "zustand";
import { sha256Hex } from "../../climate/index.ts";
import type { Project } from "../../solver/index.ts";
import { solverPool } from "../solver-pool/index.ts";

import { cachedFile, cacheFile } from "./file-cache.ts";

/** Texts of files that the project names: weather years and logged rooms. */
interface FilesState {
  readonly texts: Readonly<Record<string, string>>;
  /** SHA-256 of each text, so that a result of the text before is never taken for current. */
  readonly hashes: Readonly<Record<string, string>>;
}

export const useFilesStore = create<FilesState>()(() => ({ texts: {}, hashes: {} }));

/** Names of the files that a project needs. */
function namedFiles(project: Project): readonly string[] {
  const names = [project.site?.weather.file, project.indoor?.method === "logger" ? project.indoor.file : undefined];
  return names.filter((name) => typeof name === "string");
}

/** What the files of a project add to the key of its results. */
export const filesMark = (project: Project): string =>
  namedFiles(project)
    .map((name) => useFilesStore.getState().hashes[name] ?? `no ${name}`)
    .join(" ");

/** Brings back the files that a project names, where copies of them were kept. */
export async function recallFiles(project: Project): Promise<void> {
  for (const name of namedFiles(project)) {
    if (name in useFilesStore.getState().texts) continue;
    const text = await cachedFile(name);
    if (text !== null) keepFile(name, text);
  }
}

export function keepFile(name: string, text: string): void {
  solverPool.keepFile(name, text);
  void cacheFile(name, text);
  const hash = sha256Hex(text);
  useFilesStore.setState(({ texts, hashes }) => ({
    texts: { ...texts, [name]: text },
    hashes: { ...hashes, [name]: hash },
  }));
}
