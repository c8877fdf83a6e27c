import { readFileSync } from "node:fs";
import { join } from "node:path";
import { AxeBuilder } from "@axe-core/playwright";
import { afterAll, beforeAll, expect, test } from "vitest";
import { demoProject, writeProject, type Project } from "../../solver/index.ts";
import { WindowMaker, type OpenWindow } from "./open-window.ts";
import { chooseOption, goTo, keepPicture, sheetTitles, untilCurrent, untilQuiet, writeThickness } from "./sheets.ts";

// What can go wrong in a browser and must not lose work: storage that is full or spoilt, a worker that dies, a project of the largest
// size, no network, large type, high density, a hand that does anything.

let maker: WindowMaker;
beforeAll(async () => {
  maker = await WindowMaker.start();
}, 300_000);
afterAll(() => maker.end());

const journalKey = "wallyear.journal";
const foamOfB = /Thickness of layer 3/i;

async function editFoam(opened: OpenWindow, text: string): Promise<void> {
  await goTo(opened.page, "Wall");
  await chooseOption(opened.page, "B");
  await writeThickness(opened.page, foamOfB, text);
}

test("a spoilt journal is told and does not keep the window from opening", async () => {
  const { page, context, faults, close } = await maker.open();
  await untilCurrent(page);
  for (const spoilt of ["{", "null", '{"format":"wallyear"}', "\u0000".repeat(1000), '{"text":42}']) {
    await page.evaluate(([key, text]) => localStorage.setItem(key!, text!), [journalKey, spoilt]);
    await page.reload();
    await page.locator(".tab").first().waitFor();
    await untilCurrent(page);
  }
  expect(faults).toEqual([]);
  expect(context.pages()).toHaveLength(1);
  await close();
});

test("a full storage is told once, and the work goes on", async () => {
  const opened = await maker.open();
  const { page, faults } = opened;
  await untilCurrent(page);
  await page.evaluate(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException("full", "QuotaExceededError");
    };
  });
  await editFoam(opened, "3 in");
  await page
    .getByText(/storage is full/i)
    .first()
    .waitFor();
  await untilCurrent(page);
  expect(faults).toEqual([]);
  await opened.close();
});

test("work of a window that was killed is offered again, with its edit", async () => {
  const opened = await maker.open();
  const { page } = opened;
  await untilCurrent(page);
  await editFoam(opened, "3 in");
  await untilCurrent(page);
  await expect.poll(() => page.evaluate((key) => localStorage.getItem(key), journalKey)).not.toBeNull();
  // The tab's process ends without a word.
  const next = await opened.context.newPage();
  await page.close({ runBeforeUnload: false });
  await next.goto(maker.address);
  await next.locator(".tab").first().waitFor();
  await next
    .getByText(/unsaved|recovered|kept/i)
    .first()
    .waitFor();
  await next.locator(".letter", { hasText: /^B$/ }).click();
  await next.getByRole("button", { name: foamOfB }).first().getByText("3", { exact: true }).waitFor();
  await opened.close();
});

test("a worker that dies in mid-run ends with a message, and the next run is whole", async () => {
  const opened = await maker.open();
  const { page } = opened;
  await untilQuiet(page);
  // Ends every worker the pool makes from now on, shortly after its first order.
  await page.evaluate(() => {
    const post = Worker.prototype.postMessage;
    let killed = 0;
    Worker.prototype.postMessage = function (this: Worker, ...args: unknown[]) {
      Reflect.apply(post, this, args);
      if (killed < 1) {
        killed += 1;
        setTimeout(() => {
          this.dispatchEvent(new ErrorEvent("error", { message: "the process of this worker ended" }));
          this.terminate();
        }, 30);
      }
    };
  });
  await editFoam(opened, "3 in");
  await page
    .locator(".block-run dd", { hasText: /stopp|lost|ended|failed|again/i })
    .first()
    .waitFor();
  await page.keyboard.press("F5");
  await untilCurrent(page);
  await opened.close();
});

/** Eight options of ten paths each: the largest project the schedule is drawn for. */
function largeProject(): Project {
  const [first] = demoProject.options;
  const bay = first!.paths[0]!;
  return {
    ...demoProject,
    name: "Eight options of ten paths",
    run: { ...demoProject.run, years: 1 },
    options: Array.from({ length: 8 }, (_, option) => ({
      ...first!,
      id: "ABCDEFGH"[option]!,
      name: `Option number ${option + 1}`,
      paths: Array.from({ length: 10 }, (_, path) => ({
        ...bay,
        id: `path${path + 1}`,
        name: `Path ${path + 1}`,
        areaShare: 0.1,
        layers: bay.layers.map((layer) =>
          layer.id === "cavity" ? { ...layer, thickness_m: 0.09 + 0.005 * path + 0.001 * option } : layer,
        ),
      })),
      tieIns: [],
    })),
  };
}

