import type { Case } from "../model/index.ts";
import { withIndoor, withWinterHumidity } from "./change-case.ts";
import { monthNames } from "./calendar.ts";
import type { MonthlyAir } from "./monthly-air.ts";
import { amount, phrase, type Phrase } from "./phrase.ts";
import { humidityAtDewPoint, planeResistances } from "./ratio-rule.ts";
import type { Done, Member, Study } from "./study.ts";
import { decidingFindings, findingKinds, worstMargin, type MemberSummary } from "./summary.ts";

export interface HumidityQuestion {
  readonly case: Case;
  /** Winter humidities tried first, rising, 0..1. */
  readonly tried?: readonly number[];
  /** Ids of the findings that must hold; by default those that decide a wall. Every other is given beside them. */
  readonly hold?: readonly string[];
  /** Air of the place and the room, for the monthly line by the dew point; null: left out. */
  readonly air?: MonthlyAir | null;
}

/** Highest winter humidity that keeps one kind of finding. */
export interface HumidityLimit {
  readonly finding: string;
  /** 0..1; null: broken at every humidity looked at. 1 is never given: see `beyondRange`. */
  readonly upTo: number | null;
  /** True: it still holds at the most humid room looked at. */
  readonly beyondRange: boolean;
  readonly between: readonly [number, number] | null;
}

export interface HumidityPoint {
  readonly winterHumidity: number;
  readonly summary: MemberSummary;
}

export interface HumidityAnswer {
  readonly option: string;
  readonly path: string;
  readonly points: readonly HumidityPoint[];
  readonly limits: readonly HumidityLimit[];
  /** Highest winter humidity that keeps all that must hold; null: none looked at does, or not known yet. */
  readonly upTo: number | null;
  readonly beyondRange: boolean;
  readonly governing: string | null;
  /** January first: the room humidity at which the condensing plane's monthly mean sits at the room's dew point, 0..1. Steady, without storage. */
  readonly dewPointLine: readonly number[] | null;
  /** Lowest of that line, and its month: the humidity that the hand rule calls dry all year. */
  readonly dewPointRule: { readonly humidity: number; readonly month: number } | null;
  /** Owner's line, January first, 0..1: what the run keeps in winter, never above the 60 % of comfort in any month; null while unknown. */
  readonly ownersLine: readonly number[] | null;
  readonly lead: Phrase;
}

const triedFirst = [0.2, 0.3, 0.35, 0.4, 0.5, 0.6] as const;
/** The answer is said to a whole percent. */
const tolerance = 0.01;
const mostRefinements = 5;
/** Upper end of the usual comfort band. Source: ANSI/ASHRAE 55 and common practice; MEMORY. */
const comfortLimit = 0.6;

const keyOf = (humidity: number): string => `rh:${humidity.toFixed(4)}`;

/** How humid may it be inside? Finds the highest winter humidity that keeps every finding. */
export function howHumid(question: HumidityQuestion): Study<HumidityAnswer> {
  const base = question.case;
  const tried = [...(question.tried ?? triedFirst)].sort((a, b) => a - b);
  const member = (humidity: number): Member => ({
    key: keyOf(humidity),
    label: `room at ${Math.round(humidity * 100)} % in winter`,
    case: withIndoor(base, (indoor) => withWinterHumidity(indoor, humidity)),
  });
  const points = (done: Done): HumidityPoint[] =>
    [...done]
      .filter(([, summary]) => summary.status === "finished")
      .map(([key, summary]) => ({ winterHumidity: Number(key.slice(3)), summary }))
      .sort((a, b) => a.winterHumidity - b.winterHumidity);
  const limitsOf = (sorted: readonly HumidityPoint[]): HumidityLimit[] =>
    findingKinds(sorted.map((point) => point.summary)).map((finding) => limitOf(sorted, finding));
  const asked = (limits: readonly HumidityLimit[]): readonly HumidityLimit[] =>
    limits.filter((limit) => (question.hold ?? decidingFindings).includes(limit.finding));
  return {
    id: `humidity:${base.option}/${base.path}`,
    members: tried.map(member),
    next: (done) => {
      if (done.size >= tried.length + mostRefinements) return [];
      const open = governingLimit(asked(limitsOf(points(done))));
      if (open?.between == null || open.between[1] - open.between[0] <= tolerance) return [];
      const [low, high] = open.between;
      const room = 0.15 * (high - low);
      return [member(Number(Math.min(high - room, Math.max(low + room, open.upTo!)).toFixed(4)))].filter(
        ({ key }) => !done.has(key),
      );
    },
    reduce: (done) => {
      const sorted = points(done);
      const limits = limitsOf(sorted);
      const broken = asked(limits).some((limit) => limit.upTo === null);
      const governing = governingLimit(asked(limits));
      const upTo = sorted.length < 2 || broken ? null : (governing?.upTo ?? sorted[sorted.length - 1]!.winterHumidity);
      const beyondRange = upTo !== null && governing === null;
      const line = question.air == null ? null : dewPointLine(base, question.air);
      const rule =
        line === null
          ? null
          : line.reduce((least, humidity, month) => (humidity < least.humidity ? { humidity, month } : least), {
              humidity: 1,
              month: 0,
            });
      return {
        option: base.option,
        path: base.path,
        points: sorted,
        limits,
        upTo,
        beyondRange,
        governing: governing?.finding ?? null,
        dewPointLine: line,
        dewPointRule: rule,
        ownersLine: upTo === null ? null : ownersLine(upTo, question.air ?? null),
        lead: lead(sorted.length, upTo, beyondRange, broken, rule),
      };
    },
  };
}

