// npm start: builds what is stale, then opens the window on the demo. Where Electron's program or a display can't be had,
// it says so in one line and serves the same window on a local address. `npm start -- --browser` asks for the latter.
import { spawn } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { buildTarget, isStale, root, targets } from "./targets.mjs";

const args = process.argv.slice(2);
const files = args.filter((arg) => !arg.startsWith("--"));

async function build(names) {
  const stale = names.filter(isStale);
  if (stale.length > 0) console.log("Building the window (a few seconds, only after changes) ...");
  for (const name of stale) await buildTarget(name);
}

/** Electron's program where it has been fetched already. Loading the `electron` module instead would start a download. */
function electronProgram() {
  const folder = join(root, "node_modules", "electron");
  const nameFile = join(folder, "path.txt");
  if (!existsSync(nameFile)) return null;
  const program = join(
    process.env.ELECTRON_OVERRIDE_DIST_PATH ?? join(folder, "dist"),
    readFileSync(nameFile, "utf8").trim(),
  );
  return existsSync(program) ? program : null;
}

/** Fetches Electron's program once, within two minutes. Only where a display is there to show it on. */
async function fetchElectron() {
  const install = join(root, "node_modules", "electron", "install.js");
  if (!existsSync(install)) return null;
  console.log("Fetching Electron's program (once, about 100 MB) ...");
  const child = spawn(process.execPath, [install], { stdio: "ignore" });
  const timer = setTimeout(() => child.kill("SIGKILL"), 120_000);
  await new Promise((ended) => child.once("exit", ended).once("error", ended));
  clearTimeout(timer);
  return electronProgram();
}

/** Why no window can be opened on this machine, or null. */
function noWindowBecause() {
  if (args.includes("--browser")) return "You asked for the browser.";
  if (process.platform !== "linux") return null;
  if (!process.env.DISPLAY && !process.env.WAYLAND_DISPLAY) return "There is no display here for Electron's window.";
  if (process.getuid?.() === 0) return "Electron's sandbox does not run for root.";
  return null;
}

/** Resolves to null once the window was closed in good order, else to the reason why it did not come up. */
function openWindow(program) {
  return new Promise((ended) => {
    const began = performance.now();
    const child = spawn(program, [root, ...files], { stdio: "inherit" });
    child.once("error", (error) => ended(`Electron could not be started (${error.message}).`));
    child.once("exit", (code, signal) => {
      const cameUp = performance.now() - began > 5000;
      ended(code === 0 || cameUp ? null : `Electron ended at once (${signal ?? `code ${code}`}).`);
    });
  });
}

async function serve(reason) {
  await build(["renderer", "main"]);
  const { serveLocally } = await import(pathToFileURL(join(root, targets.main.out, "serve.js")).href);
  const wanted = Number(process.env.PORT ?? 5300);
  const server = await serveLocally(join(root, targets.renderer.out), wanted).catch(() =>
    serveLocally(join(root, targets.renderer.out), 0),
  );
  console.log(`${reason} The same window is at ${server.address} (stop with Ctrl+C).`);
  for (const signal of ["SIGINT", "SIGTERM"])
    process.once(signal, () => void server.close().then(() => process.exit(0)));
}

const reason = noWindowBecause();
if (reason !== null) await serve(reason);
else {
  await build(["renderer", "main", "preload"]);
  const program = electronProgram() ?? (args.includes("--no-download") ? null : await fetchElectron());
  const failure =
    program === null ? "Electron's program is not here and could not be fetched." : await openWindow(program);
  if (failure !== null) await serve(failure);
}
