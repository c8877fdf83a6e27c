import { placeOf } from "../assessment.ts";
import type { Assessment, Draft, JudgedProbe } from "../assessment.ts";
import { wetHoursForMetal } from "../corrosion.ts";
import { freezeThaw } from "../freeze-thaw.ts";
import { frostDays } from "../frost.ts";
import { hoursIn30Days, thirtyDayHumidity } from "../thirty-day-humidity.ts";
import { capitalised } from "../wording.ts";
import type { CaseLayer } from "../../model/index.ts";

/** Where nobody has measured the unit: clay brick and stone lie about here (MEMORY, low confidence). */
const usualCriticalSaturation = 0.8;

/** Frost at the sheathing, freeze-thaw of wet masonry, and how long fasteners are wet. */
export function coldFindings(a: Assessment): Draft[] {
  return [...frostDrafts(a), ...freezeDrafts(a), ...corrosionDrafts(a)];
}

function frostDrafts(a: Assessment): Draft[] {
  const { governing, aCase } = a;
  const face = a.face(governing.layer, "inside");
  if (!face || face.T_C.length < 24) return [];
  const frost = frostDays(face.T_C);
  const place = placeOf(face);
  // The innermost plane that still freezes says how deep the frost goes.
  const deeper = aCase.layers
    .slice(governing.index + 1)
    .map((layer) => a.face(layer, "inside"))
    .filter((probe): probe is JudgedProbe => probe !== null && frostDays(probe.T_C).days > 0);
  const deepest = deepestOf(deeper);
  const depth = deepest ? `; it goes as deep as ${placeOf(deepest)}` : " and goes no deeper";
  const coldest = a.say.temperature(face.T_C[frost.coldestHour]!);
  return [
    {
      id: "frostDays",
      probe: face.id,
      statement:
        frost.days === 0
          ? `No frost reaches ${place}; its coldest hour is ${coldest}.`
          : `Frost reaches ${place} on ${a.say.days(frost.days)}${depth}.`,
      measured: frost.days,
      unit: "days",
      limit: null,
      margin: null,
      when: frost.days === 0 ? "at no time" : `coldest on ${a.dates.date(frost.coldestHour)}`,
      holds: null,
      source: "days with an hour below 0 degC; no published limit",
      sway: "temperature",
    },
  ];
}

const deepestOf = (probes: readonly JudgedProbe[]): JudgedProbe | null => probes[probes.length - 1] ?? null;

/** Brick, stone, concrete, mortar or stucco: porous, mineral, heavy. */
const freezes = (layer: CaseLayer): boolean =>
  layer.material.kind === "bulk" &&
  layer.material.wood !== true &&
  (layer.material.density_kgm3 ?? 0) >= 1000 &&
  (layer.material.liquid !== undefined ||
    /masonry|brick|stone|stucco/i.test(`${layer.material.group} ${layer.name}`)) &&
  !/gypsum/i.test(layer.name);

function saturationContent(layer: CaseLayer): number | null {
  const { porosity, freeSaturation_kgm3, sorption } = layer.material;
  if (porosity !== undefined && porosity > 0) return porosity * 1000;
  if (freeSaturation_kgm3 !== undefined) return freeSaturation_kgm3;
  return sorption && "saturation_kgm3" in sorption ? sorption.saturation_kgm3 : null;
}

/** The masonry layer that freezes wet most often, or comes closest to it. */
function freezeDrafts(a: Assessment): Draft[] {
  const told = a.aCase.layers.filter(freezes).flatMap((layer) => freezeDraft(a, layer));
  const worst = told.reduce<(typeof told)[number] | null>(
    (best, one) =>
      best === null ||
      one.draft.measured > best.draft.measured ||
      (one.draft.measured === best.draft.measured && one.reserve < best.reserve)
        ? one
        : best,
    null,
  );
  return worst ? [worst.draft] : [];
}

interface Frozen {
  readonly draft: Draft;
  /** Critical less wettest degree of saturation while frozen. */
  readonly reserve: number;
}

