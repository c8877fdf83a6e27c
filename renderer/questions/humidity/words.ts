import { decidingFindings, say, type HumidityAnswer, type HumidityLimit } from "../../../solver/index.ts";
import type { Criterion } from "../asking/question-inputs.ts";
import { kindWords } from "../parts/finding-words.ts";
import { share } from "../../units/index.ts";

/** A limit in a row: "up to 37 %", "kept at every humidity tried", "broken at every humidity tried". */
export function limitText(limit: HumidityLimit, most: number): string {
  if (limit.beyondRange) return `${share(most)} and more`;
  return limit.upTo === null ? "none tried" : share(Math.floor(100 * limit.upTo) / 100);
}

/** The kind of finding drawn first: the one that decides, else the one that gives way first, else the first. */
export function firstHumidityKind(answer: HumidityAnswer): string {
  const broken = [...answer.limits]
    .filter(({ beyondRange }) => !beyondRange)
    .sort((one, other) => (one.upTo ?? 0) - (other.upTo ?? 0));
  const usual = broken.find(({ finding }) => !finding.startsWith("dewPoint")) ?? broken[0];
  return answer.governing ?? usual?.finding ?? answer.limits[0]?.finding ?? "woodMoisture";
}

/** The answer in words; criteria other than the deciding limits have words of their own. */
export function humidityWords(answer: HumidityAnswer, criterion: Criterion): string {
  if (criterion === "deciding") return `${say(answer.lead, "si")}${firstLook(answer)}`;
  if (answer.points.length < 2) return "Not known yet: fewer than two humidities have been run.";
  const rule = answer.dewPointRule === null ? "" : ` The hand rule says ${share(answer.dewPointRule.humidity)}.`;
  if (answer.upTo === null) return `No humidity tried keeps that. The room's air is not what breaks it.${rule}`;
  if (answer.beyondRange) return `Up to ${share(answer.upTo)} in winter, the most that was tried.${rule}`;
  const gives = answer.governing === null ? "" : ` ${kindWords(answer.governing).short} gives way first.`;
  return `Up to ${share(Math.floor(100 * answer.upTo) / 100)} in winter.${gives}${rule}`;
}

/** Where the first limit that only asks for a look gives way, if that is before the answer. */
function firstLook({ limits, upTo, beyondRange }: HumidityAnswer): string {
  const looks = limits.filter(
    (limit) =>
      !decidingFindings.includes(limit.finding) &&
      !limit.beyondRange &&
      (upTo === null || beyondRange || (limit.upTo ?? 0) < upTo),
  );
  const first = looks.sort((one, other) => (one.upTo ?? 0) - (other.upTo ?? 0))[0];
  if (first === undefined) return "";
  const name = kindWords(first.finding).short;
  return first.upTo === null
    ? ` ${name}: asks for a look at every humidity tried.`
    : ` ${name}: asks for a look above ${share(Math.floor(100 * first.upTo) / 100)}.`;
}
