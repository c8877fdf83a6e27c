import { isIBC, sectionsOf, yearOf, zoneOf, type Edition, type Zone } from "./edition.ts";
import {
  class3Row,
  noRetarderInboard_R,
  noRetarderRows,
  permission,
  responsiveWetCup_perm,
  withFoamRows,
  type Backing,
  type RetarderClass,
} from "./retarder-tables.ts";

/** What the tables ask about a wall; R in h ft2 degF/Btu, permeance in US perm. */
export interface RetarderQuestion {
  readonly edition: Edition;
  readonly zone: string;
  readonly stud: "2x4" | "2x6" | "other";
  readonly cavity_R: number;
  /** Everything inboard of the continuous insulation; the cavity alone when absent. */
  readonly inboard_R?: number;
  readonly ci_R: number;
  readonly ciKind: "foam" | "insulatedSiding" | "other" | "none";
  /** Class of the continuous insulation by dry cup. */
  readonly ciClass: RetarderClass;
  /** Spray foam of at most 1.5 perm against the inside of the sheathing. */
  readonly sprayFoam_R: number;
  readonly backing: Backing;
  readonly ventedCladding: boolean;
  readonly retarder: RetarderClass;
  readonly wetCup_perm: number | null;
  /** A layer of 1 perm or less stands on the wall inboard of the continuous insulation, or is it. */
  readonly vapourControlOutside?: boolean;
  readonly amendments?: Amendments;
}

/** Local amendments: values that replace those of the book. */
export interface Amendments {
  /** Least continuous insulation for Class III by zone text ("6A") or number ("6"). */
  readonly class3?: Readonly<Record<string, { readonly over2x4: number; readonly over2x6: number }>>;
  readonly withFoam?: Readonly<Record<string, { readonly over2x4: number; readonly over2x6: number }>>;
  /** Wood-frame wall R options, "20+5". */
  readonly wallR?: Readonly<Record<string, readonly string[]>>;
  readonly wallU?: Readonly<Record<string, number>>;
  readonly ach50?: Readonly<Record<string, number>>;
}

export interface CodeVerdict {
  readonly verdict: "accept" | "reject" | "approvedDesign" | "offTable" | "notRequired";
  readonly reason: string;
  readonly section: string;
  readonly row: string;
  readonly limit_R: number | null;
  readonly measured_R: number | null;
  readonly amended: boolean;
  readonly flag: string;
}

const seen = "SEEN in adopted texts";
const recalled = "MEMORY: taken to read as the neighbouring edition that was read";

/** "zone 6", "zones 4, 5, 6". */
export const rowWords = (words: string): string =>
  `${/,| and | to /.test(words) && !words.startsWith("Marine") ? "zones" : "zone"} ${words}`;
const r = (value: number): string => `R-${Number(value.toFixed(2))}`;

