import { codeRowOf, rsiPerR, type Edition, type WallFacts } from "../../../solver/index.ts";
import type { Units } from "../../state/index.ts";
import { resistanceFigure, resistanceText, Sentence } from "../../units/index.ts";

/** Zones with a row of their own, by name and by a zone that stands for it. */
const zones = ["4C", "5A", "6A", "7", "8"] as const;

interface CodeTableProps {
  readonly edition: Edition;
  readonly zone: string | undefined;
  readonly stud: WallFacts["stud"];
  /** Of the board in view, rated. */
  readonly board: { readonly words: string; readonly resistance_m2KW: number };
  readonly units: Units;
}

/** Least continuous insulation under which a Class III retarder may stand inside, zone by zone. */
export function CodeTable({ edition, zone, stud, board, units }: CodeTableProps) {
  const least = (each: string, frame: "2x4" | "2x6") => codeRowOf(edition, each, frame);
  const rows = zones.flatMap((each) => {
    const over2x4 = least(each, "2x4");
    const over2x6 = least(each, "2x6");
    if (!over2x4 || !over2x6) return [];
    const name = each === "4C" ? "Marine 4" : /^\d/.exec(each)![0];
    return [{ zone: each, name, over2x4, over2x6 }];
  });
  const own = zone === undefined ? null : codeRowOf(edition, zone, stud === "2x4" ? "2x4" : "2x6");
  const isOwn = (row: (typeof rows)[number]): boolean =>
    own !== null && (row.over2x6.row === own.row || row.over2x4.row === own.row);
  const value = (r: number): string =>
    units === "si" ? resistanceFigure(r, units) : `R-${Number((r / rsiPerR).toFixed(2))}`;
  const meets = own === null || stud === "other" ? null : board.resistance_m2KW >= own.least_m2KW - 1e-6;
  return (
    <section className="side-part">
      <div className="head">
        <h2>What the code table says</h2>
        <span className="note">Class III on the room side{units === "si" ? ", m²K/W" : ""}</span>
      </div>
      <table className="side-table code-table">
        <thead>
          <tr>
            <th scope="col">Zone</th>
            <th scope="col">over 2×4</th>
            <th scope="col">over 2×6</th>
            <th scope="col">
              <span className="visually-hidden">This board</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => {
            const here = isOwn(row);
            return (
              <tr key={row.zone} className={here ? "row-here" : ""} aria-current={here ? "true" : undefined}>
                <th scope="row">{row.name}</th>
                <td className={here && stud === "2x4" ? "strong" : ""}>{value(row.over2x4.least_m2KW)}</td>
                <td className={here && stud === "2x6" ? "strong" : ""}>{value(row.over2x6.least_m2KW)}</td>
                <td className="row-words">
                  {here && meets !== null && (
                    <Sentence
                      text={`${board.words}, ${(units === "si" ? resistanceFigure : resistanceText)(board.resistance_m2KW, units)}, ${meets ? "meets it" : "does not"}`}
                    />
                  )}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      <p className="note">
        {own === null
          ? zone === undefined
            ? "The project names no climate zone, so no row is chosen. "
            : `${edition} has no such row for zone ${zone}. `
          : `${own.source}. `}
        {stud === "other" ? "The frame is neither 2×4 nor 2×6. " : ""}Check your adopted edition.
      </p>
    </section>
  );
}
