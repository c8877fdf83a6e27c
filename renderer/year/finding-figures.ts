import type { Finding } from "../../solver/index.ts";
import { temperature, temperatureStep } from "../plots/quantities.ts";
import type { Units } from "../state/index.ts";
import { figure } from "../units/index.ts";

interface Named {
  readonly name: string;
  readonly value: string;
}

/** The figures under a finding, in the reader's units: measured, limit, margin, when. */
export function findingFigures(finding: Finding, units: Units): Named[] {
  const text = (value: number, difference = false): string => valueText(value, finding.unit, units, difference);
  return [
    { name: "measured", value: text(finding.measured) },
    { name: "limit", value: finding.limit === null ? "none" : text(finding.limit) },
    { name: "margin", value: finding.margin === null ? "none" : text(finding.margin, true) },
    { name: "when", value: finding.when },
  ];
}

function valueText(value: number, unit: string, units: Units, difference: boolean): string {
  if (unit === "degC" || unit === "°C") {
    const sign = units === "si" ? "°C" : "°F";
    return `${figure(difference ? temperatureStep(value, units) : temperature(value, units), 0)} ${sign}`;
  }
  if (unit === "K") return `${figure(temperatureStep(value, units), 0)} ${units === "si" ? "K" : "°F"}`;
  if (unit.startsWith("%") && difference)
    return `${figure(value, Math.abs(value) < 10 && !Number.isInteger(value) ? 1 : 0)} points`;
  const digits = Number.isInteger(value) || Math.abs(value) >= 100 ? 0 : Math.abs(value) < 1 ? 2 : 1;
  return `${figure(value, digits)}${unit === "" || unit === "-" ? "" : ` ${unit}`}`;
}
