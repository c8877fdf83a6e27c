import { afterAll, beforeAll, expect, test } from "vitest";
import { WindowMaker } from "./open-window.ts";
import { untilQuiet } from "./sheets.ts";

let maker: WindowMaker;
beforeAll(async () => {
  maker = await WindowMaker.start();
}, 300_000);
afterAll(() => maker.end());

test("swaps are run when asked for, come in one by one, and can be stopped", async () => {
  const { page, faults, close } = await maker.open();
  await untilQuiet(page);
  const swaps = page.locator(".wall-swaps");
  await swaps.getByRole("button", { name: /Try \d+ swaps/ }).click();
  await swaps.getByText("keeps the findings").first().waitFor({ timeout: 60_000 });
  expect(await swaps.getByText("not run yet").count()).toBeGreaterThan(0);
  await swaps.getByText("Stop and keep").click();
  await swaps
    .getByText(/Run the rest|stopped/)
    .first()
    .waitFor();
  expect(await swaps.getByText("keeps the findings").count()).toBeGreaterThan(0);
  expect(faults).toEqual([]);
  await close();
});
