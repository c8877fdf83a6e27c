import { EventEmitter } from "node:events";

/**
 * A stand-in for the `electron` module: stateful, and strict where Electron is. What it has no answer for, it throws at.
 *
 * It keeps the order of a start (`ready` comes only after the entry module has loaded), refuses what Electron refuses
 * before or after it, clones what crosses between processes, and lets a test play the frame, the user at a dialog and the
 * window manager. It knows nothing of real sandboxes, isolated worlds, native menus or printing.
 */

export interface FakeFrame {
  readonly url: string;
  readonly parent: FakeFrame | null;
}

type Handler = (event: { senderFrame: FakeFrame | null; sender: unknown }, ...args: unknown[]) => unknown;

const clone = (value: unknown): unknown => (value === undefined ? undefined : structuredClone(value));

class PreventableEvent {
  defaultPrevented = false;
  readonly url: string;
  constructor(url = "") {
    this.url = url;
  }
  preventDefault(): void {
    this.defaultPrevented = true;
  }
}

export class FakeWebContents extends EventEmitter {
  readonly sent: { channel: string; value: unknown }[] = [];
  #deliver: ((channel: string, value: unknown) => void) | null = null;
  windowOpenHandler: ((details: { url: string }) => { action: string }) | null = null;
  reloads = 0;

  /** The page is there: what was sent before it is lost, as in Electron. */
  deliverBy(deliver: (channel: string, value: unknown) => void): void {
    this.#deliver = deliver;
  }
  send(channel: string, ...args: unknown[]): void {
    if (args.length > 1) throw new Error("this program sends one value at a time");
    const value = clone(args[0]);
    this.sent.push({ channel, value });
    this.#deliver?.(channel, value);
  }
  setWindowOpenHandler(handler: (details: { url: string }) => { action: string }): void {
    this.windowOpenHandler = handler;
  }
  printToPDF(): Promise<Uint8Array> {
    return Promise.resolve(new TextEncoder().encode("%PDF-1.7 stand-in"));
  }
  reload(): void {
    this.reloads++;
  }
  /** The page wants to go elsewhere. True: it may. */
  tryNavigation(url: string): boolean {
    const event = new PreventableEvent(url);
    this.emit("will-navigate", event, url);
    return !event.defaultPrevented;
  }
  tryWindow(url: string): boolean {
    if (this.windowOpenHandler === null) return true;
    return this.windowOpenHandler({ url }).action !== "deny";
  }
}

export interface FakeWindowOptions {
  readonly webPreferences: Readonly<Record<string, unknown>> & { readonly preload: string };
  readonly [name: string]: unknown;
}

export class FakeElectron {
  phase: "loading" | "ready" | "quit" = "loading";
  readonly userData: string;
  readonly isSecondInstance: boolean;

  readonly windows: { window: FakeWindow; options: FakeWindowOptions }[] = [];
  readonly handlers = new Map<string, Handler>();
  readonly schemes = new Map<string, Readonly<Record<string, boolean>>>();
  readonly schemeHandlers = new Map<string, (request: Request) => Promise<Response> | Response>();
  readonly recentDocuments: string[] = [];
  /** What the user will answer to the dialogs to come, in order. */
  readonly answers: ({ open: string | null } | { save: string | null } | { button: number })[] = [];
  readonly asked: { kind: string; options: Record<string, unknown> }[] = [];
  menu: unknown = null;
  permissionHandler: ((contents: unknown, permission: string, answer: (granted: boolean) => void) => void) | null =
    null;
  requestHandler: ((details: { url: string }, answer: (verdict: { cancel: boolean }) => void) => void) | null = null;

