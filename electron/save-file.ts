import { copyFile, rename, rm } from "node:fs/promises";
import writeFileAtomic from "write-file-atomic";

/** Another program (a virus scanner, a backup) may hold the file for a moment. */
const passing = new Set(["EPERM", "EBUSY", "EACCES"]);
const waits_ms = [20, 60, 180, 500];

async function patiently<T>(work: () => Promise<T>): Promise<T> {
  for (const wait of waits_ms) {
    try {
      return await work();
    } catch (error) {
      if (!passing.has((error as NodeJS.ErrnoException).code ?? "") || process.platform !== "win32") throw error;
      await new Promise((again) => setTimeout(again, wait));
    }
  }
  return work();
}

/** The name under which the version before the last save is kept, beside the file. */
export const previousOf = (path: string): string => `${path}.previous`;

/** Writes a file whole or not at all: to a temporary file beside it, flushed, then renamed over it. */
export const writeWhole = (path: string, content: string | Uint8Array): Promise<void> =>
  patiently(() => writeFileAtomic(path, typeof content === "string" ? content : Buffer.from(content), { fsync: true }));

/**
 * Saves a document: the version on the disk becomes `NAME.previous`, then the new text takes its place. At no moment is
 * either file half-written; a kill in between leaves the old document and the same old text as its previous version.
 */
export async function saveWithPrevious(path: string, text: string): Promise<void> {
  const copy = `${path}.${process.pid}.copy`;
  try {
    await copyFile(path, copy);
    await patiently(() => rename(copy, previousOf(path)));
  } catch (error) {
    await rm(copy, { force: true });
    if ((error as NodeJS.ErrnoException).code !== "ENOENT") throw error;
  }
  await writeWhole(path, text);
}
