import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { pageAnswer } from "./page-files.ts";

export interface LocalServer {
  /** "http://127.0.0.1:PORT/" */
  readonly address: string;
  close(): Promise<void>;
}

/**
 * Serves the built window to this machine alone, with the headers that it has on the desktop.
 *
 * @param folder  the built renderer
 * @param port    0 takes any free one
 */
export async function serveLocally(folder: string, port = 0): Promise<LocalServer> {
  const server: Server = createServer((request, response) => {
    // The raw path: a URL parser would tidy away the very tricks that the path check refuses.
    const path = (request.url ?? "/").split(/[?#]/, 1)[0] ?? "/";
    void pageAnswer(folder, request.method ?? "GET", path).then(async (answer) => {
      response.writeHead(answer.status, Object.fromEntries(answer.headers));
      response.end(Buffer.from(await answer.arrayBuffer()));
    });
  });
  await new Promise<void>((listening, failed) => {
    server.once("error", failed);
    server.listen(port, "127.0.0.1", listening);
  });
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    close: () =>
      new Promise((closed) => {
        server.closeAllConnections();
        server.close(() => closed());
      }),
  };
}
