import { fahrenheit, kgPerCup, metrePerInch, sheetArea_m2 } from "../units.ts";

/** Inch-pound or SI. */
export type Units = "ip" | "si";

/** Numbers as a statement says them: rounded to what is known, with their unit. Minus is the typographic sign. */
export interface Wording {
  temperature(value_C: number): string;
  /** A difference or margin of temperature, without sign. */
  kelvins(value_K: number): string;
  /** 0..1 as whole percent. */
  humidity(value: number): string;
  /** % by mass, whole; never decimals. */
  moisture(percent: number): string;
  /** Whole points of percent, without sign. */
  points(value: number): string;
  /** kg/m2 or g/m2 in SI, cups on a 4 by 8 ft sheet in inch-pound. */
  water(value_kgm2: number): string;
  /** Cups or quarts on a 4 by 8 ft sheet, in either system. */
  perSheet(value_kgm2: number): string;
  /** The same where the sheet has just been named: "3 cups". */
  waterAgain(value_kgm2: number): string;
  length(value_m: number): string;
  /** Hours as hours below two days, else as days. */
  duration(hours: number): string;
  days(count: number): string;
  readonly units: Units;
}

const plain = (value: number, digits = 0): string => {
  const text = value.toFixed(digits);
  return Number(text) < 0 ? text.replace("-", "\u2212") : text.replace("-", "");
};
const counted = (count: number, one: string, many: string): string => `${plain(count)} ${count === 1 ? one : many}`;

/** Cups of water on one 4 by 8 ft sheet. */
export const cupsPerSheet = (value_kgm2: number): number => (value_kgm2 * sheetArea_m2) / kgPerCup;

/** From here on a client counts quarts. */
const cupsBeforeQuarts = 16;
/** A catalogue name's tail: what it is faced with, glued to or laid on. */
const tail = / (?:with|laminated to|on) .*$/;

export function wordingIn(units: Units): Wording {
  const ip = units === "ip";
  const cups = (value_kgm2: number): string => {
    const amount = cupsPerSheet(value_kgm2);
    if (amount < 0.5) return "less than half a cup";
    return amount < cupsBeforeQuarts
      ? counted(Math.round(amount), "cup", "cups")
      : counted(Math.round(amount / 4), "quart", "quarts");
  };
  // Below one kilogram in grams, to the nearest ten: no decimals of moisture.
  const perArea = (value_kgm2: number): string =>
    Math.abs(value_kgm2) < 0.995 ? `${plain(Math.round(value_kgm2 * 100) * 10)} g/m²` : `${plain(value_kgm2, 1)} kg/m²`;
  return {
    units,
    temperature: (value_C) => (ip ? `${plain(fahrenheit(value_C))} °F` : `${plain(value_C)} °C`),
    kelvins: (value_K) => (ip ? `${plain(Math.abs(value_K) * 1.8)} °F` : `${plain(Math.abs(value_K), 1)} K`),
    humidity: (value) => `${plain(value * 100)} %`,
    moisture: (percent) => `${plain(percent)} %`,
    points: (value) => counted(Math.round(Math.abs(value)), "point", "points"),
    water: (value_kgm2) => (ip ? `${cups(value_kgm2)} on a 4 by 8 ft sheet` : perArea(value_kgm2)),
    perSheet: (value_kgm2) => `${cups(value_kgm2)} on a 4 by 8 ft sheet`,
    waterAgain: (value_kgm2) => (ip ? cups(value_kgm2) : perArea(value_kgm2)),
    length: (value_m) => (ip ? `${plain(value_m / metrePerInch, 1)} in.` : `${plain(value_m * 1000)} mm`),
    duration: (hours) =>
      hours < 48 ? counted(Math.round(hours), "hour", "hours") : counted(Math.round(hours / 24), "day", "days"),
    days: (count) => counted(Math.round(count), "day", "days"),
  };
}

/** "Gypsum board, paper-faced, 12.7 mm" as it stands inside of a sentence: "gypsum board"; "OSB sheathing" keeps its capitals. */
export function inSentence(name: string): string {
  const short = name.split(/[,(/]/)[0]!.replace(tail, "").trim();
  return /^[A-Z][a-z]/.test(short) ? short.charAt(0).toLowerCase() + short.slice(1) : short;
}

export const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
