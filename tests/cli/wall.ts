import { spawn } from "node:child_process";
import { mkdtemp, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { buildStale, root, targets } from "../../electron/tools/targets.mjs";

export interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

let built: Promise<unknown> | null = null;

/** Runs the built command line in a process of its own, in the folder given. */
export async function wall(words: readonly string[], cwd: string = root): Promise<Ended> {
  await (built ??= buildStale(["cli"], { quiet: true }));
  const child = spawn(process.execPath, [join(root, targets.cli.out, "main.js"), ...words], { cwd });
  let out = "";
  let err = "";
  child.stdout.setEncoding("utf8").on("data", (text: string) => (out += text));
  child.stderr.setEncoding("utf8").on("data", (text: string) => (err += text));
  const code = await new Promise<number | null>((ended) => child.once("close", ended));
  return { code, out, err };
}

export const newFolder = (): Promise<string> => mkdtemp(join(tmpdir(), "wallyear-cli-"));

/** Writes a file into a folder of its own and gives its path. */
export async function fileOf(name: string, text: string): Promise<string> {
  const path = join(await newFolder(), name);
  await writeFile(path, text);
  return path;
}

/** The demo project as an object that a test may spoil. */
export async function demoProject(): Promise<Project> {
  return JSON.parse((await wall(["demo"])).out) as Project;
}

export interface Project {
  run: { years: number; [name: string]: unknown };
  site: { weather: unknown; [name: string]: unknown };
  options: {
    id: string;
    paths: { id: string; layers: { id: string; material: unknown; thickness_m?: unknown }[] }[];
  }[];
  [name: string]: unknown;
}
