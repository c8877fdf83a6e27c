import { readFile, stat } from "node:fs/promises";
import type { Checked } from "../../climate/index.ts";

const largestFile_bytes = 64 * 1024 * 1024;

const reasons: Readonly<Record<string, readonly [message: string, remedy: string]>> = {
  ENOENT: ["There is no such file.", "Check the name; paths are relative to the folder you stand in."],
  EACCES: ["This account may not read the file.", "Change its rights, or copy it to a folder of yours."],
  EISDIR: ["This is a folder.", "Name a file in it."],
  ENOTDIR: ["A part of this path is a file and not a folder.", "Check the path."],
};

/** The text of a file, or why it could not be read. `path` is what the user wrote; `place` names where it was written. */
export async function readInput(path: string, place: string): Promise<Checked<string>> {
  const refuse = (message: string, remedy: string): Checked<string> => ({
    ok: false,
    issues: [{ path: place, message: `${path}: ${message}`, remedy, severity: "error" }],
  });
  try {
    const facts = await stat(path);
    if (facts.isDirectory()) return refuse(...reasons["EISDIR"]!);
    if (facts.size > largestFile_bytes)
      return refuse(`The file has ${Math.round(facts.size / 1024 / 1024)} MB.`, "Files of up to 64 MB are read.");
    return { ok: true, value: await readFile(path, "utf8"), issues: [] };
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code ?? "";
    const [message, remedy] = reasons[code] ?? [
      `The system reports ${code || "a fault"}.`,
      "Copy the file elsewhere and try again.",
    ];
    return refuse(message, remedy);
  }
}