function limitOf(sorted: readonly HumidityPoint[], finding: string): HumidityLimit {
  const margins = sorted.map((point) => worstMargin(point.summary, finding) ?? Infinity);
  const broken = margins.findIndex((margin) => margin < 0);
  if (broken === -1)
    return { finding, upTo: sorted[sorted.length - 1]?.winterHumidity ?? null, beyondRange: true, between: null };
  if (broken === 0) return { finding, upTo: null, beyondRange: false, between: null };
  const low = sorted[broken - 1]!.winterHumidity;
  const high = sorted[broken]!.winterHumidity;
  const above = margins[broken - 1]!;
  const share = Number.isFinite(above) ? above / (above - margins[broken]!) : 0;
  return { finding, upTo: low + (high - low) * share, beyondRange: false, between: [low, high] };
}

function governingLimit(limits: readonly HumidityLimit[]): HumidityLimit | null {
  return limits.reduce<HumidityLimit | null>(
    (least, limit) =>
      limit.upTo !== null && !limit.beyondRange && (least === null || limit.upTo < least.upTo!) ? limit : least,
    null,
  );
}

/** Room humidity whose dew point equals the steady face temperature of each month, January first. */
export function dewPointLine(aCase: Case, air: MonthlyAir): readonly number[] {
  const resistances = planeResistances(aCase);
  return air.outdoor_C.map((outdoor, month) => humidityAtDewPoint(outdoor, air.room_C[month]!, resistances));
}

/** The seasonal course that the run was given at its limit: winter value in the coldest month, rising with outdoor temperature to comfort's upper end. */
function ownersLine(upTo: number, air: MonthlyAir | null): readonly number[] {
  const top = Math.max(upTo, comfortLimit);
  if (air === null) return new Array<number>(12).fill(Math.min(upTo, comfortLimit));
  const coldest = Math.min(...air.outdoor_C);
  const warm = Math.max(...air.outdoor_C);
  return air.outdoor_C.map((outdoor) =>
    warm - coldest < 1
      ? Math.min(upTo, comfortLimit)
      : Math.min(comfortLimit, upTo + ((top - upTo) * (outdoor - coldest)) / (warm - coldest)),
  );
}

function lead(
  count: number,
  upTo: number | null,
  beyondRange: boolean,
  broken: boolean,
  rule: HumidityAnswer["dewPointRule"],
): Phrase {
  if (count < 2) return phrase`Not known yet: fewer than two humidities have been run.`;
  if (broken) return phrase`No humidity looked at holds every finding. The room's air is not what breaks this wall.`;
  const hand =
    rule === null
      ? []
      : phrase` The hand rule says ${amount("humidity", rule.humidity)}, in ${monthNames[rule.month]!}.`;
  if (beyondRange)
    return [
      ...phrase`Every finding holds up to ${amount("humidity", upTo!)} indoors in winter, the most that was tried.`,
      ...hand,
    ];
  return [...phrase`Holds up to ${amount("humidity", upTo!)} indoors in winter.`, ...hand];
}
