import { register } from "node:module";
import { FakeElectron } from "./fake-electron.ts";

/**
 * The built main process over the stand-in, in plain Node and a process of its own, that saves without pause until it is
 * killed. Words: built main, user folder, document path, first number. Each text is numbered and long enough to be
 * caught half-written.
 */
const [main, userData, document, first] = process.argv.slice(2) as [string, string, string, string];

declare global {
  var wallyearStandIn: Record<string, unknown> | undefined;
}

const fake = new FakeElectron({ userData });
globalThis.wallyearStandIn = fake.module;

const names = Object.keys(fake.module).join(", ");
const standIn = `data:text/javascript,export const { ${names} } = globalThis.wallyearStandIn;`;
const hook = `export const resolve = (name, context, next) =>
  name === "electron" ? { url: ${JSON.stringify(standIn)}, shortCircuit: true } : next(name, context);`;
register(`data:text/javascript,${encodeURIComponent(hook)}`);

await import(/* @vite-ignore */ main);
await fake.becomeReady();

const frame = { url: "app://wallyear/index.html", parent: null };
let handle: string | null = null;
for (let number = Number(first); ; number++) {
  const text = JSON.stringify({ number, filling: String(number).repeat(40_000), last: number });
  const asked = [fake.invoke(frame, "journal.write", { text })];
  if (handle === null) fake.answers.push({ save: document });
  asked.push(fake.invoke(frame, "project.save", { handle, text, suggestedName: "soak.wallyear.json", saveAs: false }));
  const [journalled, saved] = (await Promise.all(asked)) as { ok: boolean; value: { handle: string } }[];
  if (journalled?.ok !== true || saved?.ok !== true) process.exit(3);
  handle = saved.value.handle;
  process.stdout.write(`${number}\n`);
}
