import { amount, say, sayAmount, roomDewPoint_C, type MemberSummary, type UnitSystem } from "../studies/index.ts";
import { kgPerCup, sheetArea_m2 } from "../units.ts";
import { shortName } from "./layer-words.ts";
import { hatchOf } from "./hatch-of.ts";
import type { DrawnWall, ReportedOption, ReportInput } from "./report.ts";

const months = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;
export const monthName = (month: number): string => months[month]!;

/** Depths kept of the year's picture: a printed strip shows no more. */
const columnsOfYear = 40;
const daysAStep = 3;

/** The client's drawing of an option: one temperature, cups of water, a year. */
export function drawnWall(option: ReportedOption, input: ReportInput): DrawnWall {
  const { summary, shown } = option;
  const { units } = input;
  const month = input.winter.month;
  const face = summary.faceTemperature_C[month]!;
  const dew = roomDewPoint_C(input.winter.room_C, input.winter.roomHumidity);
  const gain = winterGain(option);
  return {
    title: `${option.id}. ${option.name}`,
    layers: shown.layers.map((layer, index) => ({
      name: shortName(layer.name),
      thickness_m: layer.thickness_m,
      hatch: hatchOf(layer, shown.pathKind),
      stain: layer.id === summary.plane.wood || index === summary.plane.index ? summary.faceHumidity[month]! : null,
    })),
    outside: `outside, ${sayAmount(amount("temperature", input.winter.outdoor_C), units)}`,
    inside: `inside, ${sayAmount(amount("temperature", input.winter.room_C), units)}, ${sayAmount(amount("humidity", input.winter.roomHumidity), units)}`,
    marked: summary.plane.index,
    mark: sayAmount(amount("temperature", face), units),
    markNote: markNote(face, dew, month, units),
    cups: gain === null ? null : cupsOf(gain),
    cupsNote: gain === null ? "No wooden sheathing in this wall." : cupsNote(gain, units),
    year: yearOf(option),
    yearNote: "One year inside the wall. Dark is damp. Top is outside.",
  };
}

function markNote(face_C: number, dew_C: number, month: number, units: UnitSystem): string {
  const dew = sayAmount(amount("temperature", dew_C), units);
  if (face_C < dew_C) return `in ${monthName(month)}. Room air wets any surface below ${dew}.`;
  return `in ${monthName(month)}. Room air wets surfaces below ${dew} only.`;
}

interface WinterGain {
  readonly water_kgm2: number;
  readonly wettestMonth: number;
  /** First month after the peak in which most of it has left again; null: not within the year. */
  readonly goneBy: number | null;
}

/** Water that the wooden layer takes up between its driest and its wettest month. */
export function winterGain(option: ReportedOption): WinterGain | null {
  const { summary, shown } = option;
  const wood = shown.layers.find((layer) => layer.id === summary.plane.wood);
  const monthly = summary.woodMoisture_percent;
  if (wood?.material.density_kgm3 === undefined || monthly.length !== 12) return null;
  const peak = Math.max(...monthly);
  const least = Math.min(...monthly);
  const wettestMonth = monthly.indexOf(peak);
  let goneBy: number | null = null;
  for (let later = 1; later < 12 && goneBy === null; later += 1)
    if (monthly[(wettestMonth + later) % 12]! <= least + 0.25 * (peak - least)) goneBy = (wettestMonth + later) % 12;
  return { water_kgm2: ((peak - least) / 100) * wood.material.density_kgm3 * wood.thickness_m, wettestMonth, goneBy };
}

/** Cups of water in a sheet, to the half. */
const cupsOf = (gain: WinterGain): number => Math.round((gain.water_kgm2 * sheetArea_m2 * 2) / kgPerCup) / 2;

const cupsText = (cups: number): string =>
  `${cups === 0.5 ? "½" : `${Math.floor(cups)}${cups % 1 === 0 ? "" : "½"}`} ${cups <= 1 ? "cup" : "cups"}`;

function cupsNote(gain: WinterGain, units: UnitSystem): string {
  const said = say([amount("water", gain.water_kgm2)], units);
  const water = units === "ip" ? said : `${cupsText(cupsOf(gain))} in each 1.2 × 2.4 m sheet, ${said},`;
  const gone = gain.goneBy === null ? "and they stay" : `gone by ${monthName(gain.goneBy)}`;
  return `${water} by ${monthName(gain.wettestMonth)}, ${gone}`;
}

/** The year's humidity through the wall, thinned to steps of days and to equal steps of depth. */
function yearOf(option: ReportedOption): DrawnWall["year"] {
  const map = option.map;
  if (map === null || map.days < daysAStep) return null;
  const depths = map.depth_m.length;
  const total = map.depth_m[depths - 1]!;
  const steps = Math.floor(map.days / daysAStep);
  const humidity: number[] = [];
  for (let step = 0; step < steps; step += 1) {
    for (let column = 0; column < columnsOfYear; column += 1) {
      const at = nearest(map.depth_m, ((column + 0.5) / columnsOfYear) * total);
      let sum = 0;
      for (let day = 0; day < daysAStep; day += 1) sum += map.RH[(step * daysAStep + day) * depths + at]!;
      humidity.push(Math.round((sum / daysAStep) * 1000) / 1000);
    }
  }
  return { days: steps, columns: columnsOfYear, humidity, firstMonth: Number(option.shown.run.start.slice(0, 2)) - 1 };
}

function nearest(rising: ArrayLike<number>, value: number): number {
  let best = 0;
  for (let index = 1; index < rising.length; index += 1)
    if (Math.abs(rising[index]! - value) < Math.abs(rising[best]! - value)) best = index;
  return best;
}

/** Summary of the wettest path of an option: the worst path governs. */
export const worstPath = (option: ReportedOption): { readonly name: string; readonly summary: MemberSummary } => {
  const worst = option.paths.reduce((most, path) =>
    (path.summary.peakMoisture_percent ?? 0) > (most.summary.peakMoisture_percent ?? 0) ? path : most,
  );
  return { name: worst.case.pathName, summary: worst.summary };
};
