import { placeOf } from "../assessment.ts";
import type { Assessment, Draft, JudgedProbe } from "../assessment.ts";
import { largestUptake, potentialCondensate } from "../condensation.ts";
import { monthNames } from "../dates.ts";
import { dewPointMargin } from "../dew-point-margin.ts";
import { capitalised } from "../wording.ts";

const dewSource =
  "plane at or above the room's dew point in the coldest month's mean: the trade's ratio rule, common practice, no source; the run's own temperatures";
const condensateSource =
  "DIN 4108-3: at most 1.0 kg/m2 held and dried out, 0.5 kg/m2 at layers that do not absorb, 3 % by mass in wood panels, 5 % in solid wood [SEEN, two public summaries]; written for a steady method, used here on the run's own water";
const panelGain_share = 0.03;
const solidGain_share = 0.05;
const solidFrom_m = 0.035;
/** Less than half a cup on a 4 by 8 ft sheet. */
const nextToNothing_kgm2 = 0.03;
const absorbingLimit_kgm2 = 1.0;
const nonAbsorbingLimit_kgm2 = 0.5;

/** Inner face of the layer just outside of the cavity fill: dew point, saturated hours, water gathered and taken up. */
export function condensingFindings(a: Assessment): Draft[] {
  const { governing } = a;
  const plane = a.face(governing.condensing, "inside");
  const drafts: Draft[] = [];
  if (plane && a.room && !a.dates.laboratory) drafts.push(...dewDrafts(a, plane, a.room.dewPoint_C));
  const layerMean = a.mean(governing.layer);
  const face = a.face(governing.layer, "inside");
  if (layerMean && governing.layer.thickness_m > 0) {
    drafts.push(uptakeDraft(a, layerMean, governing.layer.thickness_m));
  }
  const gathered = condensateDraft(a, plane ?? face);
  if (gathered) drafts.push(gathered);
  return drafts;
}

function dewDrafts(a: Assessment, plane: JudgedProbe, roomDewPoint_C: Float64Array): Draft[] {
  if (plane.T_C.length < 24) return [];
  const margin = dewPointMargin(plane.T_C, roomDewPoint_C, (hour) => a.dates.month(hour) ?? 0);
  const place = placeOf(plane);
  const drafts: Draft[] = [];
  if (Number.isFinite(margin.coldestMonthMargin_K)) {
    const month = monthNames[margin.coldestMonth]!;
    const holds = margin.coldestMonthMargin_K >= 0;
    drafts.push({
      id: "dewPointMargin",
      probe: plane.id,
      statement: `In ${month} ${place} averages ${a.say.temperature(margin.coldestMonth_C)}, ${a.say.kelvins(margin.coldestMonthMargin_K)} ${holds ? "above" : "below"} the dew point of the room's air${holds ? "; air that leaks out stays dry there" : "; room air that reaches it leaves water"}.`,
      measured: margin.coldestMonthMargin_K,
      unit: "K",
      limit: 0,
      margin: margin.coldestMonthMargin_K,
      when: month,
      holds,
      source: dewSource,
      sway: "temperature",
    });
  }
  const holds = margin.worstDayMargin_K >= 0;
  drafts.push({
    id: "dewPointWorstDay",
    probe: plane.id,
    statement: `On its worst day, ${a.dates.date(margin.worstDay)}, ${place} is ${a.say.kelvins(margin.worstDayMargin_K)} ${holds ? "above" : "below"} the dew point of the room's air.`,
    measured: margin.worstDayMargin_K,
    unit: "K",
    limit: 0,
    margin: margin.worstDayMargin_K,
    when: a.dates.date(margin.worstDay),
    // One cold day wets nothing by itself, so a day below is told and not judged.
    holds: holds ? true : null,
    source: dewSource,
    sway: "temperature",
  });
  drafts.push({
    id: "condensationHours",
    probe: plane.id,
    statement:
      margin.hoursBelow === 0
        ? `Room air would find no saturated surface at ${place} in all of ${a.span}.`
        : `Condensation is possible at ${place} for ${a.say.duration(margin.hoursBelow)} of ${a.span}: room air would be saturated there.`,
    measured: margin.hoursBelow,
    unit: "h",
    limit: null,
    margin: null,
    when: margin.hoursBelow === 0 ? "at no time" : "over the judged year",
    holds: margin.hoursBelow === 0 ? true : null,
    source: "hours with the plane below the room's dew point; no published limit",
    sway: "temperature",
  });
  return drafts;
}

