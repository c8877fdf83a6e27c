import { say, whichWayItDries, type DryingAnswer } from "../../../solver/index.ts";
import { numberOption } from "../args.ts";
import { casesWith, caseOptions, studyCommand } from "../study-command.ts";
import { UsageError } from "../usage-error.ts";

const answerText = (answer: DryingAnswer): string =>
  [
    say(answer.lead, "si"),
    ...answer.rows.map((row) => `  ${row.option} ${row.path}, ${row.layerName}: ${say(row.sentence, "si")}`),
    "",
  ].join("\n");

/** Which way does it dry? A layer is wetted on a date and followed until it is dry. */
export const drying = studyCommand({
  name: "drying",
  takes: "--layer ID [--water 1.0 | --moisture 25] [--date 10-01] [--option A] [--path bay]",
  summary: "wet a layer and follow how fast and which way it dries",
  options: {
    layer: { type: "string", value: "ID", hint: "the layer that gets wet" },
    water: { type: "string", value: "KG", hint: "water put in [kg/m2], 1.0 by default" },
    moisture: { type: "string", value: "P", hint: "or its moisture content at the start [% of dry mass]" },
    date: { type: "string", value: "MM-DD", hint: "when it gets wet, 10-01 by default" },
    ...caseOptions,
  },
  ask(input, given) {
    const layer = given.text("layer");
    if (layer === undefined) throw new UsageError("drying needs --layer ID. `wall check FILE` names the layers.");
    const moisture = numberOption(given, "moisture", 0, 400);
    const water = numberOption(given, "water", 0, 50);
    if (moisture !== undefined && water !== undefined) throw new UsageError("Give --water or --moisture, not both.");
    const date = given.text("date") ?? "10-01";
    if (!/^(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/.test(date))
      throw new UsageError(`--date is "${date}". Give month and day, like 10-01.`);
    const wetting = moisture === undefined ? { water_kgm2: water ?? 1 } : { moistureContent_percent: moisture };
    const cases = casesWith(input, given, layer);
    const years = given.text("years") === undefined ? 1 : input.project.run.years;
    return [{ study: whichWayItDries({ cases, layer, wetting, date, years }), text: answerText }];
  },
});
