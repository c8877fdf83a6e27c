import { say, type HowThickAnswer } from "../../../solver/index.ts";
import type { Units } from "../../state/index.ts";
import { Sentence, share } from "../../units/index.ts";
import { thicknessText } from "./curve-chart.ts";
import { unitSystem } from "./view-model.ts";

/** This run, the code table and the dew point by hand, and why they differ. */
export function ThreeAnswers({
  answer,
  zone,
  units,
}: {
  answer: HowThickAnswer;
  zone: string | undefined;
  units: Units;
}) {
  const { code, ratioRule, why } = answer.beside;
  const rows: readonly (readonly [string, string, string])[] = [
    ["This run", runThickness(answer, units), runWords(answer, units)],
    [
      "Code table",
      code === null ? "no row" : thicknessText(code.thickness_m, units),
      code === null ? "nothing is asked here" : `one row for all of zone ${(zone ?? "").replace(/[AB]$/, "")}`,
    ],
    [
      "Dew point by hand",
      ratioRule === null
        ? "—"
        : Number.isFinite(ratioRule.thickness_m)
          ? thicknessText(ratioRule.thickness_m, units)
          : "none does",
      "steady winter mean, no storage",
    ],
  ];
  // What the row of the hand rule says already needs no sentence.
  const reasons = why
    .map((phrase) => say(phrase, unitSystem(units)))
    .filter((text) => !text.startsWith("The dew-point rule by hand is"));
  return (
    <section className="side-part">
      <div className="head">
        <h2>Three answers, and why they differ</h2>
      </div>
      <table className="side-table answers-table">
        <tbody>
          {rows.map(([name, value, words], index) => (
            <tr key={name} className={index === 0 ? "strong-row" : ""}>
              <th scope="row">{name}</th>
              <td className="figure-cell">{value}</td>
              <td className="row-words secondary">{words}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {reasons.length > 0 && (
        <p className="why">
          <Sentence text={reasons.join(" ")} />
        </p>
      )}
    </section>
  );
}

/** What keeps every limit, where a thickness does; else what keeps those that decide. */
function runThickness({ needed_m, everyFinding }: HowThickAnswer, units: Units): string {
  const thickness = everyFinding.needed_m ?? needed_m;
  return thickness === null ? "none does" : thickness === 0 ? "none" : thicknessText(thickness, units);
}

/** What stands behind the run's thickness. */
function runWords({ needed_m, everyFinding, beside }: HowThickAnswer, units: Units): string {
  const every = everyFinding.needed_m;
  if (needed_m !== null && every !== null && needed_m < every - 1e-6)
    return `keeps every limit; what decides asks for ${needed_m === 0 ? "none" : thicknessText(needed_m, units)}`;
  const room = beside.ratioRule ? `, ${share(beside.ratioRule.winter.roomHumidity)} in winter` : "";
  return `hours of a year, storage${room}`;
}
