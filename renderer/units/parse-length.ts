import { metrePerInch, rsiPerR } from "../../solver/index.ts";
import type { Units } from "../state/index.ts";

export type Parsed = { readonly ok: true; readonly value: number } | { readonly ok: false; readonly message: string };

const vulgar: Record<string, string> = {
  "½": "1/2",
  "¼": "1/4",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
  "⅓": "1/3",
  "⅔": "2/3",
};

const metresPer: Record<string, number> = {
  in: metrePerInch,
  inch: metrePerInch,
  inches: metrePerInch,
  '"': metrePerInch,
  ft: 12 * metrePerInch,
  feet: 12 * metrePerInch,
  foot: 12 * metrePerInch,
  "'": 12 * metrePerInch,
  mil: metrePerInch / 1000,
  mils: metrePerInch / 1000,
  mm: 0.001,
  cm: 0.01,
  m: 1,
};

const help = 'Write a length such as 2 1/4 in, 1 1/2", 50 mm or R-10.';
const say = (message: string): Parsed => ({ ok: false, message: `${message} ${help}` });

/** "2", "2.5", "2,5", "1/2", "2 1/4", "2-1/4": a number the way people write it by hand. */
export function parseNumber(text: string): number | null {
  const plain = text
    .replace(/[½¼¾⅛⅜⅝⅞⅓⅔]/g, (sign) => ` ${vulgar[sign]!}`)
    .replace("⁄", "/")
    .trim();
  const mixed = /^(?:(\d+)[\s-]+)?(\d+)\s*\/\s*(\d+)$/.exec(plain);
  if (mixed) {
    const below = Number(mixed[3]);
    return below === 0 ? null : Number(mixed[1] ?? 0) + Number(mixed[2]) / below;
  }
  return /^-?(\d+([.,]\d*)?|[.,]\d+)$/.test(plain) ? Number(plain.replace(",", ".")) : null;
}

/**
 * A thickness as an architect writes it [m]. Without a unit it is read in the units of the window. "R-10" and "RSI 1.76" are
 * read through the conductivity of the material [W/(m K)]; null: the material has none.
 */
export function parseThickness(text: string, units: Units, conductivity_WmK: number | null): Parsed {
  const written = text
    .trim()
    .toLowerCase()
    .replace(/[″“”]|''/g, '"')
    .replace(/[′’]/g, "'");
  if (written === "") return say("The thickness is empty.");

  const resistance = /^(rsi|r)[\s-]*([\d.,]+)$/.exec(written);
  if (resistance) {
    const value = parseNumber(resistance[2]!);
    if (value === null) return say(`${text.trim()} has no number after the R.`);
    if (conductivity_WmK === null)
      return { ok: false, message: "This layer has no conductivity, so give its thickness as a length." };
    return positive(value * (resistance[1] === "r" ? rsiPerR : 1) * conductivity_WmK, text);
  }

  const feetInches = /^(\d+)\s*'\s*-?\s*(.+?)\s*(?:"|in\.?)?$/.exec(written);
  if (feetInches) {
    const inches = parseNumber(feetInches[2]!);
    if (inches !== null) return positive((Number(feetInches[1]) * 12 + inches) * metrePerInch, text);
  }

  const parts = /^(.*?[\d½¼¾⅛⅜⅝⅞⅓⅔.,])\s*([a-z]+|"|')?\.?$/.exec(written);
  const value = parts ? parseNumber(parts[1]!) : null;
  if (!parts || value === null) return say(`${text.trim()} cannot be read as a length.`);
  const unit = parts[2] ?? (units === "si" ? "mm" : "in");
  const factor = metresPer[unit];
  if (factor === undefined) return say(`${unit} is not a unit of length known here.`);
  return positive(value * factor, text);
}

function positive(value: number, text: string): Parsed {
  if (!(value > 0)) return { ok: false, message: `The thickness is ${text.trim()}. Enter a value above 0.` };
  if (value > 2)
    return { ok: false, message: `The thickness is ${value.toFixed(1)} m. Enter a value of 2 m (6 1/2 ft) or less.` };
  return { ok: true, value };
}
