import { fahrenheit, kgPerCup, metrePerInch, rsiPerR, sheetArea_m2 } from "../units.ts";

export type UnitSystem = "si" | "ip";
type Kind =
  | "temperature"
  | "temperatureDifference"
  | "humidity"
  | "moisture"
  | "thickness"
  | "board"
  | "resistance"
  | "transmittance"
  | "water"
  | "share"
  | "days"
  | "flow"
  | "heat";

/** A number within a sentence, SI inside; said in the reader's units, rounded to what is known. */
export interface Amount {
  readonly kind: Kind;
  readonly value: number;
}
/** A sentence made of words and amounts. Plain data. */
export type Phrase = readonly (string | Amount)[];

export const amount = (kind: Kind, value: number): Amount => ({ kind, value });

/** Tagged template: phrase`holds to ${amount("humidity", 0.36)} indoors`. */
export const phrase = (words: TemplateStringsArray, ...amounts: readonly (string | Amount)[]): Phrase =>
  words
    .flatMap((word, index): (string | Amount)[] => (index < amounts.length ? [word, amounts[index]!] : [word]))
    .filter((part) => part !== "");

export const joined = (...phrases: readonly Phrase[]): Phrase =>
  phrases.flatMap((part, index) => (index === 0 ? part : [" ", ...part]));

/** The sentence in the units asked for. */
export const say = (words: Phrase, units: UnitSystem): string =>
  words
    .map((part) => (typeof part === "string" ? part : sayAmount(part, units)))
    .join("")
    // An inch's own stop ends the sentence.
    .replace(/in\.\.(?=\s|$)/g, "in.");

/** One amount: temperature to 0.5 K or 1 degF, humidity to 1 %, moisture content to 1 point, boards in sixteenths of an inch. */
export function sayAmount({ kind, value }: Amount, units: UnitSystem): string {
  const ip = units === "ip";
  if (!Number.isFinite(value)) return "not known";
  switch (kind) {
    case "temperature":
      return ip ? `${trimmed(fahrenheit(value), 0)} °F` : `${halves(value)} °C`;
    case "temperatureDifference":
      return ip ? `${trimmed(value * 1.8, 0)} °F` : `${halves(value)} K`;
    case "humidity":
    case "share":
      return `${Math.round(value * 100)} %`;
    case "moisture":
      return `${Math.round(value)} %`;
    case "thickness":
      return ip ? `${trimmed(value / metrePerInch, 2)} in.` : `${Math.round(value * 1000)} mm`;
    case "board":
      return ip ? `${sixteenths(value / metrePerInch)} in.` : `${Math.round(value * 1000)} mm`;
    case "resistance":
      return ip ? `R-${trimmed(value / rsiPerR, 2)}` : `RSI ${trimmed(value, 2)}`;
    case "transmittance":
      return ip ? `U-${(value * rsiPerR).toFixed(3)}` : `U ${value.toFixed(2)} W/(m² K)`;
    case "water":
      return ip ? cups(value) : value < 0.0995 ? `${Math.round(value * 1000)} g/m²` : `${value.toFixed(2)} kg/m²`;
    case "days":
      return Math.round(value) === 1 ? "1 day" : `${Math.round(value)} days`;
    case "flow":
      return ip ? `${trimmed(value * 3.280839895, 2)} ft³/(h ft²)` : `${trimmed(value, 2)} m³/(h m²)`;
    case "heat":
      return ip ? `${Math.round(value * 88.05507)} Btu/ft²` : `${Math.round(value)} MJ/m²`;
  }
}

/** Water per m2 as cups in each 4 by 8 ft sheet, to the quarter under two cups, to the half under ten. */
function cups(water_kgm2: number): string {
  const exact = (water_kgm2 * sheetArea_m2) / kgPerCup;
  const step = Math.abs(exact) < 2 ? 4 : Math.abs(exact) < 10 ? 2 : 1;
  const rounded = Math.round(exact * step) / step;
  if (rounded === 0) return "less than a quarter cup in each 4×8 sheet";
  return `${withFraction(rounded, 4)} ${Math.abs(rounded) <= 1 ? "cup" : "cups"} in each 4×8 sheet`;
}

const halves = (value: number): string => trimmed(Math.round(value * 2) / 2, 1);
const trimmed = (value: number, digits: number): string => {
  const text = String(Number(value.toFixed(digits)));
  return text === "-0" ? "0" : text.replace("-", "−");
};
const sixteenths = (inches: number): string => withFraction(Math.round(inches * 16) / 16, 16);

const fractionMarks: Readonly<Record<string, string>> = {
  "1/2": "½",
  "1/4": "¼",
  "3/4": "¾",
  "1/8": "⅛",
  "3/8": "⅜",
  "5/8": "⅝",
  "7/8": "⅞",
};

/** 2.5 as "2½". @param denominator  power of two of which the value is a whole number of parts */
function withFraction(value: number, denominator: number): string {
  const whole = Math.floor(Math.abs(value));
  let top = Math.round((Math.abs(value) - whole) * denominator);
  let bottom = denominator;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  const sign = value < 0 ? "−" : "";
  if (top === 0) return `${sign}${whole}`;
  const mark = fractionMarks[`${top}/${bottom}`];
  if (mark !== undefined) return `${sign}${whole === 0 ? "" : whole}${mark}`;
  return `${sign}${whole === 0 ? "" : `${whole} `}${top}/${bottom}`;
}
