import { between, hexOf, labOf } from "./lab-colour.ts";

/** The map scales, each a row of stops evenly spaced by CIEDE2000, interpolated in CIELAB. */
export type ScaleName = "stain" | "frost" | "shift";
export type ThemeName = "light" | "dark";

const stops: Record<ScaleName, Record<ThemeName, readonly string[]>> = {
  stain: {
    light: ["F5F2E9", "E5D5B5", "D1B08A", "BD8E6E", "A87260", "955B59", "7D4759", "593653", "302442"],
    dark: ["1E1F25", "373145", "5E4058", "864F5E", "A16560", "B37B63", "CB9D78", "E3C497", "FDF0CC"],
  },
  frost: {
    light: ["0F323F", "214E5B", "356871", "4E7E7C", "6B9388", "8AA890", "AEBC97", "D4CFA8", "FAF0D6"],
    dark: ["0F323F", "214E5B", "356871", "4E7E7C", "6B9388", "8AA890", "AEBC97", "D4CFA8", "FAF0D6"],
  },
  shift: {
    light: ["613D6F", "84688F", "A690AD", "CDC2D0", "F3F3F3", "B4C6C7", "789C9F", "44797D", "00555B"],
    dark: ["CDC2D0", "A690AD", "84688F", "613D6F", "222222", "00555B", "44797D", "789C9F", "B4C6C7"],
  },
};

export const scaleStops = (name: ScaleName, theme: ThemeName): readonly string[] =>
  stops[name][theme].map((hex) => `#${hex.toLowerCase()}`);

/** The colour at share t of a scale, 0 to 1; beyond the ends the end colour stands. */
export function colourAt(name: ScaleName, theme: ThemeName, t: number): string {
  const row = stops[name][theme];
  const place = Math.min(1, Math.max(0, Number.isFinite(t) ? t : 0)) * (row.length - 1);
  const lower = Math.min(row.length - 2, Math.floor(place));
  return hexOf(between(labOf(row[lower]!), labOf(row[lower + 1]!), place - lower));
}

/** Fine ramp for charts and gradients: [share, colour], 0 to 1. Finer than the eye, so straight sRGB steps between do no harm. */
export function colourRamp(name: ScaleName, theme: ThemeName, steps = 64): [number, string][] {
  return Array.from({ length: steps + 1 }, (_, i) => [i / steps, colourAt(name, theme, i / steps)]);
}

export const cssGradient = (name: ScaleName, theme: ThemeName): string =>
  `linear-gradient(to right, ${colourRamp(name, theme, 32)
    .map(([t, colour]) => `${colour} ${(100 * t).toFixed(2)}%`)
    .join(", ")})`;
