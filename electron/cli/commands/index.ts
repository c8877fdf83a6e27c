import type { Command } from "../command.ts";
import { check } from "./check.ts";
import { checks } from "./checks.ts";
import { demo } from "./demo.ts";
import { drying } from "./drying.ts";
import { howThickCommand } from "./how-thick.ts";
import { humidity } from "./humidity.ts";
import { materials } from "./materials.ts";
import { report } from "./report.ts";
import { run } from "./run.ts";
import { sideBySide } from "./side-by-side.ts";
import { weather } from "./weather.ts";
import { whatIfCommand } from "./what-if.ts";

/** Every command, in the order of the help. */
export const commands: readonly Command[] = [
  run,
  sideBySide,
  howThickCommand,
  drying,
  whatIfCommand,
  humidity,
  report,
  check,
  weather,
  materials,
  checks,
  demo,
];
