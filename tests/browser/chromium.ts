import { chromium, type Browser } from "playwright-core";
import { findChromium, howToGetOne } from "../../electron/tools/chromium.mjs";

/** Starts the Chromium of this machine, without a window and without a word to the network. */
export function launchChromium(): Promise<Browser> {
  const executablePath = findChromium();
  if (executablePath === null) throw new Error(`There is no Chromium here.\n${howToGetOne}`);
  return chromium.launch({
    executablePath,
    args: [
      // The tests may run as root, and in containers without a GPU.
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
      "--disable-dev-shm-usage",
    ],
  });
}
