import { afterAll, beforeAll, expect, test } from "vitest";
import { WindowMaker, type OpenWindow } from "./open-window.ts";
import { goTo, untilQuiet } from "./sheets.ts";

let maker: WindowMaker;
let opened: OpenWindow;
beforeAll(async () => {
  maker = await WindowMaker.start();
  opened = await maker.open();
  await untilQuiet(opened.page);
  await goTo(opened.page, "Report");
  await opened.page.locator("article.sheet").first().waitFor({ timeout: 60_000 });
}, 300_000);
afterAll(() => maker.end());

const pages = ["Client", "Official", "Builder", "Appendix", "Books"] as const;
const openPage = (title: string) => opened.page.locator(".report-page", { hasText: title }).click();

test.each(["Letter", "A4"])("every sheet holds what is set on it, on %s", async (paper) => {
  const { page, faults } = opened;
  await page.getByLabel(paper).check();
  for (const title of pages) {
    await openPage(title);
    const sheets = await page.locator("article.sheet").evaluateAll((articles) =>
      articles.map((article) => {
        const box = (element: Element | null | undefined): DOMRect => element!.getBoundingClientRect();
        const written = article.querySelector(".written")!;
        const wide = [...article.querySelectorAll<HTMLElement>("td, th, p, dd, h1, h2, li")].filter(
          (element) => element.scrollWidth > element.clientWidth + 1,
        );
        return {
          spare: box(article.querySelector(".foot")).top - box(written.lastElementChild).bottom,
          proportion: box(article).width / box(article).height,
          cut: wide.map((element) => element.textContent),
        };
      }),
    );
    expect(sheets.length).toBeGreaterThan(0);
    for (const { spare, proportion, cut } of sheets) {
      expect.soft(spare, title).toBeGreaterThanOrEqual(0);
      // ISO 216 for A4; Letter is 11 by 8.5 in.
      expect.soft(proportion, title).toBeCloseTo(paper === "A4" ? 297 / 210 : 11 / 8.5, 2);
      expect.soft(cut, title).toEqual([]);
    }
  }
  expect(faults).toEqual([]);
});

test("the printer gets one page a sheet, and the window back afterwards", async () => {
  const { page } = opened;
  await page.getByLabel("Letter").check();
  await openPage("Client");
  const sheets = Number(/of (\d+)/.exec(await page.locator("article.sheet .number dd").first().innerText())![1]);
  // The page is printed while it is laid out for it: printing itself needs a person.
  await page.exposeFunction("takePdf", async () => (await page.pdf({ preferCSSPageSize: true })).toString("latin1"));
  await page.evaluate(() => {
    const here = window as unknown as { takePdf: () => Promise<string>; taken?: Promise<string> };
    window.print = () => {
      here.taken = here.takePdf();
    };
    const remove = Element.prototype.remove;
    Element.prototype.remove = function later(this: Element) {
      void (here.taken ?? Promise.resolve("")).then(() => remove.call(this));
    };
  });
  await page.getByRole("button", { name: "Print", exact: true }).click();
  const pdf = await page.evaluate(async () => {
    const here = window as unknown as { taken?: Promise<string> };
    while (here.taken === undefined) await new Promise((resolve) => setTimeout(resolve, 50));
    return await here.taken;
  });
  expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(sheets);
  // Letter, lying: 11 by 8.5 in., 72 points an inch.
  expect(pdf).toMatch(/\/MediaBox\s*\[\s*0 0 792 612\s*\]/);
  expect(pdf.length).toBeLessThan(3_000_000);
  await page.locator(".printed-report").waitFor({ state: "detached" });
}, 60_000);

test("a report of an earlier wall cannot be saved, and says so", async () => {
  const { page } = opened;
  await goTo(page, "Wall");
  await page
    .getByRole("button", { name: /thickness/i })
    .first()
    .click();
  const field = page.locator("input.cell-field");
  await field.fill("1/2 in");
  await field.press("Enter");
  await field.waitFor({ state: "detached" });
  await goTo(page, "Report");
  await page.locator(".report-state", { hasText: "For an earlier wall" }).waitFor();
  expect(await page.locator("#report-why").innerText()).toMatch(/cannot be saved/);
  for (const verb of await page.locator(".report-verbs .verb").all())
    expect(await verb.getAttribute("aria-disabled")).toBe("true");
  await page.locator('.report-verbs .verb[aria-disabled="false"]').first().waitFor({ timeout: 60_000 });
}, 90_000);

test("known answers are computed here on request, and hold", async () => {
  const { page, faults } = opened;
  await openPage("Proof sheet");
  await page.getByRole("button", { name: /^Run all/ }).click();
  await page.getByRole("heading", { name: /that were run hold\.$/ }).waitFor({ timeout: 120_000 });
  expect(await page.locator(".proof-case").count()).toBeGreaterThan(15);
  expect(await page.locator(".proof .pencil").count()).toBe(0);
  expect(faults).toEqual([]);
}, 150_000);
