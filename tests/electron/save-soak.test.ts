import { spawn } from "node:child_process";
import { mkdtemp, readFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "vite";
import { beforeAll, expect, test } from "vitest";
import { builtinModules } from "node:module";
import { buildStale, root, targets } from "../../electron/tools/targets.mjs";
import { openJournal } from "../../electron/journal.ts";
import { previousOf } from "../../electron/save-file.ts";

/** Kills; each falls somewhere within the saves that follow each other without pause. More by the variable. */
const kills = Number(process.env["WALLYEAR_SOAK"] ?? 12);
const savesEach = 5;

const main = pathToFileURL(join(root, targets.main.out, "main.js")).href;

let program: string;
beforeAll(async () => {
  await buildStale(["main", "preload"], { quiet: true });
  const outDir = await mkdtemp(join(tmpdir(), "wallyear-soak-program-"));
  await build({
    configFile: false,
    logLevel: "error",
    publicDir: false,
    ssr: { noExternal: true, target: "node" },
    build: {
      ssr: true,
      target: "node20",
      outDir,
      emptyOutDir: true,
      rolldownOptions: {
        input: join(import.meta.dirname, "soak-child.ts"),
        external: [...builtinModules, ...builtinModules.map((name) => `node:${name}`)],
        output: { entryFileNames: "soak.mjs" },
      },
    },
  });
  program = join(outDir, "soak.mjs");
});

/** A numbered text as the soak writes it, or a failure: lost, half-written or mixed. */
function numberIn(text: string): number {
  const { number, filling, last } = JSON.parse(text) as { number: number; filling: string; last: number };
  expect(last).toBe(number);
  expect(filling).toBe(String(number).repeat(40_000));
  return number;
}

/** Starts the saving process, kills it in the midst of a later save, gives the last number it reported as saved. */
async function saveUntilKilled(userData: string, document: string, first: number, extra_ms: number): Promise<number> {
  const child = spawn(process.execPath, [program, main, userData, document, String(first)], {
    stdio: ["ignore", "pipe", "inherit"],
  });
  let reported = first - 1;
  const enough = new Promise<void>((resolve, reject) => {
    child.stdout.on("data", (data: Buffer) => {
      for (const line of data.toString().trim().split("\n")) reported = Math.max(reported, Number(line));
      if (reported >= first + savesEach - 1) resolve();
    });
    child.once("exit", (code) => reject(new Error(`the saving process ended by itself with code ${code}`)));
  });
  await enough;
  await new Promise((passed) => setTimeout(passed, extra_ms));
  const gone = new Promise((ended) => child.once("exit", ended));
  child.kill("SIGKILL");
  await gone;
  return reported;
}

test(`document, previous version and journal are whole after each of ${kills} kills amid ${kills * savesEach} saves and more`, async () => {
  const userData = await mkdtemp(join(tmpdir(), "wallyear-soak-"));
  const document = join(userData, "soak.wallyear.json");
  let next = 0;
  for (let kill = 0; kill < kills; kill++) {
    // Spread over the length of a save; no two kills fall at the same point.
    const reported = await saveUntilKilled(userData, document, next, (kill * 7) % 11);
    const saved = numberIn(await readFile(document, "utf8"));
    const previous = numberIn(await readFile(previousOf(document), "utf8"));
    const journal = await openJournal(join(userData, "unsaved-work.journal"), (line) =>
      expect.unreachable(line),
    ).read();
    expect(journal).not.toBeNull();
    // Nothing that was reported as saved is lost; at most the save under way is there as well.
    expect(saved).toBeGreaterThanOrEqual(reported);
    expect(saved).toBeLessThanOrEqual(reported + 2);
    expect(previous).toBeGreaterThanOrEqual(reported - 1);
    expect(numberIn(journal!)).toBeGreaterThanOrEqual(reported);
    next = saved + 1;
  }
}, 240_000);
