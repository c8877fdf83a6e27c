import { readFileSync } from "node:fs";
import Papa from "papaparse";
import type { MonthClimate, SteadyLayer } from "../../../../solver/physics/steady/index.ts";
import { standardSaturationPressure_Pa } from "../../../../solver/physics/steady/index.ts";

export type Row = Readonly<Record<string, string>>;

export function rowsOf(name: string): Row[] {
  const text = readFileSync(new URL(`./fixtures/${name}`, import.meta.url), "utf8");
  const rows = Papa.parse<Row>(text.trim(), { header: true }).data;
  if (rows.length === 0) throw new Error(`${name} holds no rows`);
  return rows;
}

export const numberIn = (row: Row, column: string): number => {
  const text = row[column];
  if (text === undefined || text.trim() === "") throw new Error(`no ${column}`);
  return Number(text);
};

const slab = (id: string, thickness_mm: number, conductivity: number, mu: number, coating_sd_m = 0): SteadyLayer => ({
  id,
  resistance_m2KW: thickness_mm / 1000 / conductivity,
  sd_m: (mu * thickness_mm) / 1000 + coating_sd_m,
});
const batt = slab("batt", 140, 0.04, 1.2);
const strandBoard = slab("strand-board", 11, 0.13, 200);
const membrane: SteadyLayer = { id: "membrane", resistance_m2KW: 0, sd_m: 0.05 };
const painted = slab("gypsum", 12.7, 0.16, 8, 0.6);
const kraft = slab("gypsum", 12.7, 0.16, 8, 3.6);

/** The walls of glaser_summary.csv, outside first. */
export const walls: Readonly<Record<string, readonly SteadyLayer[]>> = {
  S1: [membrane, strandBoard, batt, painted],
  S2: [membrane, strandBoard, batt, kraft],
  S3: [slab("xps", 50.8, 0.029, 150), strandBoard, batt, painted],
  S4: [slab("xps", 25.4, 0.029, 150), strandBoard, batt, painted],
  S5: [membrane, strandBoard, batt, painted],
};

const monthDays = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Indoor air 20 degC, vapour excess 540 Pa up to 0 degC outside, falling to nothing at 20 degC (ISO 13788, MEMORY). */
export function climate(name: string): MonthClimate[] {
  return rowsOf("glaser_climates.csv")
    .filter((row) => row["climate"] === name)
    .map((row, index) => {
      const outside_C = numberIn(row, "te_C");
      const outsideVapourPressure_Pa = (numberIn(row, "rh_e_pct") / 100) * standardSaturationPressure_Pa(outside_C);
      const excess_Pa = 540 * Math.min(1, Math.max(0, 1 - outside_C / 20));
      return {
        month: row["month"]!,
        days: monthDays[index]!,
        outside_C,
        outsideVapourPressure_Pa,
        inside_C: 20,
        insideVapourPressure_Pa: outsideVapourPressure_Pa + excess_Pa,
      };
    });
}
