import type { Finding } from "../../solver/index.ts";
import { metric, temperature, temperatureStep } from "../plots/quantities.ts";
import type { Units } from "../state/index.ts";
import { figure } from "../units/index.ts";

interface Named {
  readonly name: string;
  readonly value: string;
}

const percentUnit = /^%(?: (RH))?/;

/**
 * The figures under a finding, in the reader's units: measured, limit, margin, when. A unit that is made of words stands over
 * its figure ("mould index") instead of after it.
 */
export function findingFigures(finding: Finding, units: Units): Named[] {
  const { unit, limit, margin } = finding;
  const wordy = !isShort(unit);
  const text = (value: number, difference = false): string => valueText(value, wordy ? "" : unit, units, difference);
  return [
    { name: wordy ? unit : "measured", value: text(finding.measured) },
    { name: "limit", value: limit === null ? "none" : text(limit) },
    { name: "margin", value: margin === null ? "none" : text(margin, true) },
    { name: "when", value: finding.when },
  ];
}

const isShort = (unit: string): boolean => percentUnit.test(unit) || unit.length <= 6;

function valueText(value: number, unit: string, units: Units, difference: boolean): string {
  if (unit === "degC" || unit === "°C") {
    const shown = difference ? temperatureStep(value, units) : temperature(value, units);
    return `${figure(shown, 0)} ${metric(units) ? "°C" : "°F"}`;
  }
  if (unit === "K") return `${figure(temperatureStep(value, units), 0)} ${metric(units) ? "K" : "°F"}`;
  const percent = percentUnit.exec(unit);
  if (percent) {
    const digits = Math.abs(value) < 10 && !Number.isInteger(value) ? 1 : 0;
    if (difference) return `${figure(value, digits)} points`;
    return `${figure(value, Math.abs(value) < 30 && !Number.isInteger(value) ? 1 : 0)} %${percent[1] ? " RH" : ""}`;
  }
  const digits = Number.isInteger(value) || Math.abs(value) >= 100 ? 0 : Math.abs(value) < 1 ? 2 : 1;
  return `${figure(value, digits)}${unit === "" || unit === "-" ? "" : ` ${unit}`}`;
}
