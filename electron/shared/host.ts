/**
 * What the window may ask of the place it runs in. On the desktop the preload puts one on `window.wallyearHost`;
 * in a plain browser the renderer makes its own. Documents are named by handles, never by paths.
 *
 * Every promise resolves to null (or false) where the user cancels, and rejects with a sentence fit to be shown where the
 * host fails: "The disk is full. Free some space and save again."
 */
export interface WallyearHost {
  readonly kind: "desktop" | "browser";

  /** Lets the user choose a project file. */
  openProject(): Promise<HostDocument | null>;
  /** Writes to the document behind the handle, or asks where if there is none or `saveAs` is true. */
  saveProject(handle: string | null, text: string, saveAs: boolean): Promise<HostReference | null>;

  /** Lets the user choose a weather file. */
  openWeather(): Promise<{ name: string; text: string } | null>;

  /** Saves a text that belongs to no document: CSV, SVG, HTML. `type` is its media type. */
  saveText(suggestedName: string, text: string, type: string): Promise<boolean>;
  /** Prints the window's content, laid out by its print styles, to a PDF file; in a browser it opens the print dialog. */
  savePdf(suggestedName: string): Promise<boolean>;

  /** Latest first, at most ten; documents that no longer exist are left out. */
  recent(): Promise<readonly HostReference[]>;
  openRecent(handle: string): Promise<HostDocument | null>;

  /** Unsaved work, kept outside of the document so that a crash loses nothing. One text; a write replaces it whole. */
  readonly journal: {
    write(text: string): Promise<void>;
    read(): Promise<string | null>;
    clear(): Promise<void>;
  };

  /** Marks the window as holding unsaved work; closing it then asks first. `title` is the document's name. */
  setDirty(dirty: boolean, title: string): void;
  /** Share done of the work under way, 0..1; null: none under way. */
  setProgress(fraction: number | null): void;

  /** Menu choices arrive here as command ids (see commands.ts). Returns the function that stops listening. */
  onCommand(listener: (commandId: string) => void): () => void;
  /** A document that was opened from outside of the window: double-click on a file, a second start with a file. */
  onDocument(listener: (document: HostDocument) => void): () => void;
}

/** A document the host knows, without its content. */
export interface HostReference {
  /** Opaque; good until the program ends, except for recent documents, which are handed out anew each time. */
  readonly handle: string;
  /** File name without its folder. */
  readonly name: string;
}

export interface HostDocument extends HostReference {
  readonly text: string;
}

declare global {
  interface Window {
    readonly wallyearHost?: WallyearHost;
  }
}
