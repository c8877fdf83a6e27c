import { readFileSync } from "node:fs";
import { createRequire } from "node:module";

const file = "@fontsource-variable/encode-sans/files/encode-sans-latin-wdth-normal.woff2";

/** The program's typeface as a CSS rule that holds the font, so that a report looks the same anywhere; null where it is not installed. */
export function fontFaces(): string | null {
  try {
    const font = readFileSync(createRequire(import.meta.url).resolve(file)).toString("base64");
    return `@font-face { font-family: "Encode Sans Variable"; font-weight: 100 900; font-stretch: 75% 125%; src: url(data:font/woff2;base64,${font}) format("woff2"); }`;
  } catch {
    return null;
  }
}
