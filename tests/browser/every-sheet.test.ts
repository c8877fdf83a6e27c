import { AxeBuilder } from "@axe-core/playwright";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { WindowMaker, type OpenWindow } from "./open-window.ts";
import { goTo, keepPicture, sheetTitles, untilQuiet } from "./sheets.ts";

let maker: WindowMaker;
beforeAll(async () => {
  maker = await WindowMaker.start();
});
afterAll(() => maker.end());

const sizes = [
  { width: 1280, height: 800 },
  { width: 1920, height: 1080 },
] as const;
const themes = ["light", "dark"] as const;

describe.each(themes)("on %s paper", (theme) => {
  describe.each(sizes)("at $width x $height", ({ width, height }) => {
    let opened: OpenWindow;
    beforeAll(async () => {
      opened = await maker.open({ width, height, theme });
      await untilQuiet(opened.page);
    });
    afterAll(() => opened.close());

    test("no sheet breaks a rule of accessibility, runs over its edge or writes an error", async () => {
      const { page, faults } = opened;
      for (const title of await sheetTitles(page)) {
        await goTo(page, title);
        await page.waitForLoadState("networkidle");
        await expect.poll(() => page.locator("main").innerText()).not.toBe("");
        await page.waitForTimeout(700);
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
});
