export { keyWords, matchesKeys } from "./keys.ts";
export { labelOf, runCommand } from "./run-command.ts";
export { listenForKeys } from "./listen.ts";
