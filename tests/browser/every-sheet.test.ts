import { AxeBuilder } from "@axe-core/playwright";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { WindowMaker, type OpenWindow } from "./open-window.ts";
import { goTo, keepPicture, sheetTitles, untilQuiet } from "./sheets.ts";

let maker: WindowMaker;
let opened: OpenWindow;
beforeAll(async () => {
  maker = await WindowMaker.start();
  opened = await maker.open();
  await untilQuiet(opened.page);
}, 300_000);
afterAll(() => maker.end());

const themes = ["light", "dark"] as const;
const sizes = [
  { width: 1280, height: 800 },
  { width: 1920, height: 1080 },
] as const;
const looks = themes.flatMap((theme) => sizes.map((size) => ({ theme, ...size })));

describe.each(looks)("on $theme paper at $width x $height", ({ theme, width, height }) => {
  test("no sheet breaks a rule of accessibility, runs over its edge or writes an error", async () => {
    const { page, faults } = opened;
    await page.emulateMedia({ colorScheme: theme });
    await page.setViewportSize({ width, height });
    await page.locator(`html[data-theme="${theme}"]`).waitFor({ state: "attached" });
    for (const title of await sheetTitles(page)) {
      await goTo(page, title);
      await page.locator("main h1").first().waitFor();
      // Charts draw themselves a moment after their sheet; nothing tells when the last one is done.
      await page.waitForTimeout(1000);
      await keepPicture(page, `${title.toLowerCase().replaceAll(" ", "-")}-${width}-${theme}`);

      const { violations } = await new AxeBuilder({ page }).analyze();
      const told = violations.map(
        ({ id, nodes }) =>
          `${title}: ${id} at ${nodes
            .map((node) => node.target.join(" "))
            .slice(0, 4)
            .join("; ")}`,
      );
      expect.soft(told).toEqual([]);

      const over = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect.soft(over, `${title} runs over sideways`).toBeLessThanOrEqual(0);
    }
    expect(faults).toEqual([]);
  });
});
