import {
  codeRowOf,
  howThick,
  say,
  stockThicknesses_m,
  usualSettings,
  wallFacts,
  type CodeRow,
  type HowThickAnswer,
} from "../../../solver/index.ts";
import { numberOption } from "../args.ts";
import { airOf, winterOf } from "../place-air.ts";
import type { ProjectInput } from "../project-input.ts";
import { casesWith, caseOptions, studyCommand } from "../study-command.ts";
import { UsageError } from "../usage-error.ts";

const mm = (metres: number): string => `${(metres * 1000).toFixed(1).replace(/\.0$/, "")} mm`;

function answerText(answer: HowThickAnswer): string {
  const rows = answer.points.map(({ thickness_m, stock, summary }) => {
    const broken = [
      ...new Set(summary.findings.filter((finding) => finding.holds === false).map((finding) => finding.id)),
    ];
    const moisture =
      summary.peakMoisture_percent === null ? "" : `wood peaks at ${summary.peakMoisture_percent.toFixed(1)} %`;
    const verdict = broken.length === 0 ? "every finding holds" : `not held: ${broken.join(", ")}`;
    return `  ${mm(thickness_m).padStart(9)}${stock ? " board" : "      "}  ${moisture.padEnd(22)}  ${verdict}`;
  });
  return [
    `${answer.option} ${answer.path}, ${answer.layerName}`,
    say(answer.lead, "ip"),
    say(answer.lead, "si"),
    ...rows,
    "",
  ].join("\n");
}

/** The row of the usual code edition for the zone and frame of an option; null where none applies. */
function codeRowFor({ project }: ProjectInput, optionId: string): CodeRow | null {
  const option = project.options.find(({ id }) => id === optionId)!;
  const zone = project.site?.climateZone;
  const { stud } = wallFacts(option, project);
  return zone === undefined || stud === "other" ? null : codeRowOf(usualSettings.edition, zone, stud);
}

/** How thick must a layer be for every finding to hold? */
export const howThickCommand = studyCommand({
  name: "how-thick",
  takes: "--layer ID [--option B] [--path bay] [--min 0] [--max 0.15]",
  summary: "find how thick a layer must be for every finding to hold",
  options: {
    layer: { type: "string", value: "ID", hint: "the layer whose thickness is asked for" },
    ...caseOptions,
    min: { type: "string", value: "M", hint: "leave out boards thinner than this [m]" },
    max: { type: "string", value: "M", hint: "look no further than this [m], 0.1524 by default" },
  },
  ask(input, given) {
    const layer = given.text("layer");
    if (layer === undefined) throw new UsageError("how-thick needs --layer ID. `wall check FILE` names the layers.");
    const least_m = numberOption(given, "min", 0, 1) ?? 0;
    const max_m = numberOption(given, "max", 0.001, 1);
    return casesWith(input, given, layer).map((aCase) => {
      const air = airOf(aCase, input.files);
      const material = aCase.layers.find((each) => each.id === layer)!.material;
      const stock_m = stockThicknesses_m(material).filter((board) => board >= least_m);
      const winter = air === null ? null : winterOf(air);
      const codeRow = codeRowFor(input, aCase.option);
      return {
        study: howThick({ case: aCase, layer, stock_m, winter, codeRow, ...(max_m === undefined ? {} : { max_m }) }),
        text: answerText,
      };
    });
  },
});