/** Does this wall's inside retarder stand in the tables? One answer with its section and row. */
export function retarderVerdict(question: RetarderQuestion): CodeVerdict {
  const { edition, retarder, stud } = question;
  const zone = zoneOf(question.zone);
  const where = sectionsOf(edition);
  const flag = edition === "IBC 2018" || edition === "IRC 2015" ? recalled : seen;
  const answer = (verdict: CodeVerdict["verdict"], reason: string, more: Partial<CodeVerdict> = {}): CodeVerdict => ({
    verdict,
    reason,
    section: where.permitted,
    row: zone ? `zone ${zone.text}` : question.zone,
    limit_R: null,
    measured_R: null,
    amended: false,
    flag,
    ...more,
  });
  if (!zone) return answer("offTable", `"${question.zone}" is no climate zone of the code.`);
  if (retarder === "none") return withoutRetarder(question, zone, answer);
  const may = permission(edition, zone, retarder);
  const responsive =
    retarder !== "III" &&
    question.wetCup_perm !== null &&
    (yearOf(edition) >= 2024
      ? question.wetCup_perm >= responsiveWetCup_perm
      : question.wetCup_perm > responsiveWetCup_perm);
  if (retarder === "III") {
    if (may !== "byTable")
      return answer(
        "accept",
        may === "noRequirement"
          ? "The edition asks for no vapour retarder in this zone and prohibits none."
          : "Class III is permitted in this zone without condition.",
      );
    return class3Verdict(question, zone, answer);
  }
  if (may === "notPermitted") {
    if (!(yearOf(edition) >= 2021 && responsive))
      return answer("reject", `Class ${retarder} is not permitted inside a frame wall in zone ${zone.text}.`);
    return answer(
      "accept",
      `Above ${responsiveWetCup_perm} perm by wet cup, a Class ${retarder} retarder is allowed in every zone.`,
      isIBC(edition) ? { flag: "MEMORY for this book; SEEN for the IRC of the same year" } : {},
    );
  }
  if (may === "noRequirement")
    return answer("accept", "The edition asks for no vapour retarder in this zone and prohibits none.");
  if (
    (edition === "IBC 2015" || edition === "IBC 2018") &&
    question.ciKind === "foam" &&
    (question.ciClass === "I" || question.ciClass === "II")
  ) {
    const row = class3Row(edition, zone);
    const least = row && (stud === "2x4" ? row.over2x4 : row.over2x6);
    if (least !== null && least !== undefined && question.ci_R >= least)
      return answer(
        "reject",
        "Where foam sheathing under 1 perm is used outside under this table, only Class III may stand inside.",
        { section: where.class3, row: rowWords(row!.words), limit_R: least, measured_R: question.ci_R },
      );
  }
  if (yearOf(edition) < 2021) return answer("accept", `Class ${retarder} meets the requirement in zone ${zone.text}.`);
  const foamOutside = question.ciKind === "foam" || (yearOf(edition) >= 2024 && question.ciKind === "insulatedSiding");
  const asksTable4 = foamOutside && (retarder === "II" || yearOf(edition) >= 2024);
  if (asksTable4) {
    const refused = foamVerdict(question, zone, responsive, answer);
    if (refused) return refused;
  }
  if (retarder === "I" && question.ciClass === "I" && !(yearOf(edition) >= 2024 && responsive))
    return answer("approvedDesign", "Class I inside together with Class I outside needs an approved design.", {
      row: `zone ${zone.text}, note b`,
    });
  if (asksTable4) {
    const row = withFoamRows.find((one) => one.zones.includes(zone.number));
    return answer(
      "accept",
      `${r(question.ci_R)} of foam outside meets the table, and the retarder opens to ${question.wetCup_perm === null ? "" : Number(question.wetCup_perm.toPrecision(2))} perm by wet cup.`,
      {
        section: where.withFoam,
        row: row ? rowWords(row.words) : `zone ${zone.text}`,
        limit_R: row ? (stud === "2x4" ? row.over2x4 : row.over2x6) : null,
        measured_R: question.ci_R,
      },
    );
  }
  return answer("accept", `Class ${retarder} is permitted in zone ${zone.text}.`);
}

type Answer = (verdict: CodeVerdict["verdict"], reason: string, more?: Partial<CodeVerdict>) => CodeVerdict;

/** Refusal under the table for foam outside a Class II (2024: I or II) retarder; null where it passes. */
function foamVerdict(question: RetarderQuestion, zone: Zone, responsive: boolean, answer: Answer): CodeVerdict | null {
  const { edition, stud, retarder } = question;
  const section = sectionsOf(edition).withFoam;
  const row = withFoamRows.find((one) => one.zones.includes(zone.number));
  if (!row) return null;
  const place = { section, row: rowWords(row.words) };
  if (stud === "other") return answer("offTable", "The table knows 2x4 and 2x6 walls only.", place);
  const amended = question.amendments?.withFoam?.[zone.text] ?? question.amendments?.withFoam?.[String(zone.number)];
  const least = (amended ?? row)[stud === "2x4" ? "over2x4" : "over2x6"];
  const more = { ...place, limit_R: least, measured_R: question.ci_R, amended: amended !== undefined };
  if (question.ci_R < least)
    return answer(
      "reject",
      `With foam outside, the table asks ${r(least)} over ${stud}; the wall has ${r(question.ci_R)}.`,
      more,
    );
  if (!responsive)
    return answer(
      "reject",
      yearOf(edition) >= 2024
        ? `With foam outside, a Class ${retarder} retarder must be responsive: 1 perm or more by wet cup.`
        : "With foam outside, a Class II retarder must exceed 1 perm by wet cup.",
      more,
    );
  return null;
}

