/** Comlink ships this file's types beside another name, where bundler resolution does not find them. */
declare module "comlink/dist/esm/node-adapter.mjs" {
  import type { Endpoint } from "comlink";
  interface NodeEndpoint {
    postMessage(message: unknown, transfer?: readonly unknown[]): void;
    on(type: string, listener: (value: unknown) => void): unknown;
    off(type: string, listener: (value: unknown) => void): unknown;
    start?: () => void;
  }
  export default function nodeEndpoint(endpoint: NodeEndpoint): Endpoint;
}
