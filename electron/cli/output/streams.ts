import type { Issue } from "../../../climate/index.ts";
import type { Output } from "../command.ts";
import { issueLines } from "./issue-lines.ts";

/** Standard output and standard error, with a way to wait until all is out. */
export function openStreams(): Output & { flushed(): Promise<void> } {
  // A reader that closes early (`| head`) is no fault of ours.
  process.stdout.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code === "EPIPE") process.exit(0);
    throw error;
  });
  const drained = (stream: NodeJS.WriteStream): Promise<void> =>
    new Promise((done) => {
      stream.write("", () => done());
    });
  return {
    result: (text) => void process.stdout.write(text.endsWith("\n") ? text : `${text}\n`),
    note: (text) => void process.stderr.write(`${text}\n`),
    issues: (issues: readonly Issue[]) => void process.stderr.write(issueLines(issues)),
    async flushed() {
      await drained(process.stdout);
      await drained(process.stderr);
    },
  };
}
