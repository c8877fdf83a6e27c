/**
 * Share of the sun that a face of this colour absorbs. Light 0.3, middle 0.6, dark 0.9: ISO 13790:2008 and its successors (MEMORY);
 * the names between are common practice without a source. New paint lies lower, dirt brings light colours up.
 */
export const solarAbsorptances = {
  white: 0.25,
  cream: 0.35,
  "light grey": 0.45,
  yellow: 0.45,
  "bare wood": 0.55,
  grey: 0.6,
  "light blue": 0.55,
  "light green": 0.5,
  "red brick": 0.65,
  red: 0.7,
  "weathered wood": 0.7,
  brown: 0.75,
  green: 0.75,
  blue: 0.8,
  "dark grey": 0.85,
  "dark brown": 0.88,
  black: 0.93,
  light: 0.3,
  medium: 0.6,
  dark: 0.9,
} as const;

export type ColourName = keyof typeof solarAbsorptances;
export const colourNames = Object.keys(solarAbsorptances) as readonly ColourName[];

/** Absorptance by colour name, whatever its case, "gray" and "grey" alike; undefined for a name that is not in the table. */
export function solarAbsorptanceOf(colour: string): number | undefined {
  const name = colour.trim().toLowerCase().replaceAll("gray", "grey").replace(/\s+/g, " ");
  return Object.hasOwn(solarAbsorptances, name) ? solarAbsorptances[name as ColourName] : undefined;
}