test("eight options of ten paths open, are drawn on every sheet, and run", async () => {
  const opened = await maker.open({ width: 1920, height: 1080 });
  const { page, faults } = opened;
  await untilCurrent(page);
  const chooser = page.waitForEvent("filechooser");
  await page.keyboard.press("Control+o");
  await (
    await chooser
  ).setFiles({
    name: "large.wallyear.json",
    mimeType: "application/json",
    buffer: Buffer.from(writeProject(largeProject())),
  });
  await page.getByText("Eight options of ten paths").first().waitFor();
  expect(await page.locator(".letter").count()).toBe(8);
  await untilCurrent(page);
  for (const title of await sheetTitles(page)) {
    await goTo(page, title);
    await page.waitForTimeout(400);
    const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    expect.soft(over, `${title} runs over sideways`).toBeLessThanOrEqual(0);
    await keepPicture(page, `large-${title.toLowerCase().replaceAll(" ", "-")}`);
  }
  expect(faults).toEqual([]);
  await opened.close();
});

test("without a network everything still opens, runs and answers", async () => {
  const opened = await maker.open();
  const { page, context, faults } = opened;
  await untilCurrent(page);
  await goTo(page, "Year");
  await page.locator(".figure").first().waitFor();
  await page.waitForLoadState("networkidle");
  await context.setOffline(true);
  await editFoam(opened, "2 1/2 in");
  await untilCurrent(page);
  await goTo(page, "Side by Side");
  await page.locator(".figure").first().waitFor();
  expect(faults).toEqual([]);
  await opened.close();
});

test.each([
  { words: "200 % zoom of 1280 x 800", width: 640, height: 400, pixelRatio: 2 },
  { words: "a 4K screen at 200 %", width: 1920, height: 1080, pixelRatio: 2 },
])("at $words every sheet can be reached and read, and breaks no rule of accessibility", async (look) => {
  const opened = await maker.open(look);
  const { page, faults } = opened;
  await untilCurrent(page);
  for (const title of await sheetTitles(page)) {
    await goTo(page, title);
    await page.locator("main h1").first().waitFor();
    await page.waitForTimeout(600);
    await keepPicture(page, `${title.toLowerCase().replaceAll(" ", "-")}-${look.width}-x${look.pixelRatio}`);
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect.soft(violations.map(({ id, nodes }) => `${title}: ${id} at ${nodes[0]?.target.join(" ")}`)).toEqual([]);
  }
  expect(faults).toEqual([]);
  await opened.close();
});

/** Runs in the page: what a colour of the system is there. */
function systemColour(name: string): string {
  const probe = document.body.appendChild(document.createElement("i"));
  probe.style.cssText = `forced-color-adjust: none; color: ${name}`;
  const { color } = getComputedStyle(probe);
  probe.remove();
  return color;
}

test("in the reader's own colours and with motion reduced every sheet keeps its ink, and nothing moves", async () => {
  const opened = await maker.open({ reducedMotion: true });
  const { page, faults } = opened;
  await page.emulateMedia({ forcedColors: "active", reducedMotion: "reduce" });
  await untilCurrent(page);
  for (const title of await sheetTitles(page)) {
    await goTo(page, title);
    await page.locator("main h1").first().waitFor();
    await page.waitForTimeout(400);
    await keepPicture(page, `${title.toLowerCase().replaceAll(" ", "-")}-forced`);
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect.soft(violations.map(({ id, nodes }) => `${title}: ${id} at ${nodes[0]?.target.join(" ")}`)).toEqual([]);
    const moving = await page.evaluate(() =>
      document
        .getAnimations()
        .filter(({ playState }) => playState === "running")
        .map((animation) => ("transitionProperty" in animation ? "transition" : "animation")),
    );
    expect.soft(moving, `${title} moves`).toEqual([]);
    if (title !== "Year") continue;
    const tag = await page
      .locator(".date-tag")
      .first()
      .evaluate((words) => [getComputedStyle(words).forcedColorAdjust, getComputedStyle(words).color]);
    expect.soft(tag).toEqual(["none", await page.evaluate(systemColour, "HighlightText")]);
    const tones = await page.locator(".scale-tones").evaluate((bar) => getComputedStyle(bar).backgroundImage);
    expect.soft(tones).toMatch(/gradient/);
  }
  expect(faults).toEqual([]);
  await opened.close();
});

