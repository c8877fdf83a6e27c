import { afterAll, beforeAll, expect, test } from "vitest";
import { WindowMaker } from "./open-window.ts";
import { goTo, untilQuiet } from "./sheets.ts";

let maker: WindowMaker;
beforeAll(async () => {
  maker = await WindowMaker.start();
}, 300_000);
afterAll(() => maker.end());

test("prices and carbon that the user enters are compared, can be undone and taken out", async () => {
  const { page, faults, close } = await maker.open();
  await untilQuiet(page);
  await goTo(page, "Side by Side");
  await page.getByText("Prices and carbon of your own").click();
  await page.getByLabel("A, price a m²").fill("80");
  await page.keyboard.press("Tab");
  await page.getByLabel("B, price a m²").fill("104,5");
  await page.keyboard.press("Enter");
  const row = page.getByRole("row", { name: /^Price a m²/ });
  await row.waitFor();
  expect((await row.innerText()).replace(/\s+/g, " ")).toMatch(/80 10[45]/);
  await page.getByLabel("A, price a m²").fill("cheap");
  await page.keyboard.press("Enter");
  await page.getByText(/cheap is not a number/).waitFor();
  await page.keyboard.press("Escape");
  await page.getByLabel("B, price a m²").fill("");
  await page.keyboard.press("Enter");
  await page.getByLabel("A, price a m²").fill("");
  await page.keyboard.press("Enter");
  await row.waitFor({ state: "detached" });
  expect(faults).toEqual([]);
  await close();
});
