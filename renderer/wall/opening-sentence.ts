import { nameOfPath, type Option } from "../../solver/index.ts";
import { roleTitles, type ControlRun } from "./control-roles.ts";

const counts = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];
const count = (number: number): string => counts[number] ?? String(number);

const list = (words: readonly string[], join = "and"): string =>
  words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} ${join} ${words.at(-1)!}`;

const titleOf = (run: ControlRun): string => roleTitles[run.role].toLowerCase();

/** Places where lines stop, and the lines that stop there. */
function stops(option: Option, broken: readonly ControlRun[]): ReadonlyMap<string, readonly string[]> {
  const at = new Map<string, string[]>();
  for (const run of broken) {
    if (run.layerIds.every((id) => id === null)) continue;
    const paths = option.paths.filter((_, index) => run.brokenBefore[index]);
    const places = list(paths.map((path) => nameOfPath(path).toLowerCase()));
    at.set(places, [...(at.get(places) ?? []), titleOf(run)]);
  }
  return at;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What the boundary does, in a sentence or two: which lines run unbroken, which stop and where. */
export function openingSentence(option: Option, runs: readonly ControlRun[]): string {
  const through =
    option.paths.length === 1
      ? "through the one path drawn"
      : option.paths.length === 2
        ? "through both paths"
        : `through all ${count(option.paths.length)} paths`;
  const whole = runs
    .filter((run) => run.breaks === 0 && run.layerIds.some((id) => id !== null) && !run.bridgedBefore.includes(true))
    .map(titleOf);
  const broken = runs.filter((run) => run.breaks > 0);
  const sentences = [];
  if (whole.length > 0) {
    const verb = whole.length === 1 ? "runs" : "run";
    sentences.push(`${capital(list(whole))} control ${verb} unbroken ${through}.`);
  }
  const absent = broken.filter((run) => run.layerIds.every((id) => id === null)).map(titleOf);
  if (absent.length > 0) sentences.push(`No layer is the ${list(absent, "or")} control.`);
  for (const [places, titles] of stops(option, broken)) {
    sentences.push(`${capital(list(titles))} control ${titles.length === 1 ? "stops" : "stop"} at the ${places}.`);
  }
  for (const run of runs) {
    const bridged = option.paths.filter((_, index) => run.bridgedBefore[index] && !run.brokenBefore[index]);
    if (bridged.length > 0) {
      sentences.push(
        `Wood crosses the insulation at the ${list(bridged.map((path) => nameOfPath(path).toLowerCase()))}.`,
      );
    }
  }
  return sentences.join(" ");
}
