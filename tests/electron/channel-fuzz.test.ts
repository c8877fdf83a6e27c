import { readFile, readdir } from "node:fs/promises";
import { dirname, join } from "node:path";
import fc from "fast-check";
import { beforeEach, describe, expect, test } from "vitest";
import { channels } from "../../electron/shared/channels.ts";
import { longestText } from "../../electron/shared/payloads.ts";
import type { FakeFrame } from "./fake-electron.ts";
import { ownFrame, startMain, type Started } from "./start-main.ts";

interface Reply {
  readonly ok: boolean;
  readonly value?: unknown;
  readonly message?: string;
}

const all = Object.values(channels);
let started: Started;
const ask = (frame: FakeFrame | null, channel: string, ...args: unknown[]): Promise<Reply> =>
  started.fake.invoke(frame, channel, ...args) as Promise<Reply>;
const log = (): Promise<string> => readFile(join(started.userData, "log.txt"), "utf8").catch(() => "");

beforeEach(async () => {
  started = await startMain();
});

describe("a sender that is not the program's own top frame", () => {
  const strangers: [string, FakeFrame | null][] = [
    ["that is gone", null],
    ["of another site", { url: "https://elsewhere.example/index.html", parent: null }],
    ["of a file", { url: "file:///index.html", parent: null }],
    ["of another host on the own scheme", { url: "app://elsewhere/index.html", parent: null }],
    ["with a user name before the host", { url: "app://wallyear@elsewhere/", parent: null }],
    ["with the own host as user name", { url: "app://someone@wallyear/", parent: null }],
    ["with the own address as a prefix", { url: "app://wallyear.elsewhere/", parent: null }],
    ["without an address", { url: "", parent: null }],
    ["inside the own page", { url: "app://wallyear/index.html", parent: ownFrame }],
  ];
  test.each(strangers)("%s is refused on every channel, and logged", async (_title, frame) => {
    for (const channel of all) {
      const reply = await ask(frame, channel);
      expect(reply).toMatchObject({ ok: false });
      expect(await log()).toContain(`Refused ${channel}: the frame`);
    }
    expect(started.fake.asked).toHaveLength(0);
    expect(await readdir(started.userData)).toEqual(["log.txt"]);
  });
});

describe("a payload of the wrong shape", () => {
  /** Anything that can be cloned between processes, none of it a payload this program sends. */
  const anything = fc.anything({
    withBigInt: true,
    withDate: true,
    withMap: true,
    withSet: true,
    withTypedArray: true,
    withObjectString: true,
  });

  test("is refused on every channel whatever it is, and nothing happens", async () => {
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...all), anything, async (channel, payload) => {
        fc.pre(payload !== undefined);
        const reply = await ask(ownFrame, channel, payload);
        expect(reply.ok).toBe(false);
        expect(reply.message).toMatch(/wrong shape/);
      }),
      { numRuns: 300, seed: 20260301 },
    );
    expect(started.fake.asked).toHaveLength(0);
  });

  test("with one field more, one less, or one of another type is refused", async () => {
    const good: Record<string, unknown> = { handle: null, text: "x", suggestedName: "a.json", saveAs: false };
    for (const name of Object.keys(good)) {
      const less = Object.fromEntries(Object.entries(good).filter(([other]) => other !== name));
      expect((await ask(ownFrame, channels.saveProject, less)).ok).toBe(false);
      expect(
        (await ask(ownFrame, channels.saveProject, { ...good, [name]: Symbol.iterator.toString().length })).ok,
      ).toBe(false);
    }
    expect((await ask(ownFrame, channels.saveProject, { ...good, path: "x" })).ok).toBe(false);
    expect((await ask(ownFrame, channels.saveProject, good, "second")).ok).toBe(false);
    for (const fraction of [NaN, Infinity, -0.1, 1.1, "0.5"])
      expect((await ask(ownFrame, channels.progress, { fraction })).ok).toBe(false);
    expect(started.fake.asked).toHaveLength(0);
  });

  test("that is too long is refused and its content is not logged", async () => {
    const huge = "wall".repeat(longestText / 4 + 1);
    expect((await ask(ownFrame, channels.journalWrite, { text: huge })).ok).toBe(false);
    expect((await ask(ownFrame, channels.dirty, { dirty: true, title: huge.slice(0, 201) })).ok).toBe(false);
    const logged = await log();
    expect(logged.length).toBeLessThan(1000);
    expect(logged).not.toContain("wallwall");
    expect(await readdir(started.userData)).toEqual(["log.txt"]);
  });
});

describe("a path trick", () => {
  const names = [
    "../a.json",
    "..\\a.json",
    "/etc/passwd",
    "C:\\a.json",
    "a/b.json",
    ".hidden",
    "a\0.json",
    "a\n.json",
    "",
    " ",
    "a".repeat(121),
    "con:x",
  ];
  test.each(names)("in the suggested name %j is refused before a dialog shows", async (suggestedName) => {
    expect((await ask(ownFrame, channels.savePdf, { suggestedName })).ok).toBe(false);
    expect((await ask(ownFrame, channels.saveText, { suggestedName, text: "x", type: "text/csv" })).ok).toBe(false);
    expect(started.fake.asked).toHaveLength(0);
  });

  test("in place of a handle is refused, and so is a handle never given", async () => {
    const path = join(dirname(started.userData), "x.wallyear.json");
    for (const handle of [path, "../x", "__proto__", "constructor"])
      expect((await ask(ownFrame, channels.openRecent, { handle })).message).toMatch(/wrong shape/);
    const reply = await ask(ownFrame, channels.openRecent, { handle: "00000000-0000-4000-8000-000000000000" });
    expect(reply).toMatchObject({ ok: false, message: expect.stringContaining("no longer known") });
  });
});
