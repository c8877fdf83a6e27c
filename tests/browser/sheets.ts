import { mkdir } from "node:fs/promises";
import { join } from "node:path";
import type { Locator, Page } from "playwright-core";

export type SheetTitle = "Wall" | "Exposure" | "Year" | "Side by Side" | "Questions" | "Report";

const patience_ms = 60_000;

/** Titles of the sheets that have a tab. */
export async function sheetTitles(page: Page): Promise<SheetTitle[]> {
  const texts = await page.locator(".tab").allInnerTexts();
  return texts.map((text) => text.replace(/^\s*\d+\s*/, "").trim() as SheetTitle);
}

export async function goTo(page: Page, title: SheetTitle): Promise<void> {
  await page.locator(".tab", { hasText: title }).click();
  await page.locator('.tab[aria-current="page"]', { hasText: title }).waitFor();
}

export const runCell = (page: Page): Locator => page.locator(".block-run dd");

/** Waits until the path in view has a result of the wall as it stands. */
export async function untilCurrent(page: Page): Promise<void> {
  await page.locator(".block-run dd", { hasText: /^Current/ }).waitFor({ timeout: patience_ms });
}

/** Waits until no run is under way, in any option. */
export async function untilQuiet(page: Page): Promise<void> {
  for (const letter of await page.locator(".letter").all()) {
    await letter.click();
    await untilCurrent(page);
  }
  await page.locator(".letter").first().click();
}

export const chooseOption = (page: Page, letter: string): Promise<void> =>
  page.locator(".letter", { hasText: new RegExp(`^${letter}$`) }).click();

/** The computed sentences of all figures on the sheet, in their order. */
export const figureSentences = (page: Page): Promise<string[]> =>
  page.locator('[role="group"].figure').evaluateAll((figures) =>
    figures.map((figure) => {
      const { id } = { id: figure.getAttribute("aria-describedby") ?? "" };
      return figure.ownerDocument.getElementById(id)?.textContent ?? "";
    }),
  );

/** Writes a new thickness over a layer's, as the hand does it: press the figure, type, Enter. */
export async function writeThickness(page: Page, layer: RegExp, text: string): Promise<void> {
  await page.getByRole("button", { name: layer }).first().click();
  const field = page.locator("input.cell-field");
  await field.fill(text);
  await field.press("Enter");
  await field.waitFor({ state: "detached" });
}

const shots = join(import.meta.dirname, "shots");

/** Keeps a picture of the window for people to look at. */
export async function keepPicture(page: Page, name: string): Promise<void> {
  await mkdir(shots, { recursive: true });
  await page.screenshot({ path: join(shots, `${name}.png`) });
}
