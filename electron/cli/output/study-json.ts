import { say, type Amount, type Phrase } from "../../../solver/index.ts";
import { cautions } from "./cautions.ts";
import type { WeatherFacts } from "./weather-json.ts";

const isAmount = (part: unknown): part is Amount =>
  typeof part === "object" && part !== null && "kind" in part && "value" in part && Object.keys(part).length === 2;

const isPhrase = (value: unknown): value is Phrase =>
  Array.isArray(value) &&
  value.length > 0 &&
  value.every((part) => typeof part === "string" || isAmount(part)) &&
  value.some((part) => typeof part === "string" && part.includes(" "));

/** Fields that hold sentences made of words and amounts. */
const sentences = new Set(["lead", "sentence"]);

/** The answer of a study as one JSON document, its sentences written out in SI. */
export function studyJson(
  question: string,
  project: string,
  weather: WeatherFacts | null,
  answers: readonly unknown[],
): string {
  const document = { format: "wallyear-study", formatVersion: 1, question, project, weather, answers, cautions };
  return JSON.stringify(
    document,
    (key, value: unknown) => {
      if (sentences.has(key) && isPhrase(value)) return say(value, "si");
      if (key === "why" && Array.isArray(value))
        return value.map((each) => (isPhrase(each) ? say(each, "si") : (each as unknown)));
      return value;
    },
    2,
  );
}
