import type { HourlyLoads, WeatherYear } from "../../climate/index.ts";
import type { Finding } from "../assess/index.ts";
import {
  usualSettings,
  wallChecks,
  wholeWall,
  type Case,
  type CheckLine,
  type CodeSettings,
  type Project,
} from "../model/index.ts";
import type { RunResult } from "../run/index.ts";
import { amount, coldestSeason, monthlyAir, sayAmount, summarise, type UnitSystem } from "../studies/index.ts";
import type { CodeLine, ReportedOption, ReportInput } from "./report.ts";

/** One path that was run. */
export interface ReportedRun {
  readonly case: Case;
  readonly result: RunResult;
  readonly findings: readonly Finding[];
}

export interface ReportMaterials {
  readonly project: Project;
  /** Runs of every path that the report speaks of, in the order of the options. */
  readonly runs: readonly ReportedRun[];
  readonly weather: Pick<WeatherYear, "label" | "kind" | "sha256">;
  /** Loads of any of the runs: all options stand in the same weather and room. */
  readonly loads: HourlyLoads;
  readonly code?: CodeSettings;
  readonly answers?: ReportInput["answers"];
  readonly question?: string;
  readonly selfCheck?: ReportInput["selfCheck"];
  readonly versions: Readonly<Record<string, string>>;
  readonly issued?: string | null;
  readonly units: UnitSystem;
}

/**
 * Gathers a report's input from runs: drawn path of each option (a stud bay where there is one), whole-wall U, code lines, breaks of
 * the boundary, the coldest month. Throws a RangeError when no run is given.
 */
export function reportInputOf(materials: ReportMaterials): ReportInput {
  const { project, runs } = materials;
  if (runs.length === 0) throw new RangeError("runs must hold at least one finished run, got none");
  const options = project.options.filter((option) => runs.some((run) => run.case.option === option.id));
  const air = monthlyAir(materials.loads);
  const season = coldestSeason(air.outdoor_C);
  const month = season.months.reduce(
    (coldest, each) => (air.outdoor_C[each]! < air.outdoor_C[coldest]! ? each : coldest),
    season.months[0]!,
  );
  const winter = {
    outdoorMean_C: season.mean,
    indoor_C: air.room_C[month]!,
    relativeHumidity: air.roomHumidity[month]!,
  };
  const code: CodeSettings = { winter, ...(materials.code ?? usualSettings) };
  const checks = new Map(options.map((option) => [option.id, wallChecks(project, option, code)]));
  return {
    project,
    ...(materials.question === undefined ? {} : { question: materials.question }),
    options: options.map((option): ReportedOption => {
      const paths = runs
        .filter((run) => run.case.option === option.id)
        .map((run) => ({ ...run, summary: summarise(run.case, run.result, run.findings) }));
      const shown = paths.find((path) => path.case.pathKind === "studBay") ?? paths[0]!;
      const whole = wholeWall(option, project);
      return {
        id: option.id,
        name: option.name,
        shown: shown.case,
        summary: shown.summary,
        paths: paths.map(({ case: aCase, summary }) => ({ case: aCase, summary })),
        map: shown.result.map,
        wholeWall: {
          U_Wm2K: whole.U_Wm2K,
          method: `${whole.method}, ${Math.round(whole.framingShare * 100)} % framing`,
        },
        breaks: (checks.get(option.id) ?? [])
          .filter((line) => line.subject === "boundary" && line.holds === false)
          .map(inWords),
      };
    }),
    codeLines: options.flatMap((option) =>
      (checks.get(option.id) ?? [])
        .filter((line) => line.subject !== "boundary")
        .map((line) => codeLine(option.id, line, materials.units)),
    ),
    answers: materials.answers ?? {},
    winter: {
      month,
      outdoor_C: air.outdoor_C[month]!,
      room_C: air.room_C[month]!,
      roomHumidity: air.roomHumidity[month]!,
    },
    weather: materials.weather,
    books: runs.map(({ case: aCase, result }) => ({
      option: aCase.option,
      path: aCase.path,
      water: result.water,
      heat: result.heat,
      log: result.log,
    })),
    selfCheck: materials.selfCheck ?? null,
    versions: materials.versions,
    issued: materials.issued ?? null,
    units: materials.units,
  };
}

const verdictWords: Readonly<Record<CheckLine["verdict"], string>> = {
  meets: "meets",
  doesNotMeet: "does not meet",
  approvedDesign: "approved design needed",
  offTable: "off-table",
  notRequired: "not required",
  caution: "caution",
  holds: "holds",
  outOfScope: "out of scope",
  unknown: "not known",
};

const inWords = (line: CheckLine): string =>
  line.remedy === null ? line.statement : `${line.statement} ${line.remedy}`;

const codeLine = (option: string, line: CheckLine, units: UnitSystem): CodeLine => ({
  option,
  subject: line.subject,
  says: verdictWords[line.verdict],
  edition: line.edition ?? "",
  where: [line.section, line.row].filter((part) => part !== null).join(", "),
  sentence: inWords(line).replace(/([-−]?\d+(?:\.\d+)?) degC/g, (_, degrees: string) =>
    sayAmount(amount("temperature", Number(degrees.replace("−", "-"))), units),
  ),
});
