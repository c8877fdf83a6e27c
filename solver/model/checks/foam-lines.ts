import { sectionsOf, zoneOf } from "../codes/edition.ts";
import { class3Row } from "../codes/retarder-tables.ts";
import { rowWords } from "../codes/retarder-verdict.ts";
import { checkLine, type CheckLine, type CodeSettings } from "./check-line.ts";
import type { WallFacts } from "./wall-facts.ts";

const R = (value: number): string => `R-${Number(value.toFixed(2))}`;

/** Foam outside that stays below the Class III row: legal with a tighter retarder, and short of keeping the sheathing warm. */
export function foamLine(facts: WallFacts, zone: string, settings: CodeSettings): CheckLine[] {
  const at = zoneOf(zone);
  const row = at && class3Row(settings.edition, at);
  if (!row || !facts.framed || facts.ciKind !== "foam" || facts.stud === "other") return [];
  const own = settings.amendments?.class3?.[at.text] ?? settings.amendments?.class3?.[String(at.number)];
  const limit = (own ?? row)[facts.stud === "2x4" ? "over2x4" : "over2x6"];
  const measured = facts.ci_R + facts.sprayFoam_R;
  if (measured >= limit - 0.005) return [];
  return [
    checkLine({
      id: "foamBelowTable",
      subject: "moisture",
      path: facts.path.id,
      verdict: "caution",
      holds: false,
      statement: `The foam outside is ${R(measured)}; the table that keeps the sheathing warm asks ${R(limit)} over ${facts.stud} in zone ${row.words}. With a tighter retarder inside that can be legal, but foam that is too thin slows outward drying more than it warms the sheathing.`,
      remedy: `Raise it to ${R(limit)}, or use a board that is open to vapour, and run the wall.`,
      edition: settings.edition,
      section: sectionsOf(settings.edition).class3,
      row: rowWords(row.words),
      measured,
      limit,
      unit: "h ft2 degF/Btu",
      amended: own !== undefined,
      source: `${settings.edition}, ${sectionsOf(settings.edition).class3}`,
      flag: "SEEN",
    }),
  ];
}

/** What the row of zone 8 presumes, before anybody relies on it. */
export function zone8Line(facts: WallFacts, zone: string, settings: CodeSettings): CheckLine[] {
  const at = zoneOf(zone);
  if (!at || at.number < 7 || !facts.framed) return [];
  const older = Number(settings.edition.slice(4)) < 2021;
  if (at.number === 7 && !older) return [];
  const statement = older
    ? "To 2018 zones 7 and 8 share one row, R-10 over 2x4 and R-15 over 2x6. It presumes drier indoor air in zone 8: at 35 % RH the sheathing there gets wet behind R-15. From 2021 zone 8 has a row of its own, R-12.5 and R-20."
    : "From 2021 zone 8 has a row of its own, R-12.5 over 2x4 and R-20 over 2x6. It still presumes dry indoor air: field walls there stayed dry with about 65 % of the insulation outside.";
  return [
    checkLine({
      id: "zone8Row",
      subject: "vapour",
      verdict: "caution",
      holds: null,
      statement,
      remedy: "Run the wall with the indoor humidity you expect before relying on the row.",
      edition: settings.edition,
      section: sectionsOf(settings.edition).class3,
      row: `zone ${at.text}`,
      source: `${settings.edition}, ${sectionsOf(settings.edition).class3}; field walls of a zone 8 test house`,
      flag: "SEEN",
    }),
  ];
}