test("on a wide screen the findings beside the map scroll by keys", async () => {
  const opened = await maker.open({ width: 1920, height: 1080 });
  const { page, faults } = opened;
  await untilCurrent(page);
  await goTo(page, "Year");
  const findings = page.getByRole("region", { name: "Findings that decide" });
  await findings.waitFor();
  expect(await findings.evaluate((list) => (list as HTMLElement).tabIndex)).toBe(0);
  await findings.focus();
  const over = await findings.evaluate((list) => list.scrollHeight - list.clientHeight);
  if (over > 0) {
    await page.keyboard.press("End");
    await expect.poll(() => findings.evaluate((list) => list.scrollTop)).toBeGreaterThan(0);
  }
  expect(faults).toEqual([]);
  await opened.close();
});

test("the keyboard alone takes a wall to its answer, and takes an option out and back", async () => {
  const opened = await maker.open();
  const { page, faults } = opened;
  await untilCurrent(page);
  await page.keyboard.press("Control+d");
  await page.locator(".letter", { hasText: /^C$/ }).waitFor();
  await page.keyboard.press("Alt+Shift+ArrowLeft");
  await expect.poll(() => page.locator(".letter").allInnerTexts()).toEqual(["A", "C", "B"]);
  await page.keyboard.press("Control+z");
  await page.keyboard.press("Control+z");
  await expect.poll(() => page.locator(".letter").allInnerTexts()).toEqual(["A", "B"]);
  for (const [key, title] of [
    ["Control+2", "Exposure"],
    ["Control+3", "Year"],
    ["Control+5", "Questions"],
    ["Control+1", "Wall"],
  ] as const) {
    await page.keyboard.press(key);
    await page.locator('.tab[aria-current="page"]', { hasText: title }).waitFor();
  }
  // F6 goes round the panes: focus moves and stays inside the window.
  const places = new Set<string>();
  for (let press = 0; press < 6; press += 1) {
    await page.keyboard.press("F6");
    places.add(
      await page.evaluate(() => document.activeElement?.closest("[data-pane]")?.getAttribute("data-pane") ?? ""),
    );
  }
  expect([...places].filter((place) => place !== "").length).toBeGreaterThan(2);
  expect(faults).toEqual([]);
  await opened.close();
});

/** Mulberry32: the same seed presses the same keys. */
function dice(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

test("a hand that does anything breaks nothing and leaves no memory behind", async () => {
  const minutes = Number(process.env["WALLYEAR_MONKEY_MINUTES"] ?? 0.4);
  const opened = await maker.open();
  const { page, faults } = opened;
  await untilQuiet(page);
  const session = await opened.context.newCDPSession(page);
  const heap = async (): Promise<number> => {
    await session.send("HeapProfiler.collectGarbage");
    return (await session.send("Runtime.getHeapUsage")).usedSize;
  };
  const random = dice(20261127);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)]!;
  const keys = [
    "Control+1",
    "Control+2",
    "Control+3",
    "Control+4",
    "Control+5",
    "Control+6",
    "Tab",
    "Tab",
    "Shift+Tab",
    "Enter",
    "Space",
    "ArrowDown",
    "ArrowUp",
    "ArrowLeft",
    "ArrowRight",
    "Escape",
    "F6",
    "Control+z",
    "Control+Shift+z",
    "Alt+ArrowDown",
    "Alt+ArrowUp",
    "Control+d",
    "F1",
    "Home",
    "End",
    "PageDown",
  ];
  page.on("dialog", (dialog) => void dialog.dismiss());
  page.on("download", (download) => void download.cancel());
  page.on("filechooser", () => undefined);
  const act = async (): Promise<void> => {
    const dieCast = random();
    if (dieCast < 0.5) await page.keyboard.press(pick(keys));
    else if (dieCast < 0.6) await page.keyboard.type(pick(["2", "1 1/2 in", "50 mm", "R-10", "-", "abc", "1e9"]));
    else await page.mouse.click(20 + random() * 1240, 20 + random() * 760);
  };
  // The first minute warms caches, drawings and plotly itself.
  const began = Date.now();
  let before = 0;
  while (Date.now() - began < minutes * 60_000) {
    await act();
    if (before === 0 && Date.now() - began > Math.min(60_000, minutes * 20_000)) before = await heap();
  }
  const after = await heap();
  expect(faults).toEqual([]);
  if (minutes >= 5) expect(after / before).toBeLessThan(1.2);
  else expect(after).toBeLessThan(400e6);
  await opened.close();
});

test("nothing of the window is fetched from elsewhere", () => {
  const page = readFileSync(join(import.meta.dirname, "..", "..", "dist", "renderer", "index.html"), "utf8");
  expect(page.match(/(?:src|href)="(?:https?:)?\/\//g)).toBeNull();
});
