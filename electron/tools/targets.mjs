// The parts of the program that are built, and what each is made from.
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, readdirSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";

export const root = resolve(fileURLToPath(new URL("../..", import.meta.url)));

/** `from`: folders and files whose change makes the built folder stale. */
export const targets = {
  renderer: {
    config: "renderer/vite.config.ts",
    out: "dist/renderer",
    from: ["climate", "solver", "renderer", "electron/shared", "package-lock.json"],
  },
  main: {
    config: "electron/vite.config.ts",
    mode: "main",
    out: "dist/electron",
    from: ["electron", "solver/model", "solver/materials", "package-lock.json"],
  },
  preload: {
    config: "electron/vite.config.ts",
    mode: "preload",
    out: "dist/preload",
    from: ["electron", "package-lock.json"],
  },
  cli: {
    config: "electron/vite.config.ts",
    mode: "cli",
    out: "dist/cli",
    from: ["climate", "solver", "electron/cli", "electron/vite.config.ts", "package-lock.json"],
  },
};

function* filesUnder(path) {
  if (!existsSync(path)) return;
  const stat = statSync(path);
  if (!stat.isDirectory()) {
    yield [path, stat];
    return;
  }
  for (const name of readdirSync(path).sort()) yield* filesUnder(join(path, name));
}

/** Changes when any source file is added, removed or saved again. */
function fingerprint(target) {
  const hash = createHash("sha256");
  for (const from of target.from)
    for (const [path, stat] of filesUnder(join(root, from))) hash.update(`${path} ${stat.size} ${stat.mtimeMs}\n`);
  return hash.digest("hex");
}

const stampOf = (target) => join(root, target.out, ".made-from");

export function isStale(name) {
  const target = targets[name];
  const stamp = stampOf(target);
  return !existsSync(stamp) || readFileSync(stamp, "utf8") !== fingerprint(target);
}

/**
 * Builds one target into a folder beside its place and then swaps it in, so that a program that runs from the old one,
 * or a second build at the same time, never meets half a folder.
 */
export async function buildTarget(name, { quiet = false } = {}) {
  const target = targets[name];
  const madeFrom = fingerprint(target);
  const out = join(root, target.out);
  const fresh = join(root, "dist", `.fresh-${name}-${process.pid}`);
  const { build } = await import("vite");
  process.env.NODE_ENV = "production";
  await build({
    root: name === "renderer" ? join(root, "renderer") : root,
    configFile: join(root, target.config),
    mode: target.mode ?? "production",
    logLevel: quiet ? "silent" : "warn",
    build: { outDir: fresh, emptyOutDir: true, reportCompressedSize: false },
  });
  writeFileSync(join(fresh, ".made-from"), madeFrom);
  const old = join(root, "dist", `.old-${name}-${process.pid}`);
  mkdirSync(join(root, "dist"), { recursive: true });
  if (existsSync(out)) renameSync(out, old);
  renameSync(fresh, out);
  rmSync(old, { recursive: true, force: true });
}

/** Builds those of the named targets that are stale. */
export async function buildStale(names, options) {
  const stale = names.filter(isStale);
  for (const name of stale) await buildTarget(name, options);
  return stale;
}
