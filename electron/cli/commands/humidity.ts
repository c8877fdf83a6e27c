import { howHumid, say, type HumidityAnswer } from "../../../solver/index.ts";
import { airOf } from "../place-air.ts";
import { casesWith, caseOptions, studyCommand } from "../study-command.ts";

const months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

function answerText(answer: HumidityAnswer): string {
  const owner = answer.ownersLine?.map((humidity, month) => `${months[month]} ${Math.round(humidity * 100)} %`);
  return [
    `${answer.option} ${answer.path}`,
    say(answer.lead, "si"),
    ...(owner === undefined ? [] : [`  For the owner, at most: ${owner.join(", ")}`]),
    "",
  ].join("\n");
}

/** How humid may it be inside in winter? */
export const humidity = studyCommand({
  name: "humidity",
  takes: "[--option A] [--path bay]",
  summary: "find the highest winter humidity that keeps every finding",
  options: caseOptions,
  ask: (input, given) =>
    casesWith(input, given, undefined).map((aCase) => ({
      study: howHumid({ case: aCase, air: airOf(aCase, input.files) }),
      text: answerText,
    })),
});
