import { readFile } from "node:fs/promises";
import { extname, resolve, sep } from "node:path";

/** What the page may load and reach: its own files, nothing of the network. Styles are set by the charts at run time. */
const contentPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "worker-src 'self' blob:",
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join("; ");

/** Sent with every file of the page. The first two isolate it, so that its workers may share memory. */
export const pageHeaders: Readonly<Record<string, string>> = {
  "Cross-Origin-Opener-Policy": "same-origin",
  "Cross-Origin-Embedder-Policy": "require-corp",
  "Cross-Origin-Resource-Policy": "same-origin",
  "Content-Security-Policy": contentPolicy,
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
  "Cache-Control": "no-cache",
};

const mediaTypes: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".mjs": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".woff2": "font/woff2",
  ".woff": "font/woff",
  ".txt": "text/plain; charset=utf-8",
  ".csv": "text/csv; charset=utf-8",
};

/** The file below `folder` that a request path names, or null where the path is malformed or leads out of the folder. */
export function fileBelow(folder: string, requestPath: string): string | null {
  let path: string;
  try {
    path = decodeURIComponent(requestPath);
  } catch {
    return null;
  }
  if (path.includes("\0") || path.includes("\\")) return null;
  const base = resolve(folder);
  const file = resolve(base, `.${path.startsWith("/") ? "" : "/"}${path}`);
  if (file !== base && !file.startsWith(base + sep)) return null;
  return path.endsWith("/") ? resolve(file, "index.html") : file;
}

const plain = (status: number, words: string): Response =>
  new Response(words, { status, headers: { ...pageHeaders, "Content-Type": "text/plain; charset=utf-8" } });

/** The answer to one request for a file of the page. Only GET and HEAD; only files of known kinds below `folder`. */
export async function pageAnswer(folder: string, method: string, requestPath: string): Promise<Response> {
  if (method !== "GET" && method !== "HEAD") return plain(405, "Only GET is answered here.");
  const file = fileBelow(folder, requestPath);
  if (file === null) return plain(403, "This path leads out of the program's folder.");
  const type = mediaTypes[extname(file)];
  if (type === undefined) return plain(404, "There is no such file.");
  try {
    const body = await readFile(file);
    return new Response(method === "HEAD" ? null : new Uint8Array(body), {
      status: 200,
      headers: { ...pageHeaders, "Content-Type": type, "Content-Length": String(body.length) },
    });
  } catch {
    return plain(404, "There is no such file.");
  }
}
