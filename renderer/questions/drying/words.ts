import { say, type DryingAnswer, type UnitSystem } from "../../../solver/index.ts";

type Way = "to the room" | "to the weather" | "both ways";

/** From two thirds on one side is said to be the way. */
const oneSided = 0.65;

const wayOf = (inwardShare: number): Way =>
  inwardShare >= oneSided ? "to the room" : inwardShare <= 1 - oneSided ? "to the weather" : "both ways";

const list = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)!}`;

/** Which way, then how fast: "A and B dry to the weather. A is at 20 % after 16 days; B ...". */
export function dryingWords(answer: DryingAnswer, units: UnitSystem): string {
  const ways = new Map<Way, string[]>();
  for (const { option, inwardShare } of answer.rows)
    if (inwardShare !== null) ways.set(wayOf(inwardShare), [...(ways.get(wayOf(inwardShare)) ?? []), option]);
  const directions = [...ways].map(
    ([way, options]) => `${list(options)} ${options.length === 1 ? "dries" : "dry"} ${way}`,
  );
  const first = directions.length === 0 ? "" : `${directions.join("; ")}. `;
  return `${first}${say(answer.lead, units)}`;
}
