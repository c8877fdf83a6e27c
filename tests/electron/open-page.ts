import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import type { Browser, Frame, Page } from "playwright-core";
import { root, targets } from "../../electron/tools/targets.mjs";
import type { FakeElectron, FakeFrame } from "./fake-electron.ts";

export interface OpenPage {
  readonly page: Page;
  /** What the page wrote to its console as errors, and its uncaught ones. */
  readonly errors: string[];
  close(): Promise<void>;
}

/**
 * Shows the built page in Chromium under the built preload, with the program's own scheme carried over loopback HTTP: each
 * request goes to the handler that main registered, each call of the preload to the handlers of main with the frame
 * that really made it. A page under Electron has its own isolated world for the preload; here it shares the page's.
 */
export async function openPage(browser: Browser, fake: FakeElectron): Promise<OpenPage> {
  const own = "app://wallyear";
  const server = createServer((request, response) => {
    void fake.fetch(`${own}${request.url ?? "/"}`, request.method).then(async (answer) => {
      response.writeHead(answer.status, Object.fromEntries(answer.headers));
      response.end(Buffer.from(await answer.arrayBuffer()));
    });
  });
  await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
  const origin = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  const asOwn = (url: string): string => (url.startsWith(origin) ? own + url.slice(origin.length) : url);
  const asFrame = (frame: Frame): FakeFrame => {
    const parent = frame.parentFrame();
    return { url: asOwn(frame.url()), parent: parent === null ? null : asFrame(parent) };
  };

  const window = fake.windows[0]!.window;
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  const page = await context.newPage();
  const errors: string[] = [];
  page.on("console", (message) => message.type() === "error" && errors.push(message.text()));
  page.on("pageerror", (error) => errors.push(error.message));

  // The guards of main decide what may leave the page.
  await context.route("**", async (route) => {
    const request = route.request();
    const url = asOwn(request.url());
    const leaves =
      request.isNavigationRequest() && request.frame() === page.mainFrame() && page.url() !== "about:blank";
    const mayGo = !leaves || window.webContents.tryNavigation(url);
    // A navigation that main stops leaves the page as it is; so does an answer without content.
    if (!mayGo) await route.fulfill({ status: 204 });
    else if (await fake.mayRequest(url)) await route.continue();
    else await route.abort("blockedbyclient");
  });

  await page.exposeBinding("standInInvoke", ({ frame }, channel: string, args: unknown[]) =>
    fake.invoke(asFrame(frame), channel, ...args),
  );
  const preload = await readFile(join(root, targets.preload.out, "preload.cjs"), "utf8");
  await page.addInitScript(`(() => {
    const invoke = window.standInInvoke;
    delete window.standInInvoke;
    const listeners = new Map();
    window.standInDeliver = (channel, value) => (listeners.get(channel) ?? []).forEach((listen) => listen({}, value));
    const electron = {
      contextBridge: {
        exposeInMainWorld: (name, api) => Object.defineProperty(window, name, { value: Object.freeze(api), enumerable: true }),
      },
      ipcRenderer: {
        invoke: (channel, ...args) => invoke(channel, args.map((value) => structuredClone(value))),
        on: (channel, listen) => listeners.set(channel, [...(listeners.get(channel) ?? []), listen]),
        removeListener: (channel, listen) =>
          listeners.set(channel, (listeners.get(channel) ?? []).filter((other) => other !== listen)),
      },
    };
    const require = (name) => {
      if (name !== "electron") throw new Error("a sandboxed preload cannot load " + name);
      return electron;
    };
    const module = { exports: {} };
    ((require, module, exports, process) => { ${preload} })(require, module, module.exports, undefined);
  })();`);

  await page.goto(`${origin}/index.html`);
  window.webContents.deliverBy((channel, value) => {
    void page.evaluate(
      ([to, what]) =>
        (globalThis as unknown as { standInDeliver: (c: unknown, v: unknown) => void }).standInDeliver(to, what),
      [channel, value] as const,
    );
  });
  return {
    page,
    errors,
    async close() {
      await context.close();
      server.closeAllConnections();
      await new Promise((closed) => server.close(closed));
    },
  };
}
