import type { Command } from "../command.ts";
import { check } from "./check.ts";
import { demo } from "./demo.ts";
import { materials } from "./materials.ts";
import { run } from "./run.ts";
import { sideBySide } from "./side-by-side.ts";
import { weather } from "./weather.ts";

/** Every command, in the order of the help. */
export const commands: readonly Command[] = [run, sideBySide, check, weather, materials, demo];
