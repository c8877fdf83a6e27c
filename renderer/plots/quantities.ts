import { fahrenheit } from "../../solver/index.ts";
import type { Units } from "../state/index.ts";
import type { Quantity } from "./series.ts";

/** Inch-pound, metric, or inch-pound with metric behind it; charts draw the first of "both". */
export type ShownUnits = Units;

/** Ounces on a square foot in 1 kg/m2: 1000 g / 28.349523125 g x 0.3048^2. */
const ounceSquareFootPerKgM2 = (1000 / 28.349523125) * 0.3048 ** 2;
/** Pounds in a cubic foot in 1 kg/m3. */
const poundCubicFootPerKgM3 = 0.3048 ** 3 / 0.45359237;

export const metric = (units: ShownUnits): boolean => units === "si";
export const temperature = (value_C: number, units: ShownUnits): number =>
  metric(units) ? value_C : fahrenheit(value_C);
export const degreeSign = (units: ShownUnits): string => (metric(units) ? "°C" : "°F");
export const temperatureStep = (difference_K: number, units: ShownUnits): number =>
  metric(units) ? difference_K : difference_K * 1.8;

/** U+2212: figures line up with it as they do not with a hyphen. */
export const signed = (value: number, digits: number): string => {
  const text = Math.abs(value).toFixed(digits);
  return Number(text) === 0 ? text : `${value < 0 ? "−" : "+"}${text}`;
};
export const waterOnArea = (value_kgm2: number, units: ShownUnits): number =>
  metric(units) ? value_kgm2 * 1000 : value_kgm2 * ounceSquareFootPerKgM2;
export const waterOnAreaUnit = (units: ShownUnits): string => (metric(units) ? "g/m²" : "oz/ft²");
export const waterInVolume = (value_kgm3: number, units: ShownUnits): number =>
  metric(units) ? value_kgm3 : value_kgm3 * poundCubicFootPerKgM3;
export const waterInVolumeUnit = (units: ShownUnits): string => (metric(units) ? "kg/m³" : "lb/ft³");

/** The unit behind a probe's figures. */
export function quantityUnit(quantity: Quantity, isWood: boolean, units: ShownUnits): string {
  if (quantity === "temperature") return degreeSign(units);
  if (quantity === "humidity") return "%";
  return isWood ? "% by weight" : waterInVolumeUnit(units);
}

/** A value as read at a probe (degC, %, % by mass or kg/m3) in the reader's unit. */
export function shown(quantity: Quantity, isWood: boolean, value: number, units: ShownUnits): number {
  if (quantity === "temperature") return temperature(value, units);
  return quantity === "moisture" && !isWood ? waterInVolume(value, units) : value;
}
