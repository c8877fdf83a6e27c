import { execFile } from "node:child_process";
import { mkdtemp, rm, stat, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { promisify } from "node:util";
import { findChromium } from "../tools/chromium.mjs";

const patience_ms = 60_000;

/** Prints an HTML document with the Chromium of this machine. Throws an Error that says what is missing. */
export async function printPdf(html: string, path: string): Promise<void> {
  const chromium = findChromium();
  if (chromium === null)
    throw new Error("a PDF is printed by Chromium, and there is none here; ask for .html, or install Chromium");
  const folder = await mkdtemp(join(tmpdir(), "wallyear-print-"));
  try {
    const page = join(folder, "report.html");
    await writeFile(page, html);
    const words = [
      "--headless",
      "--disable-gpu",
      "--no-first-run",
      "--no-pdf-header-footer",
      `--user-data-dir=${folder}`,
    ];
    // The page is the program's own, without scripts; Chromium's sandbox does not start for root.
    if (process.getuid?.() === 0) words.push("--no-sandbox");
    words.push(`--print-to-pdf=${resolve(path)}`, pathToFileURL(page).href);
    await promisify(execFile)(chromium, words, { timeout: patience_ms });
    await stat(path);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
