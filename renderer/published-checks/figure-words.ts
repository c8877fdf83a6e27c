import type { CheckRow } from "../../solver/index.ts";

/** A figure to as many places as tell it from its neighbour within a tolerance: a hundredth of it. */
export function figureWords(value: number, tolerance: number): string {
  if (!Number.isFinite(value)) return "no figure";
  if (value !== 0 && (Math.abs(value) < 1e-3 || Math.abs(value) >= 1e5)) return inPowers(value);
  const places = Math.max(0, Math.min(6, 2 - Math.floor(Math.log10(tolerance > 0 ? tolerance : 1))));
  return value.toFixed(places).replace("-", "−");
}

function inPowers(value: number): string {
  const [mantissa = "", power = "0"] = value.toExponential(1).split("e");
  const raised = [...String(Number(power))].map((mark) => (mark === "-" ? "⁻" : "⁰¹²³⁴⁵⁶⁷⁸⁹"[Number(mark)]!)).join("");
  return `${mantissa.replace("-", "−")} × 10${raised}`;
}

/** Part of the tolerance that a row uses, in per cent. */
export const shareWords = (row: CheckRow): string => {
  const share = Math.abs(row.got - row.expected) / row.tolerance;
  return Number.isFinite(share) ? `${share < 0.01 ? "under 1" : Math.round(share * 100)} %` : "no figure";
};

/** A unit as it is printed: "degC" and "m2" as people write them; nothing for a bare number. */
export const unitWords = (unit: string): string =>
  unit === "-"
    ? ""
    : unit.replace(/\bdegC\b/g, "°C").replace(/m([23])(?!\d)/g, (_, power) => (power === "2" ? "m²" : "m³"));
