import { rsiPerR } from "../../units.ts";
import { sectionsOf, zoneOf, type Edition } from "./edition.ts";
import { energyRow, wallROf, wordsOfWallR, type WallR } from "./energy-tables.ts";
import { rowWords, type Amendments, type CodeVerdict } from "./retarder-verdict.ts";

export interface EnergyQuestion {
  readonly edition: Edition;
  readonly zone: string;
  /** Nominal, inch-pound R. */
  readonly cavity_R: number;
  readonly ci_R: number;
  /** Whole-wall U by parallel paths [W/(m2 K)], or null to judge by R alone. */
  readonly U_Wm2K: number | null;
  readonly amendments?: Amendments;
}

/** Nominal values are printed to half an R; a rated 19.8 counts as R-20. */
const nominalSlack_R = 0.5;
/** U of the table has three digits. */
const uSlack_IP = 0.0005;

const meets = (wall: WallR, asked: WallR): boolean =>
  wall.cavity_R >= asked.cavity_R - nominalSlack_R && wall.ci_R >= asked.ci_R - nominalSlack_R / 2;

/**
 * Does the wall meet the wood-frame row of the energy chapter, by R or by U? Says nothing about moisture: a wall may pass here
 * and fail the vapour-retarder tables, and the other way round.
 */
export function energyVerdict(question: EnergyQuestion): CodeVerdict {
  const { edition } = question;
  const where = sectionsOf(edition);
  const zone = zoneOf(question.zone);
  const row = zone && energyRow(edition, zone);
  const base = {
    section: where.wallR,
    row: row ? rowWords(row.words) : question.zone,
    limit_R: null,
    measured_R: null,
    amended: false,
    flag: row?.flag ?? "",
  };
  if (!zone || !row) return { ...base, verdict: "offTable", reason: `The table has no row for "${question.zone}".` };
  const own = question.amendments?.wallR?.[zone.text] ?? question.amendments?.wallR?.[String(zone.number)];
  const options = own ? own.map(wallROf) : row.options;
  const limitU =
    question.amendments?.wallU?.[zone.text] ?? question.amendments?.wallU?.[String(zone.number)] ?? row.U_IP;
  const amended = own !== undefined || limitU !== row.U_IP;
  const wall = { cavity_R: question.cavity_R, ci_R: question.ci_R };
  const asked = options.map(wordsOfWallR).join(" or ");
  const has = wordsOfWallR({ cavity_R: Number(wall.cavity_R.toFixed(1)), ci_R: Number(wall.ci_R.toFixed(1)) });
  const met = options.find((option) => meets(wall, option));
  const note = row.note ? ` ${row.note}` : "";
  if (met) return { ...base, verdict: "accept", reason: `R-${has} meets R-${wordsOfWallR(met)}.${note}`, amended };
  const U_IP = question.U_Wm2K === null ? null : question.U_Wm2K * rsiPerR;
  if (U_IP !== null && U_IP <= limitU + uSlack_IP)
    return {
      ...base,
      section: where.wallU,
      verdict: "accept",
      reason: `R-${has} is in none of the rows (${asked}), but the whole wall's U of ${U_IP.toFixed(3)} meets ${limitU.toFixed(3)}.${note}`,
      amended,
    };
  return {
    ...base,
    verdict: "reject",
    reason: `The table asks R-${asked}; the wall has R-${has}${U_IP === null ? "" : `, U ${U_IP.toFixed(3)} against ${limitU.toFixed(3)}`}.${note}`,
    amended,
  };
}