  readonly #ready = deferred();
  readonly app = new FakeApp(this, () => this.#ready.promise);

  constructor(settings: { readonly userData: string; readonly isSecondInstance?: boolean }) {
    this.userData = settings.userData;
    this.isSecondInstance = settings.isSecondInstance ?? false;
  }

  /** The entry module has loaded: Electron becomes ready. */
  async becomeReady(): Promise<void> {
    if (this.phase !== "loading") return;
    this.phase = "ready";
    this.app.emit("ready");
    this.#ready.resolve();
    await new Promise((turn) => setImmediate(turn));
  }

  need(phase: "loading" | "ready", what: string): void {
    if (phase === "ready" && this.phase === "loading")
      throw new Error(`${what} cannot be used before the app is ready`);
    if (phase === "loading" && this.phase !== "loading")
      throw new Error(`${what} must be called before the app is ready`);
  }

  /** A frame asks the main process. Both ways are cloned, as between processes. */
  async invoke(frame: FakeFrame | null, channel: string, ...args: unknown[]): Promise<unknown> {
    const handler = this.handlers.get(channel);
    if (handler === undefined) throw new Error(`No handler registered for '${channel}'`);
    const sender = this.windows[0]?.window.webContents;
    const answer = await handler({ senderFrame: frame, sender }, ...args.map(clone));
    return clone(answer);
  }

  /** The page's server: what the program's own scheme would answer. */
  async fetch(url: string, method = "GET"): Promise<Response> {
    const scheme = new URL(url).protocol.slice(0, -1);
    const handler = this.schemeHandlers.get(scheme);
    if (handler === undefined) throw new Error(`nothing handles ${scheme}:`);
    return handler({ url, method } as Request);
  }

  /** Whether the session lets a request out. */
  mayRequest(url: string): Promise<boolean> {
    return new Promise((resolve) => {
      if (this.requestHandler === null) resolve(true);
      else this.requestHandler({ url }, ({ cancel }) => resolve(!cancel));
    });
  }

  /** Whether a permission is given. */
  mayUse(permission: string): Promise<boolean> {
    return new Promise((resolve) => {
      if (this.permissionHandler === null) resolve(true);
      else this.permissionHandler(null, permission, resolve);
    });
  }

  nextAnswer(kind: "open" | "save" | "button", options: Record<string, unknown>): string | number | null {
    this.asked.push({ kind, options: clone(options) as Record<string, unknown> });
    const answer = this.answers.shift();
    if (answer === undefined || !(kind in answer)) throw new Error(`a dialog (${kind}) came up that no one expected`);
    return (answer as Record<string, string | number | null>)[kind]!;
  }

  /** What `import "electron"` gives to the main process. */
  get module(): Record<string, unknown> {
    // eslint-disable-next-line @typescript-eslint/no-this-alias -- the class below needs it beside its own `this`
    const fake = this;
    return {
      app: this.app,
      BrowserWindow: class extends FakeWindow {
        constructor(options: FakeWindowOptions) {
          super(fake, options);
        }
      },
      ipcMain: {
        handle(channel: string, handler: Handler) {
          if (fake.handlers.has(channel)) throw new Error(`Attempted to register a second handler for '${channel}'`);
          fake.handlers.set(channel, handler);
        },
      },
      protocol: {
        registerSchemesAsPrivileged(schemes: { scheme: string; privileges: Record<string, boolean> }[]) {
          fake.need("loading", "protocol.registerSchemesAsPrivileged");
          if (fake.schemes.size > 0) throw new Error("registerSchemesAsPrivileged may be called only once");
          for (const { scheme, privileges } of schemes) fake.schemes.set(scheme, privileges);
        },
        handle(scheme: string, handler: (request: Request) => Promise<Response>) {
          fake.need("ready", "protocol.handle");
          const privileges = fake.schemes.get(scheme);
          for (const needed of ["standard", "secure", "supportFetchAPI"])
            if (privileges?.[needed] !== true)
              throw new Error(`${scheme}: is not ${needed}; the page's modules and workers would not load`);
          fake.schemeHandlers.set(scheme, handler);
        },
      },
      dialog: {
        showOpenDialog(_window: unknown, options: Record<string, unknown>) {
          const path = fake.nextAnswer("open", options) as string | null;
          return Promise.resolve({ canceled: path === null, filePaths: path === null ? [] : [path] });
        },
        showSaveDialog(_window: unknown, options: Record<string, unknown>) {
          const path = fake.nextAnswer("save", options) as string | null;
          return Promise.resolve({ canceled: path === null, filePath: path ?? "" });
        },
        showMessageBox(_window: unknown, options: Record<string, unknown>) {
          return Promise.resolve({ response: fake.nextAnswer("button", options) as number, checkboxChecked: false });
        },
      },
      Menu: {
        buildFromTemplate: (template: unknown) => template,
        setApplicationMenu(menu: unknown) {
          fake.menu = menu;
        },
      },
      screen: {
        getAllDisplays() {
          fake.need("ready", "screen");
          return [{ workArea: { x: 0, y: 0, width: 1920, height: 1040 } }];
        },
      },
      session: {
        get defaultSession() {
          fake.need("ready", "session.defaultSession");
          return {
            setPermissionRequestHandler: (handler: typeof fake.permissionHandler) =>
              void (fake.permissionHandler = handler),
            setPermissionCheckHandler: () => undefined,
            setDevicePermissionHandler: () => undefined,
            webRequest: {
              onBeforeRequest: (handler: typeof fake.requestHandler) => void (fake.requestHandler = handler),
            },
            on: () => undefined,
          };
        },
      },
    };
  }
}

function deferred(): { promise: Promise<void>; resolve: () => void; reject: (error: Error) => void } {
  let resolve!: () => void;
  let reject!: (error: Error) => void;
  const promise = new Promise<void>((onResolve, onReject) => {
    resolve = onResolve;
    reject = onReject;
  });
  return { promise, resolve, reject };
}

class FakeApp extends EventEmitter {
  readonly #fake: FakeElectron;
  readonly whenReady: () => Promise<void>;
  constructor(fake: FakeElectron, whenReady: () => Promise<void>) {
    super();
    this.#fake = fake;
    this.whenReady = whenReady;
  }
  getPath(name: string): string {
    if (name !== "userData") throw new Error(`getPath("${name}") is not expected of this program`);
    return this.#fake.userData;
  }
  requestSingleInstanceLock(): boolean {
    return !this.#fake.isSecondInstance;
  }
  addRecentDocument(path: string): void {
    this.#fake.recentDocuments.push(path);
  }
  quit(): void {
    this.#fake.phase = "quit";
  }
}

export class FakeWindow extends EventEmitter {
  readonly webContents = new FakeWebContents();
  title = "";
  progress = -1;
  edited = false;
  shown = false;
  loaded: string | null = null;
  focused = 0;
  #destroyed = false;
  readonly #fake: FakeElectron;

