/** Deepest nesting that a project file may have; the format itself needs 12. */
export const deepestNesting = 64;

export type JsonScan =
  | { readonly ok: true }
  | {
      readonly ok: false;
      readonly line: number;
      readonly column: number;
      readonly message: string;
      readonly remedy: string;
    };

/** What may stand next. */
type Next = "value" | "valueOrClose" | "name" | "nameOrClose" | "colon" | "commaOrClose" | "end";

const literals = ["true", "false", "null"];
const numberForm = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const wordForm = /[A-Za-z_$+-][\w$.+-]*/y;

function placeOf(text: string, offset: number): { line: number; column: number } {
  const before = text.slice(0, offset);
  const line = before.split("\n").length;
  return { line, column: offset - before.lastIndexOf("\n") };
}

/** Offset after the string that starts at `start`, or -1 if it does not end on its line. */
function endOfString(text: string, start: number): number {
  for (let i = start + 1; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code === 34) return i + 1;
    if (code === 92) i++;
    else if (code < 32) return -1;
  }
  return -1;
}

/**
 * Walks a JSON text without building anything: where is the first mistake, and is it nested beyond reason?
 * Its own walk because the engine's parser does not say where it stopped on every version.
 */
export function scanJson(text: string): JsonScan {
  const stack: ("{" | "[")[] = [];
  let next: Next = "value";
  let at = 0;
  const fail = (message: string, remedy: string): JsonScan => ({ ok: false, ...placeOf(text, at), message, remedy });
  const afterValue = (): Next => (stack.length === 0 ? "end" : "commaOrClose");
  for (;;) {
    while (at < text.length && (text[at] === " " || text[at] === "\n" || text[at] === "\r" || text[at] === "\t")) at++;
    if (at >= text.length) {
      if (next === "end") return { ok: true };
      const open = stack.at(-1);
      return fail(
        "the file ends too early",
        open
          ? `Close the open ${open === "{" ? "brace with }" : "bracket with ]"}; the file may have been cut off.`
          : "The file is empty; give a project.",
      );
    }
    const char = text[at]!;
    if (next === "end")
      return fail(`text goes on after the project ends, at "${char}"`, "Remove what follows the last }.");
    if (
      (char === "}" || char === "]") &&
      (next === "commaOrClose" || (next === "nameOrClose" && char === "}") || (next === "valueOrClose" && char === "]"))
    ) {
      const open = stack.pop();
      if ((open === "{") !== (char === "}"))
        return fail(`"${char}" closes what "${open}" opened`, open === "{" ? "Close it with }." : "Close it with ].");
      at++;
      next = afterValue();
      continue;
    }
    if (next === "commaOrClose") {
      if (char !== ",")
        return fail(`"${char}" stands where a comma or a closing bracket belongs`, "Put a comma between two entries.");
      at++;
      next = stack.at(-1) === "{" ? "name" : "value";
      continue;
    }
    if (next === "colon") {
      if (char !== ":") return fail(`"${char}" stands where a colon belongs`, 'Write a field as "name": value.');
      at++;
      next = "value";
      continue;
    }
    if (char === '"') {
      const end = endOfString(text, at);
      if (end < 0) return fail("a text is not closed", 'Close it with a double quote " on the same line.');
      at = end;
      if (next === "name" || next === "nameOrClose") next = "colon";
      else next = afterValue();
      continue;
    }
    if (next === "name" || next === "nameOrClose")
      return fail(
        `"${char}" stands where the name of a field belongs`,
        "Field names stand in double quotes, and no comma follows the last field.",
      );
    if (char === "{" || char === "[") {
      if (stack.length >= deepestNesting)
        return fail(
          `brackets are nested more than ${deepestNesting} deep`,
          `Keep nesting within ${deepestNesting}; a project needs about 12.`,
        );
      stack.push(char);
      at++;
      next = char === "{" ? "nameOrClose" : "valueOrClose";
      continue;
    }
    numberForm.lastIndex = at;
    const number = numberForm.exec(text)?.[0];
    if (number) {
      at += number.length;
      if (/[\w.]/.test(text[at] ?? ""))
        return fail(`a number goes on with "${text[at]}"`, "Write numbers like 0.14 or 1e-3, without units.");
      next = afterValue();
      continue;
    }
    wordForm.lastIndex = at;
    const word = wordForm.exec(text)?.[0].slice(0, 20) ?? char;
    if (!literals.includes(word)) {
      return /^[+-]?(NaN|Infinity)$/.test(word)
        ? fail(`${word} stands where a value belongs`, "Give a finite number.")
        : fail(
            `"${word}" stands where a value belongs`,
            "Give a number, a text in double quotes, true, false, null, { } or [ ].",
          );
    }
    at += word.length;
    next = afterValue();
  }
}
