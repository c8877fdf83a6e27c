// npm run build [-- --stale] [renderer main preload cli]
import { buildStale, buildTarget, targets } from "./targets.mjs";

const args = process.argv.slice(2);
const named = args.filter((arg) => !arg.startsWith("--"));
const unknown = named.filter((name) => !(name in targets));
if (unknown.length > 0) {
  console.error(`There is no part called ${unknown.join(", ")}. Name some of: ${Object.keys(targets).join(", ")}.`);
  process.exit(64);
}
const names = named.length > 0 ? named : Object.keys(targets);
const began = performance.now();
if (args.includes("--stale")) await buildStale(names);
else for (const name of names) await buildTarget(name);
console.log(`Built ${names.join(", ")} in ${((performance.now() - began) / 1000).toFixed(1)} s.`);
