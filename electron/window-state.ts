import { readFileSync } from "node:fs";
import type { BrowserWindow, Rectangle } from "electron";
import { z } from "zod";
import { writeWhole } from "./save-file.ts";

const whole = z.number().int().min(-100_000).max(100_000);
const schema = z.object({ x: whole, y: whole, width: whole.min(1), height: whole.min(1), maximized: z.boolean() });
export type WindowState = z.infer<typeof schema>;

/** The size that every sheet is drawn for. */
export const usualSize = { width: 1280, height: 800 } as const;
export const smallestSize = { width: 960, height: 600 } as const;

/** The state of the last session, or null where there is none or it is damaged. */
export function readWindowState(path: string): WindowState | null {
  try {
    return schema.parse(JSON.parse(readFileSync(path, "utf8")));
  } catch {
    return null;
  }
}

/** Bounds that can be reached: those of the last session where enough of the window lies on a screen, else the usual size. */
export function reachableBounds(state: WindowState | null, screens: readonly Rectangle[]): Partial<Rectangle> {
  if (state === null) return usualSize;
  const width = Math.max(state.width, smallestSize.width);
  const height = Math.max(state.height, smallestSize.height);
  const reachable = screens.some((screen) => {
    const across = Math.min(state.x + width, screen.x + screen.width) - Math.max(state.x, screen.x);
    // The title bar must be on the screen, or the window can't be moved.
    return across >= 120 && state.y >= screen.y && state.y <= screen.y + screen.height - 60;
  });
  return reachable ? { x: state.x, y: state.y, width, height } : { width, height };
}

/** Keeps the file up to date while the window is moved and sized. */
export function keepWindowState(window: BrowserWindow, path: string): void {
  let timer: NodeJS.Timeout | null = null;
  const write = (): void => {
    timer = null;
    if (window.isDestroyed() || window.isMinimized()) return;
    const state: WindowState = { ...window.getNormalBounds(), maximized: window.isMaximized() };
    void writeWhole(path, JSON.stringify(state)).catch(() => undefined);
  };
  const later = (): void => {
    if (timer !== null) clearTimeout(timer);
    timer = setTimeout(write, 400);
  };
  window.on("resize", later);
  window.on("move", later);
  window.on("maximize", later);
  window.on("unmaximize", later);
}
