import type { BrowserWindow, Dialog } from "electron";

interface Wiring {
  readonly dialog: Pick<Dialog, "showMessageBox">;
  /** Asks the window to save; it reports by setDirty(false). */
  readonly askToSave: () => void;
  /** The user gives the unsaved work up. */
  readonly onDiscard: () => Promise<void>;
}

/** Asks before a window with unsaved work closes. */
export class CloseGuard {
  readonly #window: BrowserWindow;
  readonly #wiring: Wiring;
  #dirty = false;
  #title = "this wall";
  #closesWhenSaved = false;
  #asking = false;

  constructor(window: BrowserWindow, wiring: Wiring) {
    this.#window = window;
    this.#wiring = wiring;
    window.on("close", (event) => {
      if (!this.#dirty) return;
      event.preventDefault();
      if (!this.#asking) void this.#ask();
    });
  }

  setDirty(dirty: boolean, title: string): void {
    this.#dirty = dirty;
    if (title !== "") this.#title = title;
    if (!dirty && this.#closesWhenSaved) this.#window.close();
  }

  /** The save was cancelled or failed: the window stays. */
  staysOpen(): void {
    this.#closesWhenSaved = false;
  }

  async #ask(): Promise<void> {
    this.#asking = true;
    try {
      const { response } = await this.#wiring.dialog.showMessageBox(this.#window, {
        type: "question",
        message: `Save the changes to ${this.#title}?`,
        detail: "Without saving, the changes since the last save are lost.",
        buttons: ["Save", "Don't save", "Cancel"],
        defaultId: 0,
        cancelId: 2,
        noLink: true,
      });
      if (response === 0) {
        this.#closesWhenSaved = true;
        this.#wiring.askToSave();
      } else if (response === 1) {
        await this.#wiring.onDiscard();
        this.#dirty = false;
        this.#window.close();
      }
    } finally {
      this.#asking = false;
    }
  }
}
