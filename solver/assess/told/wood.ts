import { decay } from "../decay.ts";
import { placeOf } from "../assessment.ts";
import type { Assessment, Draft, JudgedProbe } from "../assessment.ts";
import { capitalised } from "../wording.ts";
import { woodLines_percent, woodMoisture } from "../wood-moisture.ts";
import type { WoodMoisture } from "../wood-moisture.ts";

const limitSource =
  "20 % by mass as the long-term limit of wood in service [SEEN, preview of a 2022 building-physics yearbook]; lumber 19 % [MEMORY]; panels 18 % in humid service, EN 13986 [SEEN, same yearbook]";
const decaySource = "Viitanen et al. 2010, pine sapwood [MEMORY]";

const percentOf = (probe: JudgedProbe): Float64Array =>
  Float64Array.from(probe.w_kgm3, (water) => (water / probe.woodDensity_kgm3!) * 100);

const above = (a: Assessment, moisture: WoodMoisture): string => {
  if (moisture.hoursAbove16 === 0) return "It never passes 16 %.";
  const parts = [`above 16 % for ${a.say.duration(moisture.hoursAbove16)}`];
  if (moisture.hoursAbove20 > 0) parts.push(`above 20 % for ${a.say.duration(moisture.hoursAbove20)}`);
  if (moisture.hoursAbove28 > 0) parts.push(`above 28 % for ${a.say.duration(moisture.hoursAbove28)}`);
  return `It stands ${parts.join(", ")}.`;
};

/** Moisture content of the governing layer, of the wettest other wood behind the cladding, and at the governing inner face. */
export function woodFindings(a: Assessment): Draft[] {
  const { governing } = a;
  const behind = a.aCase.layers.slice(governing.behindCladding);
  const means = behind.flatMap((layer) => {
    const probe = a.mean(layer);
    return probe && probe.woodDensity_kgm3 !== null && probe.w_kgm3.length > 0 ? [probe] : [];
  });
  const drafts: Draft[] = [];
  const own = means.find((probe) => probe.layer.id === governing.layer.id);
  if (own) drafts.push(moistureDraft(a, own, "woodMoisture"));
  const others = means.filter((probe) => probe !== own).map((probe) => ({ probe, percent: percentOf(probe) }));
  const wettest = others.reduce<(typeof others)[number] | null>(
    (best, one) => (best === null || highest(one.percent) > highest(best.percent) ? one : best),
    null,
  );
  if (wettest) drafts.push(moistureDraft(a, wettest.probe, "woodMoistureElsewhere"));

  const inner = a.face(governing.layer, "inside");
  if (inner && own && inner.woodDensity_kgm3 !== null && inner.w_kgm3.length > 0) {
    const moisture = woodMoisture(percentOf(inner), inner.T_C);
    const limit = woodLines_percent.fibreSaturation;
    const holds = moisture.peak_percent <= limit;
    drafts.push({
      id: "woodMoistureInnerFace",
      probe: inner.id,
      statement: `${capitalised(placeOf(inner))} ${holds ? "stays under" : "passes"} ${limit} %, where decay could start: it peaks at ${a.say.moisture(moisture.peak_percent)} on ${a.dates.date(moisture.hourOfPeak)}.`,
      measured: moisture.peak_percent,
      unit: "% by mass",
      limit,
      margin: limit - moisture.peak_percent,
      when: a.dates.date(moisture.hourOfPeak),
      holds,
      source: "fibre saturation 26 to 30 % by mass, Wood Handbook [MEMORY]",
      sway: "moisture",
    });
    drafts.push(decayDraft(a, inner));
  }
  return drafts;
}

const highest = (values: Float64Array): number => values.reduce((most, one) => Math.max(most, one), -Infinity);

function moistureDraft(a: Assessment, probe: JudgedProbe, id: string): Draft {
  const moisture = woodMoisture(percentOf(probe), probe.T_C);
  const limit = woodLines_percent.limit;
  const holds = moisture.peak_percent <= limit;
  const name = capitalised(placeOf(probe));
  const peak = `${name} peaks at ${a.say.moisture(moisture.peak_percent)} in ${a.dates.monthName(moisture.hourOfPeak)}`;
  const low = `its driest is ${a.say.moisture(moisture.lowest_percent)} in ${a.dates.monthName(moisture.hourOfLowest)}`;
  const cold =
    !holds && moisture.warmHoursAbove20 === 0
      ? ` While it is that wet it stays colder than ${a.say.temperature(5)}, too cold for decay to gain ground.`
      : "";
  return {
    id,
    probe: probe.id,
    statement: `${peak}; ${low}. ${above(a, moisture)}${cold}`,
    measured: moisture.peak_percent,
    unit: "% by mass",
    limit,
    margin: limit - moisture.peak_percent,
    when: a.dates.date(moisture.hourOfPeak),
    holds,
    source: limitSource,
    sway: "moisture",
  };
}

function decayDraft(a: Assessment, probe: JudgedProbe): Draft {
  const course = decay(probe.T_C, probe.RH);
  const holds = course.activation < 1;
  const share = Math.round(course.activation * 100);
  const statement = holds
    ? share === 0
      ? `Decay finds no start at ${placeOf(probe)}: it is never both warm and wet enough.`
      : `Decay does not start at ${placeOf(probe)}: the warm wet hours add up to ${share} % of what it needs.`
    : `Decay can start at ${placeOf(probe)} from ${a.dates.date(course.hourOfActivation)}; the wood there loses ${course.massLoss_percent < 1 ? "less than 1" : Math.round(course.massLoss_percent)} % of its mass by the end of ${a.span}.`;
  return {
    id: "decay",
    probe: probe.id,
    statement,
    measured: course.activation,
    unit: "share of activation",
    limit: 1,
    margin: 1 - course.activation,
    when: course.activation > 0 ? a.dates.date(course.hourOfActivation) : "at no time",
    holds,
    source: decaySource,
    sway: "moisture",
  };
}
