import {
  casesOf,
  demoProject,
  sideBySide,
  answerOf,
  howHumid,
  howThick,
  summarise,
  whatIf,
  whichSwaps,
  whichWayItDries,
  codeRowOf,
  type Case,
  type Member,
  type MemberSummary,
  type ReportInput,
} from "../../../solver/index.ts";
import { fakeRun } from "../studies/fake-run.ts";
import { flatResult } from "../studies/fake-result.ts";

/** The demo project with stand-in runs: wiring of the report, not physics. */
export function demoReportInput(units: "ip" | "si", cases: readonly Case[] = demoCases()): ReportInput {
  const run = ({ case: aCase }: Member): MemberSummary => summaryOf(aCase);
  const bays = cases.filter((each) => each.path === "bay");
  const [bare, insulated] = bays as [Case, Case];
  return {
    project: demoProject,
    options: demoProject.options.map((option) => {
      const paths = cases
        .filter((each) => each.option === option.id)
        .map((each) => ({ case: each, summary: summaryOf(each) }));
      return {
        id: option.id,
        name: option.name,
        shown: paths[0]!.case,
        summary: paths[0]!.summary,
        paths,
        map: flatResult(paths[0]!.case).map,
        wholeWall: { U_Wm2K: 0.25, method: "mean of both limits, 25 % framing" },
        breaks: [],
      };
    }),
    codeLines: [
      {
        option: "A",
        subject: "energy",
        says: "does not meet",
        edition: "IRC 2021",
        where: "Table N1102.1.3, zone 6",
        sentence: "Energy row not met: R-20 alone, the row asks for 20+5.",
      },
      {
        option: "A",
        subject: "vapour",
        says: "meets",
        edition: "IRC 2021",
        where: "Table R702.7(2)",
        sentence: "Vapour row met: Class II inside.",
      },
    ],
    answers: {
      sideBySide: answerOf(
        sideBySide({
          options: bays.map((each) => ({
            id: each.option,
            name: each.optionName,
            cases: [each],
            wholeWallU_Wm2K: null,
            price_perM2: null,
            carbon_kgCO2ePerM2: null,
          })),
        }),
        run,
      ),
      howThick: answerOf(
        howThick({
          case: insulated,
          layer: "ci",
          codeRow: codeRowOf("IRC 2021", "6A", "2x6"),
          winter: { outdoor_C: -6, room_C: 21, roomHumidity: 0.35 },
        }),
        run,
      ),
      drying: answerOf(
        whichWayItDries({ cases: bays, layer: "sheathing", wetting: { moistureContent_percent: 25 }, date: "10-01" }),
        ({ case: aCase }) =>
          summarise(aCase, flatResult(aCase, { moisture_percent: (hour) => 12 + 13 * Math.exp(-hour / 900) }), []),
      ),
      whatIf: answerOf(whatIf({ case: insulated }), run),
      humidity: answerOf(
        howHumid({
          case: insulated,
          air: {
            outdoor_C: [-8, -6, 0, 7, 14, 19, 22, 20, 15, 9, 3, -4],
            room_C: new Array<number>(12).fill(21),
            roomHumidity: new Array<number>(12).fill(0.35),
          },
        }),
        run,
      ),
      swaps: answerOf(whichSwaps(insulated), run),
    },
    winter: { month: 0, outdoor_C: -7, room_C: 21, roomHumidity: 0.35 },
    weather: { label: "Burlington, synthetic typical year", kind: "synthetic", sha256: "ab".repeat(32) },
    books: bays.map((each) => ({
      option: each.option,
      path: each.path,
      water: flatResult(bare).water,
      heat: flatResult(bare).heat,
      log: flatResult(bare).log,
    })),
    selfCheck: [{ what: "Temperature at any interface", difference: "0.02 K" }],
    versions: { program: "0.1.0", "project format": "1" },
    issued: null,
    units,
  };
}

export function demoCases(): readonly Case[] {
  const cases = casesOf(demoProject);
  if (!cases.ok) throw new Error(JSON.stringify(cases.issues));
  return cases.value;
}

const monthly = [11, 13, 15, 14, 12, 10, 8, 8, 8, 9, 9, 10] as const;
const summaryOf = (aCase: Case): MemberSummary => ({ ...fakeRun(aCase), woodMoisture_percent: [...monthly] });
