import { appendFileSync, mkdirSync, renameSync, statSync } from "node:fs";
import { dirname } from "node:path";

const longestLog_bytes = 1_000_000;

export type Log = (line: string) => void;

/** A log file of bounded size with one older part beside it. Never throws: a full disk must not stop the program. */
export function openLog(path: string, now: () => Date = () => new Date()): Log {
  return (line) => {
    const entry = `${now().toISOString()} ${line.replaceAll(/[\r\n]+/g, " ").slice(0, 2000)}\n`;
    process.stderr.write(entry);
    try {
      mkdirSync(dirname(path), { recursive: true });
      const size = statSync(path, { throwIfNoEntry: false })?.size ?? 0;
      if (size > longestLog_bytes) renameSync(path, `${path}.older`);
      appendFileSync(path, entry);
    } catch {
      // It was written to standard error.
    }
  };
}
