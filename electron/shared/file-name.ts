/** Characters that some file system reserves, or that could lead into another folder. */
const reserved = /[\\/:*?"<>|\u0000-\u001f\u007f]/g;

/** True for a plain file name that every desktop's file system takes: no folder, no reserved character, no leading dot. */
export function isTidyFileName(name: string): boolean {
  return name.length > 0 && name.length <= 120 && name === tidyFileName(name);
}

/** Makes a file name of any text: "Wall 2x6 / zone 6.csv" becomes "Wall 2x6 - zone 6.csv". */
export function tidyFileName(text: string): string {
  const tidy = text
    .replace(reserved, "-")
    .replace(/^[\s.]+/, "")
    .replace(/[\s.]+$/, "")
    .slice(0, 120)
    .trimEnd();
  return tidy === "" ? "Untitled" : tidy;
}
