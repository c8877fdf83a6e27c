/** A material's name as it stands inside a sentence: without what follows the first comma or bracket, small unless an abbreviation. */
export function plainName(name: string): string {
  const short = name.replace(/, .*| \(.*/, "");
  return /^[A-Z][A-Z]/.test(short) ? short : short.charAt(0).toLowerCase() + short.slice(1);
}
