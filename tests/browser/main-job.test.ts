import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { WindowMaker, type OpenWindow } from "./open-window.ts";
import {
  chooseOption,
  figureSentences,
  goTo,
  keepPicture,
  runCell,
  sheetTitles,
  untilCurrent,
  untilQuiet,
  writeThickness,
} from "./sheets.ts";

let maker: WindowMaker;
let opened: OpenWindow;
beforeAll(async () => {
  maker = await WindowMaker.start();
});
afterAll(() => maker.end());
beforeEach(async () => {
  opened = await maker.open();
});
afterEach(async () => {
  // Every test ends with a clean console and without a request to another place.
  expect(opened.faults).toEqual([]);
  await opened.close();
});

const insulation = /^Thickness of layer \d+, .*(polystyrene|XPS).*: /i;

test("opens on the demo, with answers for every option", async () => {
  const { page } = opened;
  await page.locator(".block-project", { hasText: "Larch Hollow house" }).waitFor();
  await untilQuiet(page);
  await goTo(page, "Year");
  await expect.poll(() => figureSentences(page)).not.toEqual([]);
  for (const sentence of await figureSentences(page)) expect(sentence).toMatch(/\d/);
});

test("a change of the insulation's thickness runs the wall again and changes the year's figures", async () => {
  const { page } = opened;
  await chooseOption(page, "B");
  await untilCurrent(page);
  await goTo(page, "Year");
  await expect.poll(() => figureSentences(page)).not.toEqual([]);
  const before = await figureSentences(page);
  const picture = await page.locator("main").screenshot();

  await goTo(page, "Wall");
  await writeThickness(page, insulation, "1 in");
  await expect.poll(() => runCell(page).innerText()).not.toMatch(/^Current/);
  await goTo(page, "Year");
  await untilCurrent(page);
  await expect.poll(() => figureSentences(page)).not.toEqual(before);
  expect((await page.locator("main").screenshot()).equals(picture)).toBe(false);

  // Undone, the old wall has its old answer at once: results are kept by what decides them.
  await goTo(page, "Wall");
  await page.keyboard.press("Control+z");
  await untilCurrent(page);
  await goTo(page, "Year");
  await expect.poll(() => figureSentences(page)).toEqual(before);
});

test("side by side shows both options and how they differ", async () => {
  const { page } = opened;
  await untilQuiet(page);
  await goTo(page, "Side by Side");
  await expect.poll(() => figureSentences(page), { timeout: 20_000 }).not.toEqual([]);
  const board = page.locator("main");
  await expect.poll(() => board.innerText()).toMatch(/\bA\b[\s\S]*\bB\b/);
  const figures = await page.locator("main svg, main canvas").count();
  expect(figures).toBeGreaterThan(0);
  await keepPicture(page, "side-by-side-at-once");
});

test("a run is stopped from the title block and what it has is kept", async () => {
  const { page } = opened;
  await chooseOption(page, "B");
  await goTo(page, "Wall");
  await writeThickness(page, insulation, "3 in");
  const stop = page.getByRole("button", { name: "Stop and keep" });
  await stop.waitFor({ timeout: 30_000 });
  await stop.click();
  await expect.poll(() => runCell(page).innerText(), { timeout: 20_000 }).toMatch(/^Stopped/);
  await page.getByRole("button", { name: "Run again" }).click();
  await untilCurrent(page);
});

test("every sheet is reached by its number", async () => {
  const { page } = opened;
  for (const title of await sheetTitles(page)) {
    const number = await page.locator(".tab", { hasText: title }).locator(".tab-number").innerText();
    await page.keyboard.press(number);
    await page.locator('.tab[aria-current="page"]', { hasText: title }).waitFor();
  }
});
