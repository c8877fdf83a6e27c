import { placeOf } from "../assessment.ts";
import type { Assessment, Draft, JudgedProbe } from "../assessment.ts";
import { mouldClassWords } from "../mould-class.ts";
import { mouldCoefficients, mouldIndex, visibleMouldIndex } from "../mould-index.ts";
import type { MouldCourse } from "../mould-index.ts";
import { hoursIn30Days, thirtyDayHumidity } from "../thirty-day-humidity.ts";
import { capitalised } from "../wording.ts";

const mouldSource =
  "mould index at most 3, ANSI/ASHRAE 160-2016 [index SEEN, limit MEMORY]; growth after Hukka and Viitanen 1999 and Ojanen et al. 2010 [coefficients SEEN secondary, response time MEMORY]";
const thirtyDaySource =
  "80 % over 30 days at 5 to 40 degC, ANSI/ASHRAE 160-2009 [SEEN]; replaced by the mould index in 2016 because sound walls fail it [SEEN]";
/** The older rule as a sentence says it. */
const humidityLimit = 0.8;
/** Longer than a season the word is no longer "a month" [h]. */
const longSpell_h = 1440;

/** The faces that may grow mould: the sheathing's two, the condensing plane, and every other inner surface behind the cladding. */
function surfaces(a: Assessment): { readonly main: JudgedProbe[]; readonly other: JudgedProbe[] } {
  const { governing, aCase } = a;
  const main = [
    a.face(governing.layer, "inside"),
    ...(governing.condensing.id === governing.layer.id ? [] : [a.face(governing.condensing, "inside")]),
    // The weather side of an outermost layer is cleaned by sun and rain, not judged.
    ...(governing.index > 0 ? [a.face(governing.layer, "outside")] : []),
  ].filter((probe): probe is JudgedProbe => probe !== null);
  const ids = new Set(main.map((probe) => probe.id));
  const behind = new Set(aCase.layers.slice(governing.behindCladding).map((layer) => layer.id));
  const outermost = aCase.layers[0]!.id;
  /** The face that touches another: one place, told once. A membrane between them makes two. */
  const touches = (probe: JudgedProbe): boolean => {
    const index = aCase.layers.indexOf(probe.layer);
    const neighbour = aCase.layers[probe.side === "inside" ? index + 1 : index - 1];
    return neighbour !== undefined && ids.has(`${neighbour.id}-${probe.side === "inside" ? "outside" : "inside"}`);
  };
  const other = a.probes.filter(
    (probe) =>
      probe.side !== null &&
      !ids.has(probe.id) &&
      !touches(probe) &&
      behind.has(probe.layer.id) &&
      probe.layer.material.kind === "bulk" &&
      !(probe.layer.id === outermost && probe.side === "outside"),
  );
  return { main, other };
}

interface Grown {
  readonly probe: JudgedProbe;
  readonly course: MouldCourse;
}

const grow = (a: Assessment, probe: JudgedProbe): Grown => ({
  probe,
  course: mouldIndex(probe.T_C, probe.RH, mouldCoefficients[a.mouldClass(probe.layer)], a.mouldDecline),
});
const worst = (grown: readonly Grown[]): Grown | null =>
  grown.reduce<Grown | null>((best, one) => (best === null || one.course.max > best.course.max ? one : best), null);

/** Mould index and the older 30-day rule, at the sheathing and at the worst other surface; the two may disagree. */
export function growthFindings(a: Assessment): Draft[] {
  const { main, other } = surfaces(a);
  const drafts: Draft[] = [];
  const atMain = worst(main.map((probe) => grow(a, probe)));
  if (atMain) {
    drafts.push(mouldDraft(a, atMain, "mouldIndex"));
    const whole = fromStart(a, atMain);
    if (whole) drafts.push(whole);
  }
  const elsewhere = worst(other.map((probe) => grow(a, probe)));
  if (elsewhere && elsewhere.course.max >= 0.5) drafts.push(mouldDraft(a, elsewhere, "mouldIndexElsewhere"));
  const thirtyMain = thirtyDayDraft(a, main, "thirtyDayHumidity");
  if (thirtyMain) drafts.push(thirtyMain);
  const thirtyElsewhere = thirtyDayDraft(a, other, "thirtyDayHumidityElsewhere");
  if (thirtyElsewhere) drafts.push(thirtyElsewhere);
  return drafts;
}

