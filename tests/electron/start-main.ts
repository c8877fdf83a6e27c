import { mkdtemp } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { vi } from "vitest";
import { buildStale, root, targets } from "../../electron/tools/targets.mjs";
import { FakeElectron, type FakeFrame, type FakeWindow } from "./fake-electron.ts";

/** The top frame of the program's own page. */
export const ownFrame: FakeFrame = { url: "app://wallyear/index.html", parent: null };

export interface Started {
  readonly fake: FakeElectron;
  readonly window: FakeWindow;
  readonly userData: string;
}

const loadLimit_ms = 10_000;

/** Imports the built main process over the stand-in and lets it become ready. */
export async function loadMain(fake: FakeElectron): Promise<void> {
  await buildStale(["main", "preload"], { quiet: true });
  vi.resetModules();
  vi.doMock("electron", () => fake.module);
  const built = pathToFileURL(join(root, targets.main.out, "main.js")).href;
  const late = new Promise<never>((_, reject) =>
    setTimeout(
      () => reject(new Error("main did not finish loading: does it wait for ready at its top level?")),
      loadLimit_ms,
    ).unref(),
  );
  await Promise.race([import(/* @vite-ignore */ built), late]);
  await fake.becomeReady();
}

/** Starts the built main process in an empty user folder (or the one given). */
export async function startMain(userData?: string): Promise<Started> {
  const folder = userData ?? (await mkdtemp(join(tmpdir(), "wallyear-test-")));
  const fake = new FakeElectron({ userData: folder });
  await loadMain(fake);
  const made = fake.windows[0];
  if (made === undefined) throw new Error("main made no window");
  return { fake, window: made.window, userData: folder };
}
