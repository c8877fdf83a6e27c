import { mkdtemp, readFile, readdir, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { FakeElectron } from "./fake-electron.ts";
import { loadMain, ownFrame, startMain } from "./start-main.ts";

interface Reply {
  readonly ok: boolean;
  readonly value?: unknown;
  readonly message?: string;
}

const folder = (): Promise<string> => mkdtemp(join(tmpdir(), "wallyear-test-"));

describe("the start", () => {
  test("makes one sandboxed, isolated window on the program's own scheme", async () => {
    const { fake, window } = await startMain();
    expect(fake.windows).toHaveLength(1);
    expect(window.loaded).toBe("app://wallyear/index.html");
    expect(fake.windows[0]!.options.webPreferences).toMatchObject({
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      webviewTag: false,
    });
    expect(fake.windows[0]!.options.webPreferences.preload).toMatch(/preload\.cjs$/);
  });

  test("ends at once when another instance runs", async () => {
    const fake = new FakeElectron({ userData: await folder(), isSecondInstance: true });
    await loadMain(fake);
    expect(fake.phase).toBe("quit");
    expect(fake.windows).toHaveLength(0);
  });

  test("fills the menu from the command table, and a choice reaches the window as its id", async () => {
    const { fake, window } = await startMain();
    await expect.poll(() => fake.menu).not.toBeNull();
    const menus = fake.menu as { label: string; submenu: { id?: string; click?: () => void }[] }[];
    const item = menus.flatMap((menu) => menu.submenu ?? []).find(({ id }) => id === "sheet.year");
    item!.click!();
    expect(window.webContents.sent).toContainEqual({ channel: "notice.command", value: "sheet.year" });
  });
});

describe("the page's scheme", () => {
  test("answers the page with isolating headers and a policy that names no other origin", async () => {
    const { fake } = await startMain();
    const answer = await fake.fetch("app://wallyear/index.html");
    expect(answer.status).toBe(200);
    expect(answer.headers.get("Content-Type")).toContain("text/html");
    expect(answer.headers.get("Cross-Origin-Opener-Policy")).toBe("same-origin");
    expect(answer.headers.get("Cross-Origin-Embedder-Policy")).toBe("require-corp");
    const policy = answer.headers.get("Content-Security-Policy")!;
    expect(policy).toContain("default-src 'none'");
    expect(policy).not.toMatch(/https?:|unsafe-eval|\*/);
  });

  test.each([
    "app://wallyear/..%2f..%2fpackage.json",
    "app://wallyear/%2e%2e%2f%2e%2e%2fpackage.json",
    "app://wallyear/assets/..%2f..%2f..%2fpackage.json",
    "app://wallyear/..%5c..%5cpackage.json",
    "app://wallyear/index.html%00.png",
    "app://wallyear/%ff",
    "app://wallyear//etc/passwd",
    "app://elsewhere/index.html",
    "app://wallyear/.made-from",
  ])("does not answer %s", async (address) => {
    const { fake } = await startMain();
    expect((await fake.fetch(address)).status).toBeGreaterThanOrEqual(400);
  });

  test("answers nothing but GET and HEAD", async () => {
    const { fake } = await startMain();
    expect((await fake.fetch("app://wallyear/index.html", "POST")).status).toBe(405);
  });
});

describe("guards", () => {
  test("keep the window on its own page and open no other", async () => {
    const { window, userData } = await startMain();
    const { webContents } = window;
    expect(webContents.tryNavigation("https://elsewhere.example/")).toBe(false);
    expect(webContents.tryNavigation("file:///etc/passwd")).toBe(false);
    expect(webContents.tryNavigation("app://elsewhere/index.html")).toBe(false);
    expect(webContents.tryNavigation("app://wallyear/index.html")).toBe(true);
    expect(webContents.tryWindow("https://elsewhere.example/")).toBe(false);
    expect(await readFile(join(userData, "log.txt"), "utf8")).toContain(
      "Refused navigation to https://elsewhere.example/",
    );
  });

  test("let no request out to the network", async () => {
    const { fake } = await startMain();
    expect(await fake.mayRequest("https://elsewhere.example/x.js")).toBe(false);
    expect(await fake.mayRequest("http://127.0.0.1:80/")).toBe(false);
    expect(await fake.mayRequest("file:///etc/passwd")).toBe(false);
    expect(await fake.mayRequest("blob:https://elsewhere.example/1")).toBe(false);
    expect(await fake.mayRequest("app://wallyear/assets/index.js")).toBe(true);
    expect(await fake.mayRequest("blob:app://wallyear/1")).toBe(true);
  });

  test("give no permission but writing to the clipboard", async () => {
    const { fake } = await startMain();
    for (const permission of ["geolocation", "media", "notifications", "hid", "openExternal", "clipboard-read"])
      expect(await fake.mayUse(permission)).toBe(false);
    expect(await fake.mayUse("clipboard-sanitized-write")).toBe(true);
  });
});

describe("documents", () => {
  test("are saved where the user says, opened again by handle, and listed as recent", async () => {
    const { fake } = await startMain();
    const path = join(await folder(), "Larch.wallyear.json");
    fake.answers.push({ save: path });
    const given = { handle: null, text: "first", suggestedName: "Larch.wallyear.json", saveAs: false };
    const saved = (await fake.invoke(ownFrame, "project.save", given)) as Reply;
    expect(saved).toMatchObject({ ok: true, value: { name: "Larch.wallyear.json" } });
    expect(JSON.stringify(saved)).not.toContain(path);
    const { handle } = saved.value as { handle: string };

    await fake.invoke(ownFrame, "project.save", { ...given, handle, text: "second" });
    expect(await readFile(path, "utf8")).toBe("second");
    expect(await readFile(`${path}.previous`, "utf8")).toBe("first");

    const recent = (await fake.invoke(ownFrame, "recent.list")) as Reply;
    const [latest] = recent.value as { handle: string; name: string }[];
    const opened = (await fake.invoke(ownFrame, "recent.open", { handle: latest!.handle })) as Reply;
    expect(opened.value).toMatchObject({ name: "Larch.wallyear.json", text: "second" });
    expect(fake.recentDocuments).toContain(path);
  });

  test("leave no temporary file beside them", async () => {
    const { fake } = await startMain();
    const place = await folder();
    fake.answers.push({ save: join(place, "a.wallyear.json") });
    await fake.invoke(ownFrame, "project.save", {
      handle: null,
      text: "x",
      suggestedName: "a.wallyear.json",
      saveAs: true,
    });
    expect(await readdir(place)).toEqual(["a.wallyear.json"]);
  });

  test("that cannot be saved say why and what to do, and name no folder", async () => {
    const { fake } = await startMain();
    const place = await folder();
    fake.answers.push({ save: join(place, "missing", "a.wallyear.json") });
    const given = { handle: null, text: "x", suggestedName: "a.wallyear.json", saveAs: true };
    const reply = (await fake.invoke(ownFrame, "project.save", given)) as Reply;
    expect(reply.ok).toBe(false);
    expect(reply.message).toMatch(/could not be saved: its folder is no longer there/);
    expect(reply.message).not.toContain(place);
  });

  test("resolve to nothing when the user cancels", async () => {
    const { fake } = await startMain();
    fake.answers.push({ open: null }, { save: null });
    expect(await fake.invoke(ownFrame, "project.open")).toEqual({ ok: true, value: null });
    const given = { handle: null, text: "x", suggestedName: "a.json", saveAs: false };
    expect(await fake.invoke(ownFrame, "project.save", given)).toEqual({ ok: true, value: null });
  });

  test("named by a second start are sent to the window once it listens", async () => {
    const { fake, window } = await startMain();
    const place = await folder();
    await writeFile(join(place, "b.wallyear.json"), "{}");
    fake.app.emit("second-instance", {}, ["wallyear", "b.wallyear.json"], place);
    expect(window.webContents.sent).toHaveLength(0);
    await fake.invoke(ownFrame, "window.listening");
    await expect.poll(() => window.webContents.sent).toHaveLength(1);
    expect(window.webContents.sent[0]).toMatchObject({
      channel: "notice.document",
      value: { name: "b.wallyear.json", text: "{}" },
    });
    expect(window.focused).toBe(1);
  });
});

describe("closing", () => {
  const dirty = { dirty: true, title: "Larch" };
  const clean = { dirty: false, title: "Larch" };

  test("asks when there is unsaved work, and Cancel keeps the window", async () => {
    const { fake, window } = await startMain();
    await fake.invoke(ownFrame, "window.dirty", dirty);
    expect(window.title).toContain("Larch");
    fake.answers.push({ button: 2 });
    window.close();
    await expect.poll(() => fake.asked).toHaveLength(1);
    expect(window.isDestroyed()).toBe(false);
  });

  test("with Save asks the window to save and closes when it is clean", async () => {
    const { fake, window } = await startMain();
    await fake.invoke(ownFrame, "window.dirty", dirty);
    fake.answers.push({ button: 0 });
    window.close();
    await expect.poll(() => window.webContents.sent).toContainEqual({ channel: "notice.command", value: "file.save" });
    expect(window.isDestroyed()).toBe(false);
    await fake.invoke(ownFrame, "window.dirty", clean);
    expect(window.isDestroyed()).toBe(true);
    expect(fake.phase).toBe("quit");
  });

  test("stays open when that save is cancelled, even if the work is saved later", async () => {
    const { fake, window } = await startMain();
    await fake.invoke(ownFrame, "window.dirty", dirty);
    fake.answers.push({ button: 0 }, { save: null });
    window.close();
    await expect.poll(() => window.webContents.sent).toHaveLength(1);
    await fake.invoke(ownFrame, "project.save", { handle: null, text: "x", suggestedName: "a.json", saveAs: false });
    await fake.invoke(ownFrame, "window.dirty", clean);
    expect(window.isDestroyed()).toBe(false);
  });

  test("without saving gives up the journal too", async () => {
    const { fake, window } = await startMain();
    await fake.invoke(ownFrame, "journal.write", { text: "work" });
    await fake.invoke(ownFrame, "window.dirty", dirty);
    fake.answers.push({ button: 1 });
    window.close();
    await expect.poll(() => window.isDestroyed()).toBe(true);
    expect(await fake.invoke(ownFrame, "journal.read")).toEqual({ ok: true, value: null });
  });
});

describe("the journal", () => {
  test("outlives the program", async () => {
    const first = await startMain();
    await first.fake.invoke(ownFrame, "journal.write", { text: "unsaved wörk" });
    const second = await startMain(first.userData);
    expect(await second.fake.invoke(ownFrame, "journal.read")).toEqual({ ok: true, value: "unsaved wörk" });
    await second.fake.invoke(ownFrame, "journal.clear");
    const third = await startMain(first.userData);
    expect(await third.fake.invoke(ownFrame, "journal.read")).toEqual({ ok: true, value: null });
  });

  test("that is damaged is set aside and not offered", async () => {
    const first = await startMain();
    await first.fake.invoke(ownFrame, "journal.write", { text: "unsaved work" });
    const path = join(first.userData, "unsaved-work.journal");
    await writeFile(path, (await readFile(path, "utf8")).replace("unsaved", "unsafed"));
    const second = await startMain(first.userData);
    expect(await second.fake.invoke(ownFrame, "journal.read")).toEqual({ ok: true, value: null });
    expect(await readdir(first.userData)).toContain("unsaved-work.journal.damaged");
  });
});
