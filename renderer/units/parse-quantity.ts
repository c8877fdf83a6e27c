import { celsius, metrePerInch } from "../../solver/index.ts";
import type { Units } from "../state/index.ts";
import { parseNumber, type Parsed } from "./parse-length.ts";

const split = (text: string): { value: number | null; unit: string } => {
  const parts = /^\s*(-?[−]?[\d.,/\s½¼¾⅛⅜⅝⅞⅓⅔]+?)\s*([a-z%°"']*)\s*$/i.exec(text.replace("−", "-"));
  return parts ? { value: parseNumber(parts[1]!), unit: parts[2]!.toLowerCase() } : { value: null, unit: "" };
};

/** A temperature [degC]: "70", "70 F", "21 °C"; without a unit in that of the window. */
export function parseTemperature(text: string, units: Units): Parsed {
  const { value, unit } = split(text);
  if (value === null || !/^(°?[fc]|deg[fc]|°)?$/.test(unit)) {
    return { ok: false, message: `${text.trim() || "Nothing"} cannot be read as a temperature. Write 70 °F or 21 °C.` };
  }
  const isFahrenheit = unit.endsWith("f") || (!unit.endsWith("c") && units !== "si");
  const temperature_C = isFahrenheit ? celsius(value) : value;
  return temperature_C >= -60 && temperature_C <= 80
    ? { ok: true, value: temperature_C }
    : { ok: false, message: `${text.trim()} is out of range. Enter −60 to 80 °C (−76 to 176 °F).` };
}

/** A share [0..1] written in per cent: "35", "35 %". */
export function parseShare(text: string, most = 100): Parsed {
  const { value, unit } = split(text);
  if (value === null || !/^%?$/.test(unit)) {
    return { ok: false, message: `${text.trim() || "Nothing"} cannot be read as a share. Write 35 %.` };
  }
  return value >= 0 && value <= most
    ? { ok: true, value: value / 100 }
    : { ok: false, message: `${text.trim()} is out of range. Enter 0 to ${most} %.` };
}

/** A plain number within limits. */
export function parsePlain(text: string, least: number, most: number): Parsed {
  const value = parseNumber(text.trim().replace("−", "-"));
  if (value === null)
    return { ok: false, message: `${text.trim() || "Nothing"} is not a number. Enter ${least} to ${most}.` };
  return value >= least && value <= most
    ? { ok: true, value }
    : { ok: false, message: `${text.trim()} is out of range. Enter ${least} to ${most}.` };
}

/** A height or distance [m]: "16 ft", "5 m"; without a unit feet, or metres in a metric window. Zero is allowed. */
export function parseDistance(text: string, units: Units, most_m: number): Parsed {
  const { value, unit } = split(text);
  const factors: Record<string, number> = {
    "": units === "si" ? 1 : 12 * metrePerInch,
    ft: 12 * metrePerInch,
    "'": 12 * metrePerInch,
    in: metrePerInch,
    '"': metrePerInch,
    m: 1,
    cm: 0.01,
    mm: 0.001,
  };
  const factor = factors[unit];
  if (value === null || factor === undefined) {
    return { ok: false, message: `${text.trim() || "Nothing"} cannot be read as a distance. Write 16 ft or 5 m.` };
  }
  const metres = value * factor;
  return metres >= 0 && metres <= most_m
    ? { ok: true, value: metres }
    : { ok: false, message: `${text.trim()} is out of range. Enter 0 to ${most_m} m.` };
}
