import { protocol } from "electron";
import { pageAnswer } from "./page-files.ts";

const scheme = "app";
const host = "wallyear";

export const pageAddress = `${scheme}://${host}/index.html`;

/** True for addresses of the program's own page and nothing else. */
export function isOwnAddress(address: string): boolean {
  try {
    const { protocol: given, host: givenHost, username, password } = new URL(address);
    return given === `${scheme}:` && givenHost === host && username === "" && password === "";
  } catch {
    return false;
  }
}

/** Must run before Electron is ready: gives the scheme an origin, fetch, workers and the right to be isolated. */
export function registerAppScheme(): void {
  protocol.registerSchemesAsPrivileged([
    { scheme, privileges: { standard: true, secure: true, supportFetchAPI: true, codeCache: true } },
  ]);
}

/** Answers the scheme from the folder of the built window. */
export function serveAppScheme(folder: string): void {
  protocol.handle(scheme, (request) => {
    if (!isOwnAddress(request.url)) return new Response("There is no such place.", { status: 404 });
    return pageAnswer(folder, request.method, new URL(request.url).pathname);
  });
}
