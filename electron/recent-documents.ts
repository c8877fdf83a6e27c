import { access, readFile } from "node:fs/promises";
import { z } from "zod";
import { writeWhole } from "./save-file.ts";

const schema = z.array(z.string().max(4096)).max(50);
const kept = 10;

export interface RecentDocuments {
  /** Paths, latest first; those that no longer exist are left out. */
  list(): Promise<string[]>;
  add(path: string): Promise<void>;
}

/** Paths of the last documents, in a small file of the program's own folder. A damaged list starts anew. */
export function openRecentDocuments(path: string): RecentDocuments {
  const read = async (): Promise<string[]> => {
    try {
      return schema.parse(JSON.parse(await readFile(path, "utf8")));
    } catch {
      return [];
    }
  };
  const exists = (document: string): Promise<boolean> =>
    access(document).then(
      () => true,
      () => false,
    );
  return {
    async list() {
      const paths = await read();
      const there = await Promise.all(paths.map(exists));
      return paths.filter((_, index) => there[index]).slice(0, kept);
    },
    async add(document) {
      const paths = [document, ...(await read()).filter((other) => other !== document)].slice(0, kept);
      await writeWhole(path, JSON.stringify(paths, null, 2));
    },
  };
}
