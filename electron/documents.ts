import { randomUUID } from "node:crypto";
import { readFile, stat } from "node:fs/promises";
import { basename } from "node:path";
import type { BrowserWindow, Dialog, FileFilter } from "electron";
import { fileFailure, HostFailure } from "./host-failure.ts";
import type { RecentDocuments } from "./recent-documents.ts";
import { saveWithPrevious, writeWhole } from "./save-file.ts";
import type { HostDocument, HostReference } from "./shared/host.ts";

const largestFile_bytes = 64 * 1024 * 1024;

const projectFilters: FileFilter[] = [
  { name: "Wallyear project", extensions: ["wallyear.json", "wallyear", "json"] },
  { name: "All files", extensions: ["*"] },
];
const weatherFilters: FileFilter[] = [
  { name: "Weather (EPW, TMY3, logger)", extensions: ["epw", "csv", "txt"] },
  { name: "All files", extensions: ["*"] },
];

export const isProjectPath = (path: string): boolean => /\.wallyear(\.json)?$/i.test(path);

interface Wiring {
  readonly dialog: Pick<Dialog, "showOpenDialog" | "showSaveDialog">;
  readonly recent: RecentDocuments;
  /** Told of every document opened or saved, for the menu and the system's own list. */
  readonly onUse: (path: string) => void;
}

async function readText(path: string): Promise<string> {
  try {
    const { size } = await stat(path);
    if (size > largestFile_bytes)
      throw new HostFailure(
        `${basename(path)} has ${Math.round(size / 1024 / 1024)} MB. Files of up to 64 MB are read; choose a smaller one.`,
      );
    return await readFile(path, "utf8");
  } catch (error) {
    throw error instanceof HostFailure ? error : fileFailure("open", path, error);
  }
}

/** Files the window works with. It holds handles; the paths behind them never leave this module. */
export class Documents {
  readonly #paths = new Map<string, string>();
  readonly #wiring: Wiring;

  constructor(wiring: Wiring) {
    this.#wiring = wiring;
  }

  #reference(path: string): HostReference {
    const handle = randomUUID();
    this.#paths.set(handle, path);
    return { handle, name: basename(path) };
  }

  #pathOf(handle: string): string {
    const path = this.#paths.get(handle);
    if (path === undefined)
      throw new HostFailure("This document is no longer known. Use Save as to choose where it goes.");
    return path;
  }

  async #used(path: string): Promise<void> {
    await this.#wiring.recent.add(path).catch(() => undefined);
    this.#wiring.onUse(path);
  }

  async openPath(path: string): Promise<HostDocument> {
    const text = await readText(path);
    await this.#used(path);
    return { ...this.#reference(path), text };
  }

  async open(window: BrowserWindow): Promise<HostDocument | null> {
    const chosen = await this.#wiring.dialog.showOpenDialog(window, {
      properties: ["openFile"],
      filters: projectFilters,
    });
    const path = chosen.canceled ? undefined : chosen.filePaths[0];
    return path === undefined ? null : this.openPath(path);
  }

  openHandle(handle: string): Promise<HostDocument> {
    return this.openPath(this.#pathOf(handle));
  }

  async openWeather(window: BrowserWindow): Promise<{ name: string; text: string } | null> {
    const chosen = await this.#wiring.dialog.showOpenDialog(window, {
      properties: ["openFile"],
      filters: weatherFilters,
    });
    const path = chosen.canceled ? undefined : chosen.filePaths[0];
    return path === undefined ? null : { name: basename(path), text: await readText(path) };
  }

  async save(
    window: BrowserWindow,
    given: { handle: string | null; text: string; suggestedName: string; saveAs: boolean },
  ): Promise<HostReference | null> {
    const known = given.handle === null ? null : this.#pathOf(given.handle);
    const path =
      known !== null && !given.saveAs
        ? known
        : await this.#askWhere(window, known ?? given.suggestedName, projectFilters);
    if (path === null) return null;
    try {
      await saveWithPrevious(path, given.text);
    } catch (error) {
      throw fileFailure("save", path, error);
    }
    await this.#used(path);
    return path === known && given.handle !== null
      ? { handle: given.handle, name: basename(path) }
      : this.#reference(path);
  }

  /** Saves what belongs to no document. */
  async export(window: BrowserWindow, suggestedName: string, content: string | Uint8Array): Promise<boolean> {
    const ending = /\.([a-z0-9]+)$/i.exec(suggestedName)?.[1];
    const filters = ending === undefined ? [] : [{ name: ending.toUpperCase(), extensions: [ending] }];
    const path = await this.#askWhere(window, suggestedName, filters);
    if (path === null) return false;
    try {
      await writeWhole(path, content);
    } catch (error) {
      throw fileFailure("save", path, error);
    }
    return true;
  }

  async references(): Promise<HostReference[]> {
    return (await this.#wiring.recent.list()).map((path) => this.#reference(path));
  }

  async #askWhere(window: BrowserWindow, defaultPath: string, filters: FileFilter[]): Promise<string | null> {
    const chosen = await this.#wiring.dialog.showSaveDialog(window, { defaultPath, filters });
    return chosen.canceled || chosen.filePath === "" ? null : chosen.filePath;
  }
}
