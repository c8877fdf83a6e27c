import { rsiPerR } from "../../units.ts";
import { airTightnessLimit, canadianRow } from "../codes/energy-tables.ts";
import { energyVerdict } from "../codes/energy-verdict.ts";
import { sectionsOf, zoneOf } from "../codes/edition.ts";
import { retarderVerdict, type CodeVerdict, type RetarderQuestion } from "../codes/retarder-verdict.ts";
import type { Option, Project } from "../project.ts";
import { wholeWall } from "../thermal/whole-wall.ts";
import { inSentence } from "../words.ts";
import { checkLine, type CheckLine, type CheckVerdict, type CodeSettings } from "./check-line.ts";
import { foamLine, zone8Line } from "./foam-lines.ts";
import type { WallFacts } from "./wall-facts.ts";

const verdicts: Readonly<Record<CodeVerdict["verdict"], { verdict: CheckVerdict; holds: boolean | null }>> = {
  accept: { verdict: "meets", holds: true },
  reject: { verdict: "doesNotMeet", holds: false },
  approvedDesign: { verdict: "approvedDesign", holds: null },
  offTable: { verdict: "offTable", holds: null },
  notRequired: { verdict: "notRequired", holds: true },
};

const R = (value: number): string => `R-${Number(value.toFixed(2))}`;
const perm = (value: number): string => `${value < 0.1 ? value.toFixed(3) : Number(value.toPrecision(2))} perm`;
const judge = "The county table of the code and the local official rule; this line only reads the table.";

/** The question the retarder tables ask of these facts. */
export function questionOf(facts: WallFacts, zone: string, settings: CodeSettings): RetarderQuestion {
  return {
    edition: settings.edition,
    zone,
    stud: facts.stud,
    cavity_R: facts.cavity_R,
    inboard_R: facts.inboard_R,
    ci_R: facts.ci_R,
    ciKind: facts.ciKind,
    ciClass: facts.ciClass,
    sprayFoam_R: facts.sprayFoam_R,
    backing: facts.backing,
    ventedCladding: facts.ventedCladding,
    retarder: facts.retarder?.class ?? "none",
    wetCup_perm: facts.retarder?.wetCup_perm ?? null,
    vapourControlOutside: facts.vapourControlOutside,
    ...(settings.amendments ? { amendments: settings.amendments } : {}),
  };
}

function vapourLine(facts: WallFacts, zone: string, settings: CodeSettings): CheckLine {
  const { edition } = settings;
  const base = {
    id: "vapourRetarder",
    subject: "vapour",
    path: facts.path.id,
    edition,
    source: `${edition}, ${sectionsOf(edition).permitted}`,
  } as const;
  if (!facts.framed)
    return checkLine({
      ...base,
      verdict: "offTable",
      holds: null,
      statement: "Vapour: off-table. The tables are written for frame walls; this wall is not framed.",
      remedy: "Show the run and ask the local official.",
      section: sectionsOf(edition).permitted,
      flag: "SEEN",
    });
  const answer = retarderVerdict(questionOf(facts, zone, settings));
  const { verdict, holds } = verdicts[answer.verdict];
  const inside = facts.retarder
    ? `${inSentence(facts.retarder.name)} inside, Class ${facts.retarder.class} at ${perm(facts.retarder.dryCup_perm)} by dry cup`
    : "no retarder of Class I to III inside";
  const head = {
    accept: "Vapour: meets the table",
    reject: "Vapour: does not meet the table",
    approvedDesign: "Vapour: an approved design is needed",
    offTable: "Vapour: off-table",
    notRequired: "Vapour: nothing is required",
  }[answer.verdict];
  return checkLine({
    ...base,
    verdict,
    holds,
    statement: `${head} (${edition}, ${answer.section}, ${answer.row}${answer.amended ? ", locally amended" : ""}): ${inside}. ${answer.reason}`,
    remedy:
      answer.verdict === "reject"
        ? vapourRemedy(facts, zone, settings, answer)
        : answer.verdict === "offTable"
          ? "Show the run and ask the local official for an approved design."
          : null,
    section: answer.section,
    row: answer.row,
    measured: answer.measured_R,
    limit: answer.limit_R,
    unit: answer.limit_R === null ? "" : "h ft2 degF/Btu",
    amended: answer.amended,
    source: `${edition}, ${answer.section}. ${judge}`,
    flag: answer.flag,
  });
}

/** What would turn a refusal: more insulation outside, or a retarder of another class; each is tried against the same tables. */
function vapourRemedy(facts: WallFacts, zone: string, settings: CodeSettings, answer: CodeVerdict): string {
  const ways: string[] = [];
  if (answer.limit_R !== null && answer.measured_R !== null && answer.measured_R < answer.limit_R)
    ways.push(`raise the continuous insulation to ${R(answer.limit_R)}`);
  const question = questionOf(facts, zone, settings);
  const tries = [
    { retarder: "II", wetCup_perm: 2, words: "use a responsive Class II retarder" },
    { retarder: "II", wetCup_perm: 0.9, words: "use a Class II retarder" },
    { retarder: "III", wetCup_perm: 10, words: "use a Class III retarder, latex paint" },
  ] as const;
  for (const { retarder, wetCup_perm, words } of tries)
    if (
      retarder !== question.retarder &&
      retarderVerdict({ ...question, retarder, wetCup_perm }).verdict === "accept" &&
      !ways.some((way) => way.includes("Class II retarder") && words.includes("Class II "))
    )
      ways.push(words);
  const [firstWay, ...others] = ways;
  return firstWay !== undefined
    ? `${firstWay[0]!.toUpperCase()}${[firstWay.slice(1), ...others].join(", or ")}.`
    : "Ask the local official for an approved design.";
}

