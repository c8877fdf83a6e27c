import { mkdtemp, readFile, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { buildStale } from "../../electron/tools/targets.mjs";
import type { HostDocument, WallyearHost } from "../../electron/shared/index.ts";
import { launchChromium } from "../browser/chromium.ts";
import { openPage, type OpenPage } from "./open-page.ts";
import { startMain, type Started } from "./start-main.ts";

/** The page's global, as code that runs in the page sees it. */
declare const window: { readonly wallyearHost: WallyearHost; open(url: string): unknown; location: { href: string } };

let browser: Browser;
let started: Started;
let opened: OpenPage;

beforeAll(async () => {
  await buildStale(["renderer"], { quiet: true });
  browser = await launchChromium();
}, 120_000);
afterAll(() => browser.close());
beforeEach(async () => {
  started = await startMain();
  opened = await openPage(browser, started.fake);
  await opened.page.getByRole("button", { name: "Wallyear, all commands" }).waitFor();
});
afterEach(() => opened.close());

const folder = (): Promise<string> => mkdtemp(join(tmpdir(), "wallyear-window-"));

describe("the built window over the built main process", () => {
  test("starts without an error in its console, isolated across origins", async () => {
    expect(opened.errors).toEqual([]);
    expect(
      await opened.page.evaluate(() => (globalThis as { crossOriginIsolated?: boolean }).crossOriginIsolated),
    ).toBe(true);
  });

  test("writes the project to the file that the user names, from a click on Save in its menu", async () => {
    const { page } = opened;
    const path = join(await folder(), "Larch.wallyear.json");
    started.fake.answers.push({ save: path });
    await page.getByRole("button", { name: "Wallyear, all commands" }).click();
    await page
      .getByRole("menuitem", { name: /^Save(?! as)/ })
      .first()
      .click();
    await expect.poll(() => readFile(path, "utf8").catch(() => "")).toContain('"format": "wallyear"');
    expect(started.fake.asked[0]!.options["defaultPath"]).toMatch(/\.wallyear\.json$/);
  });

  test("goes to a sheet when the desktop's menu asks for it", async () => {
    const menus = started.fake.menu as { submenu: { id?: string; click?: () => void }[] }[];
    menus.flatMap((menu) => menu.submenu ?? []).find(({ id }) => id === "sheet.year")!.click!();
    await opened.page.locator('button[aria-current="page"]', { hasText: "Year" }).waitFor();
  });

  test("gives the page one frozen object and nothing of Electron or Node", async () => {
    const seen = await opened.page.evaluate(() => ({
      frozen: Object.isFrozen(window.wallyearHost),
      kind: window.wallyearHost.kind,
      leaks: ["require", "process", "module", "Buffer", "electron", "ipcRenderer", "standInInvoke"].filter(
        (name) => name in globalThis,
      ),
    }));
    expect(seen).toEqual({ frozen: true, kind: "desktop", leaks: [] });
  });

  test("opens a project under a handle and never learns its path", async () => {
    const place = await folder();
    const path = join(place, "a.wallyear.json");
    await writeFile(path, "{}");
    started.fake.answers.push({ open: path });
    const document = (await opened.page.evaluate(() => window.wallyearHost.openProject())) as HostDocument;
    expect(document).toMatchObject({ name: "a.wallyear.json", text: "{}" });
    expect(JSON.stringify(document)).not.toContain(place);
  });

  test("tells the page why a save failed, in a sentence", async () => {
    started.fake.answers.push({ save: join(await folder(), "gone", "a.json") });
    const said = await opened.page.evaluate(() =>
      window.wallyearHost.saveText("a.json", "x", "application/json").catch((error: Error) => error.message),
    );
    expect(said).toBe("a.json could not be saved: its folder is no longer there. Choose another one.");
  });

  test("tidies a name that leads elsewhere before it is sent", async () => {
    const path = join(await folder(), "x.csv");
    started.fake.answers.push({ save: path });
    expect(
      await opened.page.evaluate(() => window.wallyearHost.saveText("../Wall 2x6 / zone 6.csv", "x", "text/csv")),
    ).toBe(true);
    expect(started.fake.asked[0]!.options["defaultPath"]).toBe("-Wall 2x6 - zone 6.csv");
  });

  test("prints a PDF to a file", async () => {
    const path = join(await folder(), "report.pdf");
    started.fake.answers.push({ save: path });
    expect(await opened.page.evaluate(() => window.wallyearHost.savePdf("report.pdf"))).toBe(true);
    expect(await readFile(path, "utf8")).toMatch(/^%PDF/);
  });

  test("does not leave its page, and asks the network for nothing", async () => {
    const { page } = opened;
    const fetched = await page.evaluate(() =>
      fetch("https://elsewhere.example/x").then(
        () => "went out",
        () => "was stopped",
      ),
    );
    expect(fetched).toBe("was stopped");
    const before = page.url();
    await page.evaluate(() => {
      window.location.href = "https://elsewhere.example/";
    });
    await expect
      .poll(() => readFile(join(started.userData, "log.txt"), "utf8").catch(() => ""))
      .toContain("Refused navigation");
    expect(page.url()).toBe(before);
    expect(await page.evaluate(() => window.wallyearHost.kind)).toBe("desktop");
  });

  test("shows its progress on the taskbar and takes it away", async () => {
    await opened.page.evaluate(() => window.wallyearHost.setProgress(0.4));
    await expect.poll(() => started.window.progress).toBe(0.4);
    await opened.page.evaluate(() => window.wallyearHost.setProgress(null));
    await expect.poll(() => started.window.progress).toBe(-1);
  });
});
