// npm run --silent wall -- run FILE ...: the command line, built first where it is missing or stale.
import { existsSync } from "node:fs";
import { join } from "node:path";
import { stripVTControlCharacters } from "node:util";
import { pathToFileURL } from "node:url";
import { buildTarget, isStale, root, targets } from "./targets.mjs";

const program = join(root, targets.cli.out, "main.js");

if (isStale("cli")) {
  process.stderr.write(
    existsSync(program) ? "Sources have changed; building the command line.\n" : "Building the command line (once).\n",
  );
  try {
    await buildTarget("cli", { quiet: true });
  } catch (error) {
    const words = stripVTControlCharacters(error instanceof Error ? error.message : String(error));
    process.stderr.write(`The command line could not be built: ${words.slice(0, 600)}\n`);
    process.exit(2);
  }
}
// npm runs scripts in the package's folder; paths the user types are relative to where the user stands.
if (process.env.INIT_CWD !== undefined && existsSync(process.env.INIT_CWD)) process.chdir(process.env.INIT_CWD);
await import(pathToFileURL(program).href);
