import { rsiPerR, type WholeWall } from "../../solver/index.ts";
import { daysAbove } from "../plots/days-above.ts";
import { metric, signed, temperature, temperatureStep } from "../plots/quantities.ts";
import { highest } from "../plots/series.ts";
import { wallThickness_m } from "../plots/wall-depths.ts";
import type { Units } from "../state/index.ts";
import { figure, lengthFigure } from "../units/index.ts";
import { monthMean, type Member } from "./member.ts";

export interface ComparedOption {
  readonly member: Member;
  readonly wall: WholeWall | null;
  readonly price_perM2: number | null;
  readonly carbon_kgCO2ePerM2: number | null;
}

/** One row of the table: a figure for each option and the words of the difference between the two in view. */
export interface ComparisonRow {
  readonly label: string;
  readonly values: readonly string[];
  readonly difference: string;
}

interface Row {
  readonly label: string;
  readonly of: (option: ComparedOption) => number | null;
  readonly say: (value: number) => string;
  readonly step: (difference: number) => string;
}

/** 1 MJ/m2 in kBtu/ft2: 1e6 J / 1055.05585262 J / 1000 x 0.3048^2. */
const kBtuSquareFootPerMJm2 = (1e6 / 1055.05585262 / 1000) * 0.3048 ** 2;
const kWhPerMJ = 1 / 3.6;

function rowsIn(units: Units): Row[] {
  const si = metric(units);
  const sign = si ? "°C" : "°F";
  const whole = { say: (value: number) => figure(value, 0), step: (value: number) => signed(value, 0) };
  const tenths = { say: (value: number) => figure(value, 1), step: (value: number) => signed(value, 1) };
  return [
    {
      label: `Inner face, January, ${sign}`,
      of: ({ member }) => monthMean(member, member.temperature, 0),
      say: (value) => figure(temperature(value, units), si ? 1 : 0),
      step: (value) => signed(temperatureStep(value, units), si ? 1 : 0),
    },
    {
      label: "Peak moisture, %",
      of: ({ member }) => (member.moisture ? (highest(member.moisture)?.value ?? null) : null),
      ...tenths,
    },
    { label: "Days above 80 %", of: ({ member }) => daysAbove(member.humidity, 80), ...whole },
    {
      label: "Days below freezing",
      of: ({ member }) => member.temperature.reduce((days, value) => days + (value < 0 ? 1 : 0), 0),
      ...whole,
    },
    {
      label: "Limits not kept",
      of: ({ member }) => member.findings.filter(({ holds }) => holds === false).length,
      ...whole,
    },
    {
      label: `Heat lost, ${si ? "kWh/m²" : "kBtu/ft²"} a year`,
      of: ({ member }) => {
        const months = member.result.monthly?.heatFromRoom_MJm2;
        return months ? months.reduce((sum, value) => sum + value, 0) * (si ? kWhPerMJ : kBtuSquareFootPerMJm2) : null;
      },
      ...tenths,
    },
    {
      label: si ? "Whole-wall R, m²K/W" : "Whole-wall R",
      of: ({ wall }) => (wall ? wall.R_m2KW / (si ? 1 : rsiPerR) : null),
      ...(si ? { say: (value: number) => figure(value, 2), step: (value: number) => signed(value, 2) } : tenths),
    },
    {
      label: si ? "Thickness, mm" : "Thickness, in.",
      of: ({ member }) => wallThickness_m(member.case.layers),
      say: (value) => (si ? figure(value * 1000, 0) : lengthFigure(sixteenth(value), units)),
      step: (value) =>
        si
          ? signed(value * 1000, 0)
          : Math.abs(value) < 1e-6
            ? "0"
            : `${value < 0 ? "−" : "+"}${lengthFigure(sixteenth(Math.abs(value)), units)}`,
    },
    { label: "Price a m²", of: ({ price_perM2 }) => price_perM2, ...whole },
    { label: "Carbon, kg CO₂e a m²", of: ({ carbon_kgCO2ePerM2 }) => carbon_kgCO2ePerM2, ...whole },
  ];
}

/** To the sixteenth of an inch: a whole wall is never known closer. */
const sixteenth = (length_m: number): number => (Math.round((length_m / 0.0254) * 16) / 16) * 0.0254;

/** The table of all options; rows that nobody has a figure for are left out. `first` and `second` are places in `options`. */
export function comparisonRows(
  options: readonly ComparedOption[],
  first: number,
  second: number,
  units: Units,
): ComparisonRow[] {
  return rowsIn(units).flatMap(({ label, of, say, step }) => {
    const values = options.map(of);
    if (values.every((value) => value === null)) return [];
    const a = values[first] ?? null;
    const b = values[second] ?? null;
    return [
      {
        label,
        values: values.map((value) => (value === null ? "none" : say(value))),
        difference: a === null || b === null ? "" : step(b - a),
      },
    ];
  });
}
