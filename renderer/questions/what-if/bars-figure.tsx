import { useMemo, useState } from "react";
import type { WhatIfAnswer } from "../../../solver/index.ts";
import { Figure } from "../../plots/figure.tsx";
import { Plot } from "../../plots/plot.tsx";
import { signed } from "../../plots/quantities.ts";
import { useChartTokens } from "../../plots/tokens.ts";
import { useSize } from "../../plots/use-size.ts";
import type { Units } from "../../state/index.ts";
import { unknownText } from "../parts/unknown-words.ts";
import { barRow_px, barsChart, changesOf, type Measure } from "./bars-chart.ts";

const measures: readonly (readonly [Measure, string])[] = [
  ["moisture", "wood's peak"],
  ["humidity", "30-day humidity"],
];

/** What each input moves between its ends, largest first. */
export function BarsFigure({ answer, units }: { readonly answer: WhatIfAnswer; readonly units: Units }) {
  const tokens = useChartTokens();
  const [place, { width }] = useSize<HTMLDivElement>();
  const hasWood = answer.base?.peakMoisture_percent != null;
  const [wanted, setMeasure] = useState<Measure>("moisture");
  const measure = hasWood ? wanted : "humidity";
  const bars = useMemo(
    () => answer.bars.filter((bar) => changesOf(bar, measure).some((value) => value !== null)),
    [answer, measure],
  );
  const waiting = answer.bars.length - bars.length;
  const height = barRow_px(tokens) * Math.max(1, bars.length) + 22;
  const chart = useMemo(
    () => barsChart(bars, measure, { width, height, left: 0, right: 0, top: 0, bottom: 20 }, units, tokens),
    [bars, measure, width, height, units, tokens],
  );
  const base =
    measure === "moisture"
      ? `${answer.base?.peakMoisture_percent?.toFixed(0) ?? "?"} %`
      : `${answer.base === null ? "?" : Math.round(100 * answer.base.thirtyDayHumidity)} % RH`;
  const most = bars[0];
  return (
    <Figure
      title={
        measure === "moisture"
          ? `Peak of the wood against ${base} as drawn, points`
          : `Dampest 30 days against ${base} as drawn, points`
      }
      summary={
        most === undefined
          ? "No input has been run at both of its ends yet."
          : `${most.unknown.label} moves it most: ${changesOf(most, measure)
              .map((value) => (value === null ? "not run" : `${signed(value, 1)} points`))
              .join(" and ")}.`
      }
      className="bars-figure"
      fileName={`what-if-${measure}`}
      beside={
        hasWood && (
          <span className="choice-group" role="group" aria-label="What the bars measure">
            {measures.map(([id, words]) => (
              <button
                key={id}
                type="button"
                className="verb"
                aria-pressed={id === measure}
                onClick={() => setMeasure(id)}
              >
                {words}
              </button>
            ))}
          </span>
        )
      }
      table={() => ({
        columns: ["Input", "Low end", "Change, points", "High end", "Change, points"],
        rows: answer.bars.map((bar) => {
          const [low, high] = changesOf(bar, measure).map((value) => (value === null ? "not run" : signed(value, 2)));
          return [
            bar.unknown.label,
            unknownText(bar.unknown, bar.unknown.low, units),
            low!,
            unknownText(bar.unknown, bar.unknown.high, units),
            high!,
          ];
        }),
      })}
    >
      {(keepPicture) => (
        <>
          <div ref={place} style={{ height }}>
            {bars.length > 0 ? (
              <Plot data={chart.data} layout={chart.layout} onDrawn={keepPicture} />
            ) : (
              <div className="nothing-yet water-empty" />
            )}
          </div>
          <p className="note">
            Hollow: low end of the range. Filled: high end.
            {waiting > 0 ? ` ${waiting === 1 ? "One input is" : `${waiting} inputs are`} still to come.` : ""}
          </p>
        </>
      )}
    </Figure>
  );
}
