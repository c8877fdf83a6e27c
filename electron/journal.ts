import { createHash } from "node:crypto";
import { readFile, rename, rm } from "node:fs/promises";
import type { Log } from "./log.ts";
import { writeWhole } from "./save-file.ts";

/** The text of unsaved work, on disk outside of the document. */
export interface Journal {
  write(text: string): Promise<void>;
  /** The text last written; null where there is none, or where it is damaged (it is then set aside and logged). */
  read(): Promise<string | null>;
  clear(): Promise<void>;
}

const digest = (text: string): string => createHash("sha256").update(text).digest("hex");

/** First line: the digest of all that follows. */
export function openJournal(path: string, log: Log): Journal {
  let last: Promise<unknown> = Promise.resolve();
  /** One after the other, so that a clear never overtakes the write before it. */
  const inTurn = <T>(work: () => Promise<T>): Promise<T> => {
    const turn = last.then(work, work);
    last = turn.catch(() => undefined);
    return turn;
  };
  return {
    write: (text) => inTurn(() => writeWhole(path, `${digest(text)}\n${text}`)),
    clear: () => inTurn(() => rm(path, { force: true })),
    read: () =>
      inTurn(async () => {
        let content: string;
        try {
          content = await readFile(path, "utf8");
        } catch (error) {
          if ((error as NodeJS.ErrnoException).code === "ENOENT") return null;
          throw error;
        }
        const end = content.indexOf("\n");
        const text = content.slice(end + 1);
        if (end === 64 && content.slice(0, end) === digest(text)) return text;
        await rename(path, `${path}.damaged`);
        log("The journal of unsaved work is damaged; it was set aside.");
        return null;
      }),
  };
}