  constructor(fake: FakeElectron, options: FakeWindowOptions) {
    super();
    fake.need("ready", "BrowserWindow");
    this.#fake = fake;
    fake.windows.push({ window: this, options });
    fake.app.emit("web-contents-created", {}, this.webContents);
  }
  #alive(): void {
    if (this.#destroyed) throw new TypeError("Object has been destroyed");
  }
  loadURL(url: string): Promise<void> {
    this.#alive();
    this.loaded = url;
    setImmediate(() => this.emit("ready-to-show"));
    return Promise.resolve();
  }
  show(): void {
    this.shown = true;
  }
  setTitle(title: string): void {
    this.#alive();
    this.title = title;
  }
  setProgressBar(progress: number): void {
    this.#alive();
    if (!Number.isFinite(progress)) throw new TypeError("progress must be a number");
    this.progress = progress;
  }
  setDocumentEdited(edited: boolean): void {
    this.edited = edited;
  }
  isDestroyed(): boolean {
    return this.#destroyed;
  }
  isMinimized(): boolean {
    return false;
  }
  isMaximized(): boolean {
    return false;
  }
  maximize(): void {
    this.emit("maximize");
  }
  restore(): void {
    this.emit("restore");
  }
  focus(): void {
    this.focused++;
  }
  getNormalBounds(): { x: number; y: number; width: number; height: number } {
    return { x: 40, y: 40, width: 1280, height: 800 };
  }
  /** The user, or the program, closes the window; it may be talked out of it. */
  close(): void {
    if (this.#destroyed) return;
    const event = new PreventableEvent();
    this.emit("close", event);
    if (event.defaultPrevented) return;
    this.#destroyed = true;
    this.emit("closed");
    this.#fake.app.emit("window-all-closed");
  }
}
