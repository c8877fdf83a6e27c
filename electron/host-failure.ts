import { basename } from "node:path";

/** Something the host could not do, in a sentence with a remedy, fit to be shown. */
export class HostFailure extends Error {
  override readonly name = "HostFailure";
}

const remedies: Readonly<Record<string, string>> = {
  ENOENT: "it is no longer there. Choose it again.",
  EACCES: "this account may not use it. Choose another folder, or change its rights.",
  EPERM: "this account may not use it, or another program holds it. Close that program and try again.",
  EBUSY: "another program holds it. Close that program and try again.",
  EROFS: "the disk is read-only. Choose another folder.",
  ENOSPC: "the disk is full. Free some space and try again.",
  EDQUOT: "your share of the disk is full. Free some space and try again.",
  EISDIR: "it is a folder. Choose a file.",
  ENAMETOOLONG: "the name is too long. Choose a shorter one.",
};

/** Turns a file system error into the sentence that the user sees; the folder is left out, the window does not know it. */
export function fileFailure(doing: "open" | "save", path: string, error: unknown): HostFailure {
  const code = (error as NodeJS.ErrnoException | null)?.code ?? "";
  const missing = code === "ENOENT" && doing === "save" ? "its folder is no longer there. Choose another one." : null;
  const why = missing ?? remedies[code] ?? `the system reports ${code || "an unknown fault"}. Try another folder.`;
  return new HostFailure(`${basename(path)} could not be ${doing === "open" ? "opened" : "saved"}: ${why}`);
}
