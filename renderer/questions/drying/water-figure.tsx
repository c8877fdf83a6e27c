import { useMemo, useState } from "react";
import type { DryingAnswer, DryingRow, WaterBudget } from "../../../solver/index.ts";
import { monthNames } from "../../plots/calendar.ts";
import { Figure, type SvgMaker } from "../../plots/figure.tsx";
import { leavingShares } from "../../plots/leaving-shares.ts";
import { Plot } from "../../plots/plot.tsx";
import { waterOnArea, waterOnAreaUnit } from "../../plots/quantities.ts";
import { useChartTokens } from "../../plots/tokens.ts";
import { useSize } from "../../plots/use-size.ts";
import type { Units } from "../../state/index.ts";
import { figure, share } from "../../units/index.ts";
import { commonScale, monthBars, type WaterScale } from "./month-bars.ts";

type Course = "wetted" | "ordinary";
type Stretch = "sheathing" | "wall";

const budgetOf = (row: DryingRow, course: Course, stretch: Stretch): WaterBudget | null =>
  course === "wetted"
    ? stretch === "sheathing"
      ? row.sheathing
      : row.wall
    : stretch === "sheathing"
      ? row.ordinarySheathing
      : row.ordinaryWall;

/** Where the water goes, month by month, each option about its own line: up is the weather, down is the room. */
export function WaterFigure({ answer, units }: { readonly answer: DryingAnswer; readonly units: Units }) {
  const [course, setCourse] = useState<Course>("wetted");
  const [stretch, setStretch] = useState<Stretch>("sheathing");
  const rows = answer.rows.flatMap((row) => {
    const budget = budgetOf(row, course, stretch);
    return budget === null ? [] : [{ row, budget }];
  });
  const scale = commonScale(rows.map(({ budget }) => budget));
  const unit = waterOnAreaUnit(units);
  const what = stretch === "sheathing" ? "the sheathing" : "the whole wall";
  const sentences = rows.map(({ row, budget }) => {
    const all = leavingShares(budget, [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]);
    return all === null
      ? `From ${what} of ${row.option} nothing leaves.`
      : `Of what leaves ${what} of ${row.option}, ${share(all.outward)} goes to the weather and ${share(all.inward)} to the room.`;
  });
  return (
    <Figure
      title={`Water leaving, ${unit} a month`}
      summary={sentences.join(" ") || "No run has finished."}
      fileName={`drying-${stretch}-${course}`}
      className="water-figure"
      beside={
        <>
          <Choice
            label="Which year"
            value={course}
            choices={[
              ["wetted", "after the wetting"],
              ["ordinary", "ordinary year"],
            ]}
            onChange={setCourse}
          />
          <Choice
            label="Of what"
            value={stretch}
            choices={[
              ["sheathing", "sheathing"],
              ["wall", "wall"],
            ]}
            onChange={setStretch}
          />
        </>
      }
      table={() => ({
        columns: [
          "Month",
          ...rows.flatMap(({ row }) => [
            `${row.option} to the weather, ${unit}`,
            `${row.option} to the room`,
            `${row.option} brought by leaks`,
            `${row.option} stored`,
          ]),
        ],
        rows: (rows[0]?.budget.months ?? []).map((month, place) => [
          monthNames[month]!,
          ...rows.flatMap(({ budget }) =>
            [budget.outward, budget.inward, budget.sources, budget.stored].map((flows) =>
              figure(waterOnArea(flows[place] ?? 0, units), units === "si" ? 1 : 3),
            ),
          ),
        ]),
      })}
    >
      {(keepPicture) =>
        rows.length === 0 ? (
          <div className="nothing-yet water-empty" />
        ) : (
          <div className="water-rows">
            {rows.map(({ row, budget }, index) => (
              <Row
                key={row.option}
                row={row}
                budget={budget}
                scale={scale}
                first={index === 0}
                last={index === rows.length - 1}
                units={units}
                keepPicture={keepPicture}
              />
            ))}
          </div>
        )
      }
    </Figure>
  );
}

function Row({
  row,
  budget,
  scale,
  first,
  last,
  units,
  keepPicture,
}: {
  row: DryingRow;
  budget: WaterBudget;
  scale: WaterScale;
  first: boolean;
  last: boolean;
  units: Units;
  keepPicture: (svg: SvgMaker) => void;
}) {
  const tokens = useChartTokens();
  const [place, { width, height }] = useSize<HTMLDivElement>();
  const chart = useMemo(
    () =>
      monthBars(
        budget,
        scale,
        { width, height, left: 0, right: 0, top: 2, bottom: last ? 20 : 2 },
        last,
        units,
        tokens,
      ),
    [budget, scale, width, height, last, units, tokens],
  );
  return (
    <div className="water-row">
      <b className="row-letter">{row.option}</b>
      <div ref={place} className="water-place">
        <Plot data={chart.data} layout={chart.layout} {...(first ? { onDrawn: keepPicture } : {})} />
        <span className="water-side outside">
          to the weather{first && <span className="note"> filled leaves, hollow arrives</span>}
        </span>
        <span className={last ? "water-side water-side-last inside" : "water-side water-side-low inside"}>
          to the room
        </span>
      </div>
    </div>
  );
}

function Choice<Value extends string>({
  label,
  value,
  choices,
  onChange,
}: {
  label: string;
  value: Value;
  choices: readonly (readonly [Value, string])[];
  onChange: (value: Value) => void;
}) {
  return (
    <span className="choice-group" role="group" aria-label={label}>
      {choices.map(([each, words]) => (
        <button key={each} type="button" className="verb" aria-pressed={each === value} onClick={() => onChange(each)}>
          {words}
        </button>
      ))}
    </span>
  );
}
