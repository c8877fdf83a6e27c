import { create } from "zustand";
import { solverPool } from "../solver-pool/index.ts";

/** Texts of files that the project names: weather years and logged rooms. */
interface FilesState {
  readonly texts: Readonly<Record<string, string>>;
  /** Goes up with each text kept, so that a result of the text before is never taken for current. */
  readonly version: number;
}

export const useFilesStore = create<FilesState>()(() => ({ texts: {}, version: 0 }));

export function keepFile(name: string, text: string): void {
  solverPool.keepFile(name, text);
  useFilesStore.setState(({ texts, version }) => ({ texts: { ...texts, [name]: text }, version: version + 1 }));
}
