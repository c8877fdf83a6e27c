const onMac = /mac/i.test(navigator.platform);

const spoken: Record<string, string> = {
  CommandOrControl: onMac ? "⌘" : "Ctrl",
  Shift: onMac ? "⇧" : "Shift",
  Alt: onMac ? "⌥" : "Alt",
  Up: "Up arrow",
  Down: "Down arrow",
  Escape: "Esc",
};

/** "Ctrl+Shift+Z", the way people read it. */
export const keyWords = (keys: string): string =>
  keys
    .split("+")
    .map((part) => spoken[part] ?? part)
    .join(onMac ? " " : "+");

const named: Record<string, string> = { Up: "ArrowUp", Down: "ArrowDown", Left: "ArrowLeft", Right: "ArrowRight" };

/** Does this key press answer to the accelerator, modifiers included? */
export function matchesKeys(event: KeyboardEvent, keys: string): boolean {
  const parts = keys.split("+");
  const main = parts.pop()!;
  const wanted = new Set(parts);
  const command = onMac ? event.metaKey : event.ctrlKey;
  if (command !== wanted.has("CommandOrControl")) return false;
  if (event.shiftKey !== wanted.has("Shift")) return false;
  if (event.altKey !== wanted.has("Alt")) return false;
  return event.key.toLowerCase() === (named[main] ?? main).toLowerCase();
}
