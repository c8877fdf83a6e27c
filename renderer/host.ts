/** The window's only door to what lies outside of it: the desktop's host where there is one, else the browser's stand-in. */
import type { WallyearHost } from "../electron/shared/index.ts";
import { browserHost } from "./browser-host.ts";

export const host: WallyearHost = window.wallyearHost ?? browserHost();