const backingWords: Readonly<Record<Backing, string>> = {
  woodPanel: "wood panels",
  fibreboard: "fibreboard",
  gypsum: "gypsum sheathing",
  other: "this sheathing",
  none: "no sheathing",
};

function class3Verdict(question: RetarderQuestion, zone: Zone, answer: Answer): CodeVerdict {
  const { edition, stud } = question;
  const row = class3Row(edition, zone);
  if (!row) return answer("offTable", `The table has no row for zone ${zone.text}.`);
  const place = { section: sectionsOf(edition).class3, row: rowWords(row.words) };
  if (question.ventedCladding && row.ventedOver.includes(question.backing))
    return answer(
      "accept",
      `Vented cladding over ${backingWords[question.backing]} is listed for zone ${row.words}.`,
      place,
    );
  if (stud === "other") return answer("offTable", "The table knows 2x4 and 2x6 walls only.", place);
  const amended = question.amendments?.class3?.[zone.text] ?? question.amendments?.class3?.[String(zone.number)];
  const least = (amended ?? row)[stud === "2x4" ? "over2x4" : "over2x6"];
  const together =
    yearOf(edition) >= 2021 ? question.ci_R + question.sprayFoam_R : Math.max(question.ci_R, question.sprayFoam_R);
  const more = { ...place, limit_R: least, measured_R: together, amended: amended !== undefined };
  const made =
    question.sprayFoam_R > 0
      ? ` (${r(question.ci_R)} outside and ${r(question.sprayFoam_R)} of closed-cell foam inside the sheathing)`
      : "";
  if (together >= least - 1e-9) return answer("accept", `${r(together)}${made} over ${stud} meets ${r(least)}.`, more);
  const vented =
    question.ventedCladding && row.ventedOver.length > 0
      ? ` Vented cladding over ${backingWords[question.backing]} is not listed for zone ${row.words}.`
      : "";
  return answer(
    "reject",
    `Class III needs ${r(least)} of continuous insulation over ${stud}; the wall has ${r(together)}${made}.${vented}`,
    more,
  );
}

function withoutRetarder(question: RetarderQuestion, zone: Zone, answer: Answer): CodeVerdict {
  const { edition } = question;
  const year = yearOf(edition);
  const asked = year >= 2021 ? zone.number >= 4 : zone.marine4 || zone.number >= 5;
  if (!asked) return answer("accept", `No vapour retarder is required in zone ${zone.text}.`);
  if (year < 2024)
    return answer(
      "reject",
      `Zone ${zone.text} asks for a vapour retarder inside, and the wall has none of Class I to III.`,
    );
  const least = noRetarderRows[zone.number]!;
  const more = {
    section: sectionsOf(edition).noRetarder,
    row: `zone ${zone.number}`,
    limit_R: least,
    measured_R: question.ci_R,
  };
  if (question.ci_R < least)
    return answer(
      "reject",
      `Without a retarder the table asks ${r(least)} outside; the wall has ${r(question.ci_R)}.`,
      more,
    );
  const inboard = question.inboard_R ?? question.cavity_R;
  if (inboard > noRetarderInboard_R)
    return answer(
      "reject",
      `Without a retarder everything inboard of the continuous insulation may add up to ${r(noRetarderInboard_R)}; the wall has ${r(inboard)}.`,
      more,
    );
  const control = question.vapourControlOutside ?? (question.ciClass === "I" || question.ciClass === "II");
  if (!control)
    return answer(
      "reject",
      "Without a retarder a layer of 1 perm or less must stand inboard of the continuous insulation, or be it.",
      more,
    );
  return answer(
    "accept",
    `${r(question.ci_R)} outside meets ${r(least)}, at most ${r(noRetarderInboard_R)} stands inboard, and the vapour control is at the continuous insulation.`,
    more,
  );
}
