import type { Issue } from "../issue.ts";

/** A text without byte-order mark and with line feeds only at line ends, or why it is no text. */
export function plainText(name: string, text: string): { readonly text: string } | { readonly issue: Issue } {
  const bare = text.charCodeAt(0) === 0xfeff ? text.slice(1) : text;
  if (bare.trim().length === 0)
    return { issue: error(name, "The file is empty.", "Choose a weather file with hourly rows.") };
  const sample = bare.slice(0, 20_000);
  let strange = 0;
  for (let k = 0; k < sample.length; k++) {
    const code = sample.charCodeAt(k);
    if (code === 0 || code === 0xfffd || (code < 32 && code !== 9 && code !== 10 && code !== 13)) strange++;
  }
  if (strange > sample.length / 100)
    return {
      issue: error(
        name,
        "The file is not plain text (it may be zipped, a spreadsheet, or saved as UTF-16).",
        "Unpack it, or save it as plain text (CSV, UTF-8).",
      ),
    };
  return { text: bare.includes("\n") ? bare : bare.replaceAll("\r", "\n") };
}

const error = (path: string, message: string, remedy: string): Issue => ({ path, message, remedy, severity: "error" });

export { error as readerError };

/** The line that starts at `from`, without its end, and where the next starts. */
export function lineAt(text: string, from: number): { readonly end: number; readonly next: number } {
  let end = text.indexOf("\n", from);
  if (end < 0) end = text.length;
  return { end: end > from && text.charCodeAt(end - 1) === 13 ? end - 1 : end, next: end + 1 };
}
