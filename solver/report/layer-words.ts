/** A material's name as it is said on paper: without brackets, sizes and grades after the second comma. */
export function shortName(name: string): string {
  const parts = name
    .replace(/\([^)]*\)/g, "")
    .split(",")
    .map((part) => part.trim())
    .filter((part) => part !== "" && !/^[\d.]+ ?mm/.test(part));
  return parts.slice(0, 2).join(", ");
}

/** The same inside a sentence: a capital goes unless it begins an abbreviation. */
export function inSentence(name: string): string {
  const short = shortName(name).split(",")[0]!;
  return /^[A-Z][a-z]/.test(short) ? short.charAt(0).toLowerCase() + short.slice(1) : short;
}
