import type { App, Session, WebContents } from "electron";
import { isOwnAddress } from "./app-scheme.ts";
import type { Log } from "./log.ts";

/** What the page may load: its own files and what it made itself. Nothing goes to the network. */
function mayLoad(address: string): boolean {
  if (isOwnAddress(address)) return true;
  if (address.startsWith("blob:")) return isOwnAddress(address.slice("blob:".length));
  return address.startsWith("data:") || address.startsWith("devtools:");
}

/** No permission is ever given, no request leaves the machine, no foreign download starts. */
export function guardSession(session: Session, log: Log): void {
  session.setPermissionRequestHandler((_contents, permission, answer) => {
    // The copy buttons of tables and figures.
    const granted = permission === "clipboard-sanitized-write";
    if (!granted) log(`Refused permission: ${permission}.`);
    answer(granted);
  });
  session.setPermissionCheckHandler((_contents, permission) => permission === "clipboard-sanitized-write");
  session.setDevicePermissionHandler(() => false);
  session.webRequest.onBeforeRequest((details, answer) => {
    const allowed = mayLoad(details.url);
    if (!allowed) log(`Refused request to ${details.url.slice(0, 200)}.`);
    answer({ cancel: !allowed });
  });
  session.on("will-download", (event, item) => {
    if (mayLoad(item.getURL())) return;
    log("Refused a download.");
    event.preventDefault();
  });
}

function guardContents(contents: WebContents, log: Log): void {
  contents.setWindowOpenHandler(({ url }) => {
    log(`Refused window: ${url.slice(0, 200)}.`);
    return { action: "deny" };
  });
  const stay = (event: { preventDefault(): void; url: string }): void => {
    if (isOwnAddress(event.url)) return;
    log(`Refused navigation to ${event.url.slice(0, 200)}.`);
    event.preventDefault();
  };
  contents.on("will-navigate", stay);
  contents.on("will-redirect", stay);
  contents.on("will-frame-navigate", stay);
  contents.on("will-attach-webview", (event) => {
    log("Refused a web view.");
    event.preventDefault();
  });
}

/** Guards every page that is ever made, before its first load. */
export function guardAllContents(app: App, log: Log): void {
  app.on("web-contents-created", (_event, contents) => guardContents(contents, log));
}
