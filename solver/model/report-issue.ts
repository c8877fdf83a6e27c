import type { Issue } from "../../climate/index.ts";

/** One step of the way to a place in a project: a field name or an index. */
export type Key = string | number;
/** Notes one problem at a place of the project, given as the keys that lead there. */
export type Report = (keys: readonly Key[], message: string, remedy: string, severity?: Issue["severity"]) => void;

/** A material's issue without its name, where the place already names it. */
export const withoutName = (message: string, name: string): string =>
  message.startsWith(`${name}: `) ? message.slice(name.length + 2) : message;
