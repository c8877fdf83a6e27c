import { colourNames, solarAbsorptances, terrains, type Shelter } from "../../climate/index.ts";
import { share } from "../units/index.ts";

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Trade words for the ground around the house. */
export const shelterWords = (["sheltered", "medium", "severe"] as const satisfies readonly Shelter[]).map((value) => ({
  value,
  words: `${capital(value)}: ${terrains[value].words}`,
}));

/** Colours by name, each with the share of the sun that it takes up. */
export const colourWords = colourNames.map((name) => ({
  value: name,
  words: `${capital(name)}, takes up ${share(solarAbsorptances[name])} of the sun`,
}));

export const directions = [
  { value: "0", words: "North" },
  { value: "45", words: "North-east" },
  { value: "90", words: "East" },
  { value: "135", words: "South-east" },
  { value: "180", words: "South" },
  { value: "225", words: "South-west" },
  { value: "270", words: "West" },
  { value: "315", words: "North-west" },
] as const;

export const years = [
  { value: "typical", words: "A typical year" },
  { value: "cold", words: "A cold year" },
  { value: "wet", words: "A wet year" },
] as const;

/** The list with the present value added where it is none of the usual ones. */
export const withPresent = <Value extends string>(
  list: readonly { readonly value: Value; readonly words: string }[],
  present: string,
  words: string,
): readonly { readonly value: string; readonly words: string }[] =>
  list.some(({ value }) => value === present) ? list : [...list, { value: present, words }];
