import { useSyncExternalStore } from "react";
import type { ThemeName } from "./scales.ts";

/** The colours and sizes that charts need as plain values; read from the page's custom properties. */
export interface ChartTokens {
  readonly theme: ThemeName;
  readonly paper: string;
  readonly ink: string;
  readonly ink2: string;
  readonly ink3: string;
  readonly hatch: string;
  readonly inside: string;
  readonly outside: string;
  readonly pencil: string;
  readonly airLine: string;
  readonly hair: string;
  readonly hair2: string;
  readonly wood: string;
  readonly font: string;
  /** Labels on lines, and notes and ticks [px]. */
  readonly label_px: number;
  readonly note_px: number;
}

const names = {
  paper: "--paper",
  ink: "--ink",
  ink2: "--ink2",
  ink3: "--ink3",
  hatch: "--hatch",
  inside: "--inside",
  outside: "--outside",
  pencil: "--pencil",
  airLine: "--air",
  hair: "--hair",
  hair2: "--hair2",
  wood: "--wood",
} as const;

function lightness(colour: string): number {
  const match = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})/i.exec(colour);
  return match ? match.slice(1).reduce((sum, part) => sum + parseInt(part, 16), 0) / 765 : 1;
}

function read(): ChartTokens {
  const style = getComputedStyle(document.documentElement);
  const value = (name: string): string => style.getPropertyValue(name).trim();
  const colours = Object.fromEntries(Object.entries(names).map(([key, name]) => [key, value(name)])) as Record<
    keyof typeof names,
    string
  >;
  const grown = window.innerWidth >= 1600 ? 1.1 : 1;
  return {
    ...colours,
    theme: lightness(colours.paper) < 0.5 ? "dark" : "light",
    font: getComputedStyle(document.body).fontFamily,
    label_px: 12 * grown,
    note_px: 11 * grown,
  };
}

let known: ChartTokens | null = null;
function current(): ChartTokens {
  const fresh = read();
  if (!known || JSON.stringify(fresh) !== JSON.stringify(known)) known = fresh;
  return known;
}

function subscribe(changed: () => void): () => void {
  const observer = new MutationObserver(changed);
  observer.observe(document.documentElement, { attributes: true });
  const media = [matchMedia("(prefers-color-scheme: dark)"), matchMedia("(forced-colors: active)")];
  media.forEach((query) => query.addEventListener("change", changed));
  window.addEventListener("resize", changed);
  return () => {
    observer.disconnect();
    media.forEach((query) => query.removeEventListener("change", changed));
    window.removeEventListener("resize", changed);
  };
}

/** The chart tokens of the theme that the page shows now. */
export const useChartTokens = (): ChartTokens => useSyncExternalStore(subscribe, current);
