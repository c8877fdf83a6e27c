import { demoProject, writeProject } from "../../../solver/index.ts";
import { exit, type Command } from "../command.ts";

/** Prints the built-in project, to be kept in a file and changed. */
export const demo: Command = {
  name: "demo",
  takes: "",
  summary: "print the demo project (the word `demo` also stands for FILE everywhere)",
  positionals: { least: 0, most: 0 },
  options: {},
  run(_given, output) {
    output.result(writeProject(demoProject));
    return Promise.resolve(exit.done);
  },
};
