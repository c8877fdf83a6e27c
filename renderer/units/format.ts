import { fahrenheit, kgm2sPaPerPerm, metrePerInch, rsiPerR } from "../../solver/index.ts";
import type { Units } from "../state/index.ts";
import { inchText } from "./inch-fraction.ts";

/** A number with a true minus sign. */
export const figure = (value: number, digits: number): string => {
  const text = Math.abs(value).toFixed(digits);
  return value < 0 && Number(text) !== 0 ? `−${text}` : text;
};

const millimetres = (length_m: number): string => {
  const value = length_m * 1000;
  return figure(value, Math.abs(value - Math.round(value)) < 0.05 ? 0 : 1);
};

/** "2 1/4 in.", "57 mm", or "2 1/4 in. (57 mm)". */
export function lengthText(length_m: number, units: Units): string {
  const inches = `${inchText(length_m)} in.`;
  const metric = `${millimetres(length_m)} mm`;
  if (units === "ip") return inches;
  return units === "si" ? metric : `${inches} (${metric})`;
}

/** The figure alone, for a column whose head names the unit. */
export const lengthFigure = (length_m: number, units: Units): string =>
  units === "si" ? millimetres(length_m) : inchText(length_m);

/** What stands in a thickness field: with its unit, so that it reads the same whatever the window's units. */
export const lengthEntry = (length_m: number, units: Units): string =>
  units === "si" ? `${millimetres(length_m)} mm` : `${inchText(length_m)} in`;

export const lengthUnit = (units: Units): string => (units === "si" ? "mm" : "in.");

/** "41 °F", "5 °C", or "41 °F (5 °C)". */
export function temperatureText(temperature_C: number, units: Units, digits = 0): string {
  const american = `${figure(fahrenheit(temperature_C), digits)} °F`;
  const metric = `${figure(temperature_C, digits)} °C`;
  if (units === "ip") return american;
  return units === "si" ? metric : `${american} (${metric})`;
}

export const temperatureFigure = (temperature_C: number, units: Units, digits = 0): string =>
  figure(units === "si" ? temperature_C : fahrenheit(temperature_C), digits);

export const temperatureUnit = (units: Units): string => (units === "si" ? "°C" : "°F");

/** A difference of temperatures: no offset. */
export function temperatureDifferenceText(difference_K: number, units: Units, digits = 0): string {
  return units === "si" ? `${figure(difference_K, digits)} K` : `${figure(difference_K * 1.8, digits)} °F`;
}

/** Thermal resistance, the figure alone: R in h ft2 degF/Btu, or RSI in m2 K/W. */
export const resistanceFigure = (resistance_m2KW: number, units: Units): string => {
  const value = units === "si" ? resistance_m2KW : resistance_m2KW / rsiPerR;
  return figure(value, value < 9.95 ? 2 : 1);
};

/** "R-11.3" or "2.0 m²K/W". */
export const resistanceText = (resistance_m2KW: number, units: Units): string =>
  units === "si"
    ? `${resistanceFigure(resistance_m2KW, units)} m²K/W`
    : `R-${resistanceFigure(resistance_m2KW, units)}`;

/** "U 0.035 Btu/(h·ft²·°F)" or "U 0.20 W/(m²·K)". */
export const transmittanceText = (u_Wm2K: number, units: Units): string =>
  units === "si" ? `U ${figure(u_Wm2K, 2)} W/(m²·K)` : `U ${figure(u_Wm2K * rsiPerR, 3)} Btu/(h·ft²·°F)`;

/** Permeance as practice reads it: US perms, or the equivalent air layer s_d [m] with air at 2e-10 kg/(m s Pa). */
export function permeanceFigure(permeance_kgm2sPa: number, units: Units): string {
  if (units === "si") {
    if (permeance_kgm2sPa <= 0) return "none";
    const sd_m = 2e-10 / permeance_kgm2sPa;
    return figure(sd_m, sd_m < 0.1 ? 3 : sd_m < 10 ? 2 : 0);
  }
  const perms = permeance_kgm2sPa / kgm2sPaPerPerm;
  return figure(perms, perms < 0.995 ? 2 : perms < 9.95 ? 1 : 0);
}

export const permeanceUnit = (units: Units): string => (units === "si" ? "sd, m" : "perm");

/** Speed of the wind: "9 mph" or "4 m/s". */
export const windText = (speed_ms: number, units: Units): string =>
  units === "si" ? `${figure(speed_ms, 1)} m/s` : `${figure((speed_ms * 3600) / (5280 * 12 * metrePerInch), 0)} mph`;

/** Rain depth: "38 in." or "965 mm". */
export const rainText = (depth_mm: number, units: Units): string =>
  units === "si"
    ? `${figure(depth_mm, 0)} mm`
    : `${figure(depth_mm / (metrePerInch * 1000), depth_mm < 254 ? 1 : 0)} in.`;

export const share = (value: number): string => {
  const percent = value * 100;
  return `${figure(percent, percent > 0 && percent < 0.95 ? 1 : 0)} %`;
};

/** A height or distance: "16 ft" or "5.0 m". */
export const distanceText = (distance_m: number, units: Units): string =>
  units === "si"
    ? `${figure(distance_m, 1)} m`
    : `${figure(distance_m / (12 * metrePerInch), 1).replace(/\.0$/, "")} ft`;

/** Driven rain on a face: "38 in." would mislead, so mass or its depth: "120 L/m²" or "2.9 gal/ft²". */
export const rainOnFaceText = (mass_kgm2: number, units: Units): string =>
  units === "si"
    ? `${figure(mass_kgm2, 0)} L/m²`
    : `${figure((mass_kgm2 * 0.3048 ** 2) / 3.785411784, mass_kgm2 < 400 ? 1 : 0)} gal/ft²`;

/** "Down to 2.0 degC" as "down to 36 °F": sentences that were written in SI, in the units of the window. */
export const rewordTemperatures = (sentence: string, units: Units): string =>
  sentence.replace(/(-?\d+(?:\.\d+)?) degC/g, (_, value: string) =>
    temperatureText(Number(value), units, value.includes(".") && units === "si" ? 1 : 0),
  );
