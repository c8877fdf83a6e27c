import { programVersion } from "../../solver/index.ts";

/** What the figures were computed with, here and now. */
export function versions(): Readonly<Record<string, string>> {
  const engine = /(Chrome|Firefox|Version)\/([\d.]+)/.exec(navigator.userAgent);
  const names: Readonly<Record<string, string>> = { Chrome: "Chromium", Version: "WebKit" };
  return {
    Wallyear: programVersion,
    ...(engine ? { [names[engine[1]!] ?? engine[1]!]: engine[2]! } : {}),
  };
}
