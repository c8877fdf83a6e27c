import { createWriteStream } from "node:fs";
import { mkdir } from "node:fs/promises";
import { join } from "node:path";
import { Readable } from "node:stream";
import { pipeline } from "node:stream/promises";
import type { RunResult } from "../../../solver/index.ts";
import { csvRows } from "./csv.ts";

/** Writes `A-bay.csv` and so on into the folder, which is made if need be. Gives the paths written. */
export async function writeCsv(folder: string, results: readonly RunResult[]): Promise<string[]> {
  await mkdir(folder, { recursive: true });
  const written: string[] = [];
  for (const result of results) {
    const path = join(folder, `${result.option}-${result.path}.csv`);
    await pipeline(Readable.from(csvRows(result)), createWriteStream(path));
    written.push(path);
  }
  return written;
}