const stage = (index: number): string =>
  index < 0.05
    ? "grows no mould"
    : index < 1
      ? "grows no mould that a microscope would find"
      : index < 2
        ? "may show a first trace of mould under a microscope"
        : index < visibleMouldIndex
          ? "may grow mould that only a microscope shows"
          : "may grow mould that the eye sees";

function mouldDraft(a: Assessment, grown: Grown, id: string): Draft {
  const { probe, course } = grown;
  const holds = course.max < visibleMouldIndex;
  const mouldClass = a.mouldClass(probe.layer);
  const number = course.max < 0.05 ? "0" : course.max.toFixed(1);
  const when = course.max < 0.05 ? "at no time" : a.dates.date(course.hourOfMax);
  const visible = course.hoursTo3 === null ? "" : ` It is visible from ${a.dates.date(course.hoursTo3 - 1)}.`;
  return {
    id,
    probe: probe.id,
    statement: `${capitalised(placeOf(probe))} ${stage(course.max)}: index ${number}, judged as ${mouldClassWords[mouldClass]}.${visible}`,
    measured: course.max,
    unit: "mould index",
    limit: visibleMouldIndex,
    margin: visibleMouldIndex - course.max,
    when,
    holds,
    source: mouldSource,
    sway: "moisture",
  };
}

/** Growth does not go away with the first year: what the start moisture grew is still there in the judged year. */
function fromStart(a: Assessment, grown: Grown): Draft | null {
  if (a.result.judgedFrom === 0) return null;
  const { probe } = grown;
  const until = a.result.judgedFrom + a.result.judgedHours;
  const course = mouldIndex(
    probe.series.T_C.subarray(0, until),
    probe.series.RH.subarray(0, until),
    mouldCoefficients[a.mouldClass(probe.layer)],
    a.mouldDecline,
  );
  if (course.max < 1 || course.max < grown.course.max + 0.1) return null;
  const holds = course.max < visibleMouldIndex;
  const early = course.hourOfMax < a.result.judgedFrom;
  return {
    id: "mouldIndexFromStart",
    probe: probe.id,
    statement: `Counted from the first day of the run, ${placeOf(probe)} reaches mould index ${course.max.toFixed(1)}${early ? ", while the moisture it started with dries" : ", as one year's growth adds to the last"}.`,
    measured: course.max,
    unit: "mould index",
    limit: visibleMouldIndex,
    margin: visibleMouldIndex - course.max,
    when: `${a.dates.date(course.hourOfMax - a.result.judgedFrom)}, year ${Math.floor(course.hourOfMax / 8760) + 1}`,
    holds,
    source: mouldSource,
    sway: "moisture",
  };
}

function thirtyDayDraft(a: Assessment, probes: readonly JudgedProbe[], id: string): Draft | null {
  const courses = probes.flatMap((probe) => {
    const course = thirtyDayHumidity(probe.T_C, probe.RH);
    return course ? [{ probe, course }] : [];
  });
  const judged = courses.reduce<(typeof courses)[number] | null>(
    (best, one) => (best === null || (one.course.worst ?? -1) > (best.course.worst ?? -1) ? one : best),
    null,
  );
  if (!judged) return null;
  const { probe, course } = judged;
  const place = placeOf(probe);
  if (course.worst === null) {
    return {
      id,
      probe: probe.id,
      statement: `${capitalised(place)} has no 30 days between ${a.say.temperature(5)} and ${a.say.temperature(40)}, so the 30-day rule does not speak.`,
      measured: 0,
      unit: "% RH",
      limit: humidityLimit * 100,
      margin: null,
      when: "at no time",
      holds: null,
      source: thirtyDaySource,
      sway: "moisture",
    };
  }
  const holds = course.hoursFailing === 0;
  const value = a.say.humidity(course.worst);
  const until = a.dates.date(course.worstEnd);
  const statement = holds
    ? `Over its dampest 30 days of growing weather ${place} averages ${value}; they end on ${until}.`
    : `Damp for ${course.hoursFailing > longSpell_h ? "months" : "a month"}: ${place} averages ${value} over the 30 days to ${until}, and the mean stays at 80 % or more for ${a.say.duration(course.hoursFailing)}.`;
  return {
    id,
    probe: probe.id,
    statement,
    measured: course.worst * 100,
    unit: "% RH",
    limit: humidityLimit * 100,
    margin: (humidityLimit - course.worst) * 100,
    when: `${a.dates.date(course.worstEnd - hoursIn30Days + 1)} to ${until}`,
    holds,
    source: thirtyDaySource,
    sway: "moisture",
  };
}