const storedIn = (probe: JudgedProbe): Float64Array =>
  Float64Array.from(probe.w_kgm3, (water) => water * probe.layer.thickness_m);

/** A wetting season may begin before the judged year does: its low is looked for up to this much earlier [h]. */
const lookBack_h = 4380;

function uptakeDraft(a: Assessment, mean: JudgedProbe, thickness_m: number): Draft {
  const { judgedFrom, judgedHours } = a.result;
  const back = Math.min(lookBack_h, judgedFrom);
  const water = mean.series.w_kgm3.subarray(judgedFrom - back, judgedFrom + judgedHours);
  const uptake = largestUptake(
    Float64Array.from(water, (one) => one * thickness_m),
    back,
  );
  const to = a.dates.date(uptake.to - back);
  const from = a.dates.date(uptake.from - back);
  return {
    id: "uptake",
    probe: mean.id,
    statement:
      uptake.gain_kgm2 < nextToNothing_kgm2
        ? `${capitalised(placeOf(mean))} takes up next to nothing.`
        : `From ${from} to ${to} ${placeOf(mean)} takes up ${a.say.units === "si" ? `${a.say.water(uptake.gain_kgm2)}, ` : ""}${a.say.perSheet(uptake.gain_kgm2)}.`,
    measured: uptake.gain_kgm2,
    unit: "kg/m2",
    limit: null,
    margin: null,
    when: `${from} to ${to}`,
    holds: null,
    source: "rise of the water in the layer; no published limit",
    sway: "moisture",
  };
}

/** Water gathered at the plane while its air is saturated, in the layer itself, or with the fill beside it where it soaks up nothing. */
function condensateDraft(a: Assessment, plane: JudgedProbe | null): Draft | null {
  if (!plane) return null;
  const { layers } = a.aCase;
  const layer = plane.layer;
  const own = a.mean(layer);
  if (!own) return null;
  const wood = layer.material.wood === true;
  const absorbs = wood || layer.material.liquid !== undefined;
  const water = storedIn(own);
  const fill = layers.slice(layers.indexOf(layer) + 1).find((one) => one.thickness_m > 0);
  const fillMean = fill ? a.mean(fill) : null;
  if (!absorbs && fillMean) storedIn(fillMean).forEach((more, hour) => (water[hour] = water[hour]! + more));
  const course = potentialCondensate(water, plane.RH);
  const woodLimit_kgm2 =
    wood && own.woodDensity_kgm3 !== null
      ? (layer.thickness_m >= solidFrom_m ? solidGain_share : panelGain_share) *
        own.woodDensity_kgm3 *
        layer.thickness_m
      : Infinity;
  const limit = Math.min(absorbs ? absorbingLimit_kgm2 : nonAbsorbingLimit_kgm2, woodLimit_kgm2);
  const holds = course.most_kgm2 <= limit;
  const place = placeOf(plane);
  const when = course.most_kgm2 > 0 ? a.dates.date(course.hourOfMost) : "at no time";
  const statement =
    course.hoursSaturated === 0
      ? `${capitalised(place)} is never saturated.`
      : course.most_kgm2 < nextToNothing_kgm2
        ? `${capitalised(place)} is saturated for ${a.say.duration(course.hoursSaturated)} and gathers next to nothing.`
        : `While it is saturated ${place} gathers up to ${a.say.water(course.most_kgm2)} by ${when}; ${holds ? "it may hold" : "it should hold no more than"} ${a.say.waterAgain(limit)}.`;
  return {
    id: "condensate",
    probe: plane.id,
    statement,
    measured: course.most_kgm2,
    unit: "kg/m2",
    limit,
    margin: limit - course.most_kgm2,
    when,
    holds,
    source: condensateSource,
    sway: "moisture",
  };
}
