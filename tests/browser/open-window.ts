import { join } from "node:path";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { serveLocally, type LocalServer } from "../../electron/local-server.ts";
import { buildStale, root, targets } from "../../electron/tools/targets.mjs";
import { launchChromium } from "./chromium.ts";

export interface WindowSettings {
  readonly width?: number;
  readonly height?: number;
  readonly theme?: "light" | "dark";
  /** Physical pixels a CSS pixel; 2 on screens of high density. */
  readonly pixelRatio?: number;
  readonly reducedMotion?: boolean;
}

export interface OpenWindow {
  readonly page: Page;
  readonly context: BrowserContext;
  /** Errors in the console and uncaught ones, and every request that left the page's own origin. */
  readonly faults: string[];
  close(): Promise<void>;
}

/** The built window served on a free port of this machine, and one Chromium for all windows of a test file. */
export class WindowMaker {
  readonly #server: LocalServer;
  readonly #browser: Browser;

  private constructor(server: LocalServer, browser: Browser) {
    this.#server = server;
    this.#browser = browser;
  }

  static async start(): Promise<WindowMaker> {
    await buildStale(["renderer"], { quiet: true });
    const [server, browser] = await Promise.all([serveLocally(join(root, targets.renderer.out)), launchChromium()]);
    return new WindowMaker(server, browser);
  }

  get address(): string {
    return this.#server.address;
  }

  async open(settings: WindowSettings = {}): Promise<OpenWindow> {
    const context = await this.#browser.newContext({
      viewport: { width: settings.width ?? 1280, height: settings.height ?? 800 },
      colorScheme: settings.theme ?? "light",
      deviceScaleFactor: settings.pixelRatio ?? 1,
      reducedMotion: settings.reducedMotion === true ? "reduce" : "no-preference",
      acceptDownloads: true,
    });
    const faults: string[] = [];
    const page = await context.newPage();
    page.on("console", (message) => {
      if (message.type() === "error") faults.push(`console: ${message.text()}`);
    });
    page.on("pageerror", (error) => faults.push(`uncaught: ${error.message}`));
    context.on("request", (request) => {
      const url = request.url();
      if (![this.#server.address, "blob:", "data:"].some((own) => url.startsWith(own))) faults.push(`request: ${url}`);
    });
    await page.goto(this.#server.address);
    return { page, context, faults, close: () => context.close() };
  }

  async end(): Promise<void> {
    await this.#browser.close();
    await this.#server.close();
  }
}
