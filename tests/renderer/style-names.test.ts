import { readdirSync, readFileSync } from "node:fs";
import { join, sep } from "node:path";
import { expect, test } from "vitest";

const renderer = join(import.meta.dirname, "..", "..", "renderer");

/** Classes that a rule of the file styles by themselves, wherever they stand. */
function bareClasses(css: string): Set<string> {
  const found = new Set<string>();
  const rules = css.replace(/\/\*[\s\S]*?\*\//g, "").matchAll(/([^{}]+)\{/g);
  for (const [, selectors] of rules)
    for (const selector of selectors!.split(",")) {
      const [, name] = /^\.([\w-]+)(?::[\w-]+(?:\([^)]*\))?)*$/.exec(selector.trim()) ?? [];
      if (name !== undefined) found.add(name);
    }
  return found;
}

test("no two rooms of the window style the same class: sheets are fetched at any time and in any order", () => {
  const rooms = new Map<string, Set<string>>();
  const files = readdirSync(renderer, { recursive: true, encoding: "utf8" }).filter((file) => file.endsWith(".css"));
  for (const file of files) {
    const [room, ...within] = file.split(sep);
    // The window's own frame may place what a room draws.
    if (room === undefined || within.length === 0) continue;
    for (const name of bareClasses(readFileSync(join(renderer, file), "utf8")))
      rooms.set(name, (rooms.get(name) ?? new Set()).add(room));
  }
  const shared = [...rooms]
    .filter(([, where]) => where.size > 1)
    .map(([name, where]) => `${name}: ${[...where].join(", ")}`);
  expect(rooms.size).toBeGreaterThan(100);
  expect(shared).toEqual([]);
});
