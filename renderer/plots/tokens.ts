import { useSyncExternalStore } from "react";
import { labOf } from "./lab-colour.ts";
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

/** "#rrggbb" of any colour a style sheet may name, the system's own among them: the chart library knows only plain colours. */
function plainColour(probe: HTMLElement, value: string): string {
  probe.style.color = value;
  const parts = getComputedStyle(probe).color.match(/[\d.]+/g) ?? ["0", "0", "0"];
  return `#${parts
    .slice(0, 3)
    .map((part) => Math.round(Number(part)).toString(16).padStart(2, "0"))
    .join("")}`;
}

function read(): ChartTokens {
  const style = getComputedStyle(document.documentElement);
  const probe = document.createElement("span");
  probe.hidden = true;
  document.body.append(probe);
  const colours = Object.fromEntries(
    Object.entries(names).map(([key, name]) => [key, plainColour(probe, style.getPropertyValue(name).trim())]),
  ) as Record<keyof typeof names, string>;
  probe.remove();
  const grown = window.innerWidth >= 1600 ? 1.1 : 1;
  return {
    ...colours,
    theme: labOf(colours.paper)[0] < 50 ? "dark" : "light",
    font: getComputedStyle(document.body).fontFamily,
    label_px: 12 * grown,
    note_px: 11 * grown,
  };
}

let known: ChartTokens | null = null;
const listeners = new Set<() => void>();

function lookAgain(): void {
  const fresh = read();
  if (known && JSON.stringify(fresh) === JSON.stringify(known)) return;
  known = fresh;
  listeners.forEach((changed) => changed());
}

/** Reading styles costs; so it is done when the page's theme or width changes, and never while drawing. */
function current(): ChartTokens {
  if (!known) {
    known = read();
    new MutationObserver(lookAgain).observe(document.documentElement, { attributes: true });
    for (const query of ["(prefers-color-scheme: dark)", "(forced-colors: active)", "(min-width: 1600px)"])
      matchMedia(query).addEventListener("change", lookAgain);
  }
  return known;
}

function subscribe(changed: () => void): () => void {
  listeners.add(changed);
  return () => listeners.delete(changed);
}

/** The chart tokens of the theme that the page shows now. */
export const useChartTokens = (): ChartTokens => useSyncExternalStore(subscribe, current);
