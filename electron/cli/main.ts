import { readArgs } from "./args.ts";
import { exit, type Command } from "./command.ts";
import { commands } from "./commands/index.ts";
import { helpOf, helpText } from "./help.ts";
import { openStreams } from "./output/streams.ts";
import { UsageError } from "./usage-error.ts";

const output = openStreams();

async function runWords(words: readonly string[]): Promise<number> {
  const [name, ...rest] = words;
  if (name === undefined) {
    output.note(helpText(commands));
    return exit.usage;
  }
  if (["help", "--help", "-h"].includes(name)) {
    output.result(helpText(commands));
    return exit.done;
  }
  const command: Command | undefined = commands.find((candidate) => candidate.name === name);
  if (command === undefined)
    throw new UsageError(
      `There is no command "${name}". There are: ${commands.map((known) => known.name).join(", ")}.`,
    );
  if (rest.includes("--help") || rest.includes("-h")) {
    output.result(helpOf(command));
    return exit.done;
  }
  return command.run(readArgs(command, rest), output);
}

async function main(): Promise<number> {
  try {
    return await runWords(process.argv.slice(2));
  } catch (error) {
    if (error instanceof UsageError) {
      output.note(error.message);
      return exit.usage;
    }
    output.note(`The run could not finish: ${error instanceof Error ? error.message : String(error)}`);
    return exit.unfinished;
  }
}

const code = await main();
await output.flushed();
process.exit(code);
