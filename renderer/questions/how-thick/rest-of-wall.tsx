import { shareInward, wholeWall, type MemberSummary, type Project } from "../../../solver/index.ts";
import { monthNames } from "../../plots/calendar.ts";
import { signed, temperatureStep } from "../../plots/quantities.ts";
import { wallThickness_m } from "../../plots/wall-depths.ts";
import type { Units } from "../../state/index.ts";
import { lengthText, resistanceText, Sentence, share, temperatureText } from "../../units/index.ts";
import type { Case } from "../../../solver/index.ts";

interface WallWith {
  readonly project: Project;
  readonly case: Case;
  readonly summary: MemberSummary | null;
}

interface RestOfWallProps {
  readonly boardWords: string;
  readonly option: string;
  readonly board: WallWith;
  readonly drawn: WallWith;
  readonly units: Units;
}

const wholeR = ({ project }: WallWith, option: string): number | null => {
  const found = project.options.find(({ id }) => id === option);
  return found ? wholeWall(found, project).R_m2KW : null;
};
const inward = ({ summary }: WallWith): number | null =>
  summary?.sheathingBudget ? shareInward(summary.sheathingBudget) : null;
const dash = "—";

/** What the board in view does to the wall besides what was asked, against the option as drawn. */
export function RestOfWall({ boardWords, option, board, drawn, units }: RestOfWallProps) {
  const [thick, thin] = [wallThickness_m(board.case.layers), wallThickness_m(drawn.case.layers)];
  const [r, r0] = [wholeR(board, option), wholeR(drawn, option)];
  const face = board.summary?.coldestMonth;
  const face0 = drawn.summary?.coldestMonth;
  const [water, water0] = [inward(board), inward(drawn)];
  const heat = board.summary?.heatFromRoom_MJm2 ?? null;
  const heat0 = drawn.summary?.heatFromRoom_MJm2 ?? null;
  const rows: readonly (readonly [string, string, string])[] = [
    ["Thickness", lengthText(thick, units === "both" ? "ip" : units), stepLength(thick - thin, units)],
    ["Whole wall", r === null ? dash : resistanceText(r, units), r === null || r0 === null ? "" : stepR(r - r0, units)],
    [
      face ? `Cold face in ${monthNames[face.month]!}` : "Cold face in its coldest month",
      face ? temperatureText(face.temperature_C, units === "both" ? "ip" : units) : dash,
      face && face0
        ? `${signed(temperatureStep(face.temperature_C - face0.temperature_C, units), 0)} ${units === "si" ? "K" : "°F"}`
        : "",
    ],
    [
      "Water leaving inward, March to June",
      water === null ? dash : share(water),
      water === null || water0 === null ? "" : `${signed(100 * (water - water0), 0)} points`,
    ],
    [
      "Heat lost in a year",
      heat === null || heat0 === null || heat0 === 0 ? dash : `${Math.round((100 * heat) / heat0)} %`,
      heat === null || heat0 === null || heat0 === 0 ? "" : "of what it was",
    ],
  ];
  return (
    <section className="side-part">
      <div className="head">
        <h2>
          What <Sentence text={boardWords} /> does to the rest
        </h2>
        <span className="note">against option {option}</span>
      </div>
      <table className="side-table">
        <tbody>
          {rows.map(([name, value, change]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td className="figure-cell strong">
                <Sentence text={value} />
              </td>
              <td className="figure-cell secondary">
                <Sentence text={change} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function stepLength(change_m: number, units: Units): string {
  if (Math.abs(change_m) < 1e-4) return "as drawn";
  const text = lengthText(Math.abs(change_m), units === "both" ? "ip" : units);
  return `${change_m < 0 ? "−" : "+"}${text}`;
}

function stepR(change: number, units: Units): string {
  if (Math.abs(change) < 1e-6) return "as drawn";
  return `${change < 0 ? "−" : "+"}${resistanceText(Math.abs(change), units).replace("R-", "")}`;
}