function freezeDraft(a: Assessment, layer: CaseLayer): Frozen[] {
  const full_kgm3 = saturationContent(layer);
  if (full_kgm3 === null) return [];
  const own: unknown = (layer.material as Readonly<Record<string, unknown>>)["criticalSaturation"];
  const measured = a.options.criticalSaturation?.[layer.id] ?? (typeof own === "number" ? own : null);
  const critical = measured ?? usualCriticalSaturation;
  const counts = a.probes
    .filter((probe) => probe.layer.id === layer.id && probe.w_kgm3.length > 0)
    .map((probe) => ({
      probe,
      count: freezeThaw(
        probe.T_C,
        Float64Array.from(probe.w_kgm3, (water) => water / full_kgm3),
        critical,
      ),
    }));
  if (counts.length === 0) return [];
  const worst = counts.reduce((best, one) =>
    one.count.wetCycles > best.count.wetCycles ||
    (one.count.wetCycles === best.count.wetCycles && one.count.wettestFreeze > best.count.wettestFreeze)
      ? one
      : best,
  );
  const { probe, count } = worst;
  const place = placeOf(probe);
  const times = count.wetCycles === 1 ? "once" : `${count.wetCycles} times`;
  return [
    {
      reserve: critical - count.wettestFreeze,
      draft: {
        swayLayer: layer.id,
        id: "freezeThaw",
        probe: probe.id,
        statement:
          count.wetCycles > 0
            ? `${capitalised(place)} freezes wet ${times} in ${a.span}, fuller than the ${Math.round(critical * 100)} % from which frost can harm it.`
            : count.cycles === 0
              ? `${capitalised(place)} goes through no freeze and thaw.`
              : `${capitalised(place)} freezes and thaws ${count.cycles === 1 ? "once" : `${count.cycles} times`}, never fuller than ${Math.round(count.wettestFreeze * 100)} % of its pores.`,
        measured: count.wetCycles,
        unit: "cycles",
        limit: 0,
        margin: -count.wetCycles,
        when:
          count.hourOfWettestFreeze === null
            ? "at no time"
            : `wettest freeze on ${a.dates.date(count.hourOfWettestFreeze)}`,
        holds: count.wetCycles === 0,
        source:
          measured === null
            ? "critical degree of saturation assumed 0.8, after Fagerlund 1977 [MEMORY, low confidence]: have the unit tested; cycles counted from -1 to +1 degC, common practice, no source"
            : "critical degree of saturation as given for this material; cycles counted from -1 to +1 degC, common practice, no source",
        sway: "rain" as const,
      },
    },
  ];
}

function corrosionDrafts(a: Assessment): Draft[] {
  const { governing } = a;
  const faces = [a.face(governing.layer, "inside"), a.face(governing.layer, "outside")].filter(
    (probe): probe is JudgedProbe => probe !== null,
  );
  if (faces.length === 0 || governing.kind === "masonry") return [];
  const wettest = faces
    .map((probe) => ({ probe, hours: wetHoursForMetal(probe.T_C, probe.RH) }))
    .reduce((best, one) => (one.hours > best.hours ? one : best));
  const drafts: Draft[] = [
    {
      id: "corrosionHours",
      probe: wettest.probe.id,
      statement:
        wettest.hours === 0
          ? `Metal at ${placeOf(wettest.probe)} is never wet.`
          : `Metal at ${placeOf(wettest.probe)} is wet for ${a.say.duration(wettest.hours)} of ${a.span} in all.`,
      measured: wettest.hours,
      unit: "h",
      limit: null,
      margin: null,
      when: "over the judged year",
      holds: null,
      source: "time of wetness, 80 % or more above 0 degC, ISO 9223 [MEMORY]; no limit of its own",
      sway: "moisture",
    },
  ];
  const means = faces.flatMap((probe) => {
    const course = thirtyDayHumidity(probe.T_C, probe.RH, 0.8, null);
    return course && course.worst !== null ? [{ probe, worst: course.worst, end: course.worstEnd }] : [];
  });
  if (means.length > 0) {
    const worst = means.reduce((best, one) => (one.worst > best.worst ? one : best));
    const holds = worst.worst < 0.8;
    drafts.push({
      id: "corrosion",
      probe: worst.probe.id,
      statement: `Fasteners at ${placeOf(worst.probe)} see ${a.say.humidity(worst.worst)} over their dampest 30 days, to ${a.dates.date(worst.end)}${holds ? "" : "; use fasteners that stand it"}.`,
      measured: worst.worst * 100,
      unit: "% RH",
      limit: 80,
      margin: 80 - worst.worst * 100,
      when: `${a.dates.date(worst.end - hoursIn30Days + 1)} to ${a.dates.date(worst.end)}`,
      holds,
      source: "30-day mean under 80 % for metal, ANSI/ASHRAE 160 [MEMORY]",
      sway: "moisture",
    });
  }
  return drafts;
}
