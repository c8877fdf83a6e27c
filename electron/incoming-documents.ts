import { resolve } from "node:path";
import type { Documents } from "./documents.ts";
import { isProjectPath } from "./documents.ts";
import { HostFailure } from "./host-failure.ts";
import type { HostDocument } from "./shared/host.ts";

/** The project file among the words of a command line, made absolute; null where there is none. */
export function projectIn(words: readonly string[], folder: string): string | null {
  const named = words.slice(1).find((word) => !word.startsWith("-") && isProjectPath(word));
  return named === undefined ? null : resolve(folder, named);
}

interface Wiring {
  readonly documents: Documents;
  readonly send: (document: HostDocument) => void;
  readonly showFailure: (sentence: string) => void;
}

/** Documents that come from outside of the window; they wait until the window listens. */
export class IncomingDocuments {
  #waiting: string | null = null;
  #wiring: Wiring | null = null;

  take(path: string | null): void {
    if (path === null) return;
    this.#waiting = path;
    void this.#deliver();
  }

  /** The window is there and listens. */
  deliverTo(wiring: Wiring): void {
    this.#wiring = wiring;
    void this.#deliver();
  }

  /** The window is gone or reloads. */
  pause(): void {
    this.#wiring = null;
  }

  async #deliver(): Promise<void> {
    const path = this.#waiting;
    const wiring = this.#wiring;
    if (path === null || wiring === null) return;
    this.#waiting = null;
    try {
      wiring.send(await wiring.documents.openPath(path));
    } catch (error) {
      wiring.showFailure(error instanceof HostFailure ? error.message : "The document could not be opened.");
    }
  }
}
