import { endWords, kgm2sPaPerPerm, type Unknown } from "../../../solver/index.ts";
import type { Units } from "../../state/index.ts";
import { parsePlain, permeanceFigure, type Parsed } from "../../units/index.ts";

/** 1 m3/(h m2) in ft3/(h ft2): the height of the column of air. */
const feetPerMetre = 1 / 0.3048;

const isFlow = ({ unit }: Unknown): boolean => unit === "m³/(h m²)";

/** A value of an input with its unit, in the reader's: "0.66 ft³/(h ft²)", "cold year", "45 %". */
export function unknownText(unknown: Unknown, value: number, units: Units): string {
  if (isFlow(unknown) && units !== "si") return `${Number((value * feetPerMetre).toPrecision(3))} ft³/(h ft²)`;
  if (unknown.unit === "perm" && units === "si") return `sd ${permeanceFigure(value * kgm2sPaPerPerm, units)} m`;
  return endWords(unknown, value).replace("-", "−");
}

/** The figure alone, as a field shows it, and the unit beside it. */
export function rangeUnit(unknown: Unknown, units: Units): string {
  if (unknown.endLabels !== undefined) return "";
  if (isFlow(unknown)) return units === "si" ? "m³/(h m²)" : "ft³/(h ft²)";
  return unknown.unit === "" ? "%" : unknown.unit;
}

const factor = (unknown: Unknown, units: Units): number =>
  isFlow(unknown) && units !== "si" ? feetPerMetre : unknown.unit === "" ? 100 : 1;

export const rangeFigure = (unknown: Unknown, value: number, units: Units): string =>
  String(Number((value * factor(unknown, units)).toPrecision(3))).replace("-", "−");

/** Reads an end of a range as the field shows it. */
export function parseRange(unknown: Unknown, text: string, units: Units): Parsed {
  const by = factor(unknown, units);
  const lowest = unknown.low < 0 ? -1000 : unknown.scale === "log" ? 0.001 : 0;
  const read = parsePlain(text.replace(/[^\d.,−-].*$/, ""), lowest, unknown.unit === "" ? 100 : 1000);
  return read.ok ? { ok: true, value: read.value / by } : read;
}

/** Flows of air in a sentence that was written in SI, in the units of the window. */
export const rewordFlows = (sentence: string, units: Units): string =>
  units === "si"
    ? sentence
    : sentence.replace(
        /([\d.]+) m³\/\(h m²\)/g,
        (_, value: string) => `${Number((Number(value) * feetPerMetre).toPrecision(2))} ft³/(h ft²)`,
      );
