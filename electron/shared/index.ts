/** What main, preload and renderer share. */
export type { HostDocument, HostReference, WallyearHost } from "./host.ts";
export { commands, isCommandId, menuNames, type Command, type CommandId, type MenuName } from "./commands.ts";
export { isTidyFileName, tidyFileName } from "./file-name.ts";
