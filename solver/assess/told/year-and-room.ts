import {
  surfaceFactor,
  surfaceFactorNeeded,
  cautiousInsideFilm_m2KW,
  steadyLayersOf,
} from "../../physics/steady/index.ts";
import { placeOf } from "../assessment.ts";
import type { Assessment, Draft } from "../assessment.ts";
import { monthNames } from "../dates.ts";
import { drift } from "../drift.ts";

/** From year to year, and the room face. */
export function yearFindings(a: Assessment): Draft[] {
  if (a.dates.laboratory) return [];
  return [driftDraft(a), ...roomFaceDrafts(a)].filter((draft): draft is Draft => draft !== null);
}

function driftDraft(a: Assessment): Draft | null {
  const ends = a.result.yearEndWater_kgm2;
  const course = drift(ends);
  if (!course) {
    if (ends.length < 2) return null;
    const change = ends[1]! - ends[0]!;
    return {
      id: "yearOnYear",
      probe: "",
      statement: `The wall ends its first year ${a.say.water(Math.abs(change))} ${change > 0 ? "wetter" : "drier"} than it began; run two years or more to see whether it ratchets.`,
      measured: change,
      unit: "kg/m2",
      limit: null,
      margin: null,
      when: "first year",
      holds: null,
      source: "water at the year's end; no published limit",
      sway: "moisture",
    };
  }
  const years = ends.length - 1;
  const change = course.lastYear_kgm2;
  const small = Math.abs(change) <= course.limit_kgm2;
  const statement = course.ratchets
    ? `The wall ratchets: it ends year ${years} ${a.say.water(change)} wetter than the year before.`
    : small
      ? "The wall does not ratchet: each year ends where the one before it ended."
      : `The wall still dries: it ends year ${years} ${a.say.water(-change)} drier than the year before.`;
  return {
    id: "yearOnYear",
    probe: "",
    statement,
    measured: change,
    unit: "kg/m2 a year",
    limit: course.limit_kgm2,
    margin: course.limit_kgm2 - change,
    when: `year ${years} against year ${years - 1}`,
    holds: !course.ratchets,
    source: "a yearly gain of no more than 1 % of the wall's water, common practice, no source",
    sway: "moisture",
  };
}

function roomFaceDrafts(a: Assessment): Draft[] {
  const drafts: Draft[] = [];
  const innermost = a.aCase.layers[a.aCase.layers.length - 1]!;
  const face = a.face(innermost, "inside");
  const months = monthMeans(a, face?.RH ?? null);
  if (face && months.length > 0) {
    const worst = months.reduce((best, one) => (one.mean > best.mean ? one : best));
    const holds = worst.mean <= 0.8;
    drafts.push({
      id: "roomFaceHumidity",
      probe: face.id,
      statement: `The room face of ${placeOf({ layer: innermost, side: null })} averages ${a.say.humidity(worst.mean)} in ${monthNames[worst.month]}, its dampest month.`,
      measured: worst.mean * 100,
      unit: "% RH",
      limit: 80,
      margin: 80 - worst.mean * 100,
      when: monthNames[worst.month]!,
      holds,
      source: "monthly mean of at most 80 % at the room face, ISO 13788 [MEMORY]",
      sway: "none",
    });
  }
  const wall = steadyLayersOf(a.aCase.layers);
  const factor = surfaceFactor(
    wall.layers.reduce((sum, layer) => sum + layer.resistance_m2KW, 0),
    { outside_m2KW: wall.films.outside_m2KW, inside_m2KW: cautiousInsideFilm_m2KW },
  );
  const outdoor = monthMeans(a, a.outside_C);
  const indoor = monthMeans(a, a.room?.temperature_C ?? null);
  const vapour = monthMeans(a, a.room?.vapourPressure_Pa ?? null);
  const needed = outdoor.flatMap((month, index) => {
    const room_C = indoor[index]?.mean;
    const pressure_Pa = vapour[index]?.mean;
    // As in the standard, months nearly as warm as the room ask for nothing.
    if (room_C === undefined || pressure_Pa === undefined || room_C - month.mean < 2) return [];
    const need = surfaceFactorNeeded(month.mean, room_C, pressure_Pa);
    return need.factor === null ? [] : [{ month: month.month, factor: need.factor }];
  });
  const hardest = needed.reduce<(typeof needed)[number] | null>(
    (best, one) => (best === null || one.factor > best.factor ? one : best),
    null,
  );
  const holds = hardest ? factor >= hardest.factor : null;
  drafts.push({
    id: "surfaceFactor",
    probe: face?.id ?? "",
    statement: hardest
      ? `The room face keeps ${Math.round(factor * 100)} % of the step from outdoors to the room; ${monthNames[hardest.month]} asks for ${Math.max(0, Math.round(hardest.factor * 100))} %.`
      : `The room face keeps ${Math.round(factor * 100)} % of the step from outdoors to the room.`,
    measured: factor,
    unit: "fRsi",
    limit: hardest ? hardest.factor : null,
    margin: hardest ? factor - hardest.factor : null,
    when: hardest ? monthNames[hardest.month]! : "all year",
    holds,
    source:
      "surface temperature factor with an inner film of 0.25 m2K/W, ISO 13788 [MEMORY]; in the field of the wall, not at corners or studs",
    sway: "temperature",
  });
  return drafts;
}

/** Means by calendar month, in the order in which the months first come; months with fewer than 20 days are left out. */
function monthMeans(
  a: Assessment,
  series: ArrayLike<number> | null,
): { readonly month: number; readonly mean: number }[] {
  if (!series) return [];
  const sums = new Map<number, { sum: number; hours: number }>();
  for (let hour = 0; hour < series.length; hour += 1) {
    const month = a.dates.month(hour) ?? 0;
    const here = sums.get(month) ?? { sum: 0, hours: 0 };
    here.sum += series[hour]!;
    here.hours += 1;
    sums.set(month, here);
  }
  return [...sums].flatMap(([month, { sum, hours }]) => (hours >= 480 ? [{ month, mean: sum / hours }] : []));
}