function energyLine(
  facts: WallFacts,
  option: Option,
  project: Project,
  zone: string,
  settings: CodeSettings,
): CheckLine {
  const { edition } = settings;
  const where = sectionsOf(edition);
  const base = { id: "energy", subject: "energy", edition, source: `${edition}, ${where.wallR}. ${judge}` } as const;
  if (!facts.framed)
    return checkLine({
      ...base,
      verdict: "offTable",
      holds: null,
      statement: "Energy: off-table. The row is for wood-frame walls; masonry has its own.",
      section: where.wallR,
      flag: "SEEN",
    });
  const wall = wholeWall(option, project);
  const answer = energyVerdict({
    edition,
    zone,
    cavity_R: facts.cavity_R,
    ci_R: facts.ci_R,
    U_Wm2K: wall.parallelPath.U_Wm2K,
    ...(settings.amendments ? { amendments: settings.amendments } : {}),
  });
  const { verdict, holds } = verdicts[answer.verdict];
  const head =
    holds === true
      ? "Energy: meets the table"
      : holds === false
        ? "Energy: does not meet the table"
        : "Energy: off-table";
  return checkLine({
    ...base,
    verdict,
    holds,
    statement: `${head} (${edition}, ${answer.section}, ${answer.row}${answer.amended ? ", locally amended" : ""}): ${answer.reason} Whole wall U ${(wall.parallelPath.U_Wm2K * rsiPerR).toFixed(3)} by parallel paths with ${(100 * wall.framingShare).toFixed(0)} % framing.`,
    remedy:
      holds === false
        ? "Add continuous insulation or cavity insulation up to one of the rows; the vapour tables are another question."
        : null,
    section: answer.section,
    row: answer.row,
    measured: wall.parallelPath.U_Wm2K,
    unit: "W/(m2 K)",
    amended: answer.amended,
    flag: answer.flag,
  });
}

function airLine(project: Project, zone: string, settings: CodeSettings): CheckLine[] {
  const at = zoneOf(zone);
  if (!project.air || !at) return [];
  const { edition } = settings;
  const row = airTightnessLimit(edition, at);
  const limit = settings.amendments?.ach50?.[at.text] ?? settings.amendments?.ach50?.[String(at.number)] ?? row.ach50;
  const holds = project.air.ach50 <= limit;
  return [
    checkLine({
      id: "airTightness",
      subject: "energy",
      verdict: holds ? "meets" : "doesNotMeet",
      holds,
      statement: `Air tightness: ${project.air.ach50} air changes per hour at 50 Pa against ${limit} (${edition}, ${sectionsOf(edition).airTightness}, zone ${at.text}).`,
      remedy: holds ? null : "Find the leaks at rim, plates and openings and test again.",
      edition,
      section: sectionsOf(edition).airTightness,
      row: `zone ${at.text}`,
      measured: project.air.ach50,
      limit,
      unit: "1/h",
      amended: limit !== row.ach50,
      source: `${edition}, ${sectionsOf(edition).airTightness}. ${judge}`,
      flag: row.flag,
    }),
  ];
}

function canadianLine(option: Option, project: Project, settings: CodeSettings): CheckLine[] {
  if (settings.canadianHeatingDegreeDays === undefined) return [];
  const row = canadianRow(settings.canadianHeatingDegreeDays);
  const wall = wholeWall(option, project);
  const effective = wall.isothermalPlanes?.R_m2KW ?? wall.parallelPath.R_m2KW;
  const holds = effective >= row.rsi_m2KW;
  return [
    checkLine({
      id: "canadianEffectiveR",
      subject: "energy",
      verdict: holds ? "meets" : "doesNotMeet",
      holds,
      statement: `Effective resistance ${effective.toFixed(2)} m2 K/W against ${row.rsi_m2KW} for zone ${row.zone} (${settings.canadianHeatingDegreeDays.toFixed(0)} degree-days), wall without heat-recovery ventilation.`,
      edition: "NBC",
      section: "Table 9.36.2.6.-A",
      row: `zone ${row.zone}`,
      measured: effective,
      limit: row.rsi_m2KW,
      unit: "m2 K/W",
      source: "National Building Code of Canada, Table 9.36.2.6.-A, as restated",
      flag: "SEEN second-hand",
    }),
  ];
}

/** The lines of the code tables: vapour and energy each on its own, then what belongs to them. */
export function codeLines(
  facts: WallFacts,
  option: Option,
  project: Project,
  settings: CodeSettings,
): readonly CheckLine[] {
  const zone = settings.zone ?? project.site?.climateZone;
  const canadian = canadianLine(option, project, settings);
  if (zone === undefined)
    return [
      checkLine({
        id: "zone",
        subject: "vapour",
        verdict: "unknown",
        holds: null,
        statement: "No climate zone is given, so the code tables cannot be read.",
        remedy: "Give the zone of the county table, like 6A.",
        source: "climate zone table of the code",
        flag: "SEEN",
      }),
      ...canadian,
    ];
  return [
    vapourLine(facts, zone, settings),
    energyLine(facts, option, project, zone, settings),
    ...airLine(project, zone, settings),
    ...foamLine(facts, zone, settings),
    ...zone8Line(facts, zone, settings),
    ...canadian,
  ];
}
