import type { Path, PathKind } from "./project.ts";

/** The trade's word for each kind of path. */
export const pathKindWords: Readonly<Record<PathKind, string>> = {
  studBay: "Stud bay",
  stud: "Stud",
  plate: "Plate",
  header: "Header",
  rimJoist: "Rim joist",
  ledger: "Ledger",
  balcony: "Balcony",
  windowBuck: "Window buck",
  solid: "Solid wall",
  other: "Path",
};

/** The name a path goes by: its own, else the word for its kind. */
export function nameOfPath(path: Pick<Path, "id" | "kind" | "name">): string {
  return path.name ?? (path.kind === "other" ? path.id : pathKindWords[path.kind]);
}

/** A material's name as it stands inside a sentence: without what follows the first comma or bracket, small unless an abbreviation. */
export function inSentence(name: string): string {
  const short = name.replace(/, .*| \(.*/, "");
  return /^[A-Z][A-Z]/.test(short) || /^Douglas/.test(short) ? short : (short[0] ?? "").toLowerCase() + short.slice(1);
}
