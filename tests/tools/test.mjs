// npm test: everything, the browser tests included. Finds a Chromium or gets one, builds, runs all tests in one run.
// `npm test -- tests/climate` passes its words on to vitest.
import { spawn } from "node:child_process";
import { join } from "node:path";
import { buildStale, root, targets } from "../../electron/tools/targets.mjs";
import { chromiumVariable, findChromium, howToGetOne, installChromium } from "../../electron/tools/chromium.mjs";

let chromium = null;
try {
  chromium = findChromium();
} catch (error) {
  console.error(error.message);
  process.exit(1);
}
if (chromium === null) {
  console.log("There is no Chromium here; trying to install Debian's.");
  chromium = installChromium();
}
if (chromium === null) {
  console.error(`The browser tests need a Chromium, and none was found or could be installed.\n${howToGetOne}`);
  process.exit(1);
}

await buildStale(Object.keys(targets));

const vitest = join(root, "node_modules", "vitest", "vitest.mjs");
const child = spawn(process.execPath, [vitest, "run", "--config", "tests/vitest.config.ts", ...process.argv.slice(2)], {
  cwd: root,
  stdio: "inherit",
  env: { ...process.env, [chromiumVariable]: chromium },
});
child.once("exit", (code, signal) => process.exit(signal === null ? (code ?? 1) : 1));
