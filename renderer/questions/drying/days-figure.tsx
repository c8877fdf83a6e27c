import { useMemo } from "react";
import type { DryingAnswer, DryingRow } from "../../../solver/index.ts";
import { chartLayout, plainAxis, word } from "../../plots/chart-layout.ts";
import { Figure } from "../../plots/figure.tsx";
import { Plot, type PlotData, type PlotLayout } from "../../plots/plot.tsx";
import { useChartTokens } from "../../plots/tokens.ts";
import { useSize } from "../../plots/use-size.ts";

const testDays = 365;

/** First day at or below a moisture content; null: not within the test, or no wood to judge by. */
export const daysTo = (row: DryingRow, threshold: number): number | null =>
  row.times.find(({ threshold_percent }) => threshold_percent === threshold)?.first_days ?? null;

export const daysText = (row: DryingRow, threshold: number): string => {
  if (!row.finished) return "not run yet";
  if (row.times.length === 0) return "no wood near it";
  const days = daysTo(row, threshold);
  return days === null ? "not within the year" : Math.round(days) === 1 ? "1 day" : `${Math.round(days)} days`;
};

/** Days until the wetted wood is at 20 % and at 16 %. */
export function DaysFigure({ answer }: { readonly answer: DryingAnswer }) {
  const tokens = useChartTokens();
  const [place, { width }] = useSize<HTMLDivElement>();
  const rows = answer.rows.filter((row) => row.finished && row.times.length > 0);
  const height = 30 * Math.max(1, rows.length) + 22;
  const chart = useMemo(() => {
    const bar = (threshold: number, wide: number, colour: string, hollow: boolean): PlotData =>
      ({
        type: "bar",
        orientation: "h",
        y: rows.map((_, index) => -index),
        x: rows.map((row) => daysTo(row, threshold) ?? testDays),
        width: wide,
        marker: { color: hollow ? tokens.paper : colour, line: { color: colour, width: 1.3 } },
        hoverinfo: "skip",
      }) as unknown as PlotData;
    const layout: Partial<PlotLayout> = {
      ...chartLayout(tokens, { width, height, left: 24, right: 0, top: 2, bottom: 20 }),
      barmode: "overlay",
      xaxis: {
        ...plainAxis,
        range: [0, testDays * 1.3],
        tickmode: "array",
        tickvals: [0, 60, 120, 180, 240, 300, 365],
        ticktext: ["0 days", "60", "120", "180", "240", "300", "365"],
        tickfont: { size: tokens.label_px, color: tokens.ink2 },
        showline: true,
        linecolor: tokens.ink,
      },
      yaxis: { ...plainAxis, range: [-rows.length + 0.5, 0.5], showticklabels: false },
      annotations: rows.map((row, index) =>
        word(
          tokens,
          `20 %: ${daysText(row, 20)} · 16 %: ${daysText(row, 16)}`,
          {
            x: Math.max(daysTo(row, 16) ?? testDays, daysTo(row, 20) ?? testDays),
            xanchor: (daysTo(row, 16) ?? testDays) > 0.9 * testDays ? "right" : "left",
            xshift: (daysTo(row, 16) ?? testDays) > 0.9 * testDays ? -6 : 6,
            y: -index,
          },
          true,
        ),
      ),
    };
    return { data: [bar(16, 0.66, tokens.ink2, true), bar(20, 0.66, tokens.hair, false)], layout };
  }, [rows, width, height, tokens]);
  return (
    <Figure
      title="Days from the wetting to 20 % and to 16 %"
      summary={
        rows.map((row) => `${row.option}: 20 % ${daysText(row, 20)}, 16 % ${daysText(row, 16)}.`).join(" ") ||
        "No wetted run has finished."
      }
      fileName="drying-days"
      className="days-figure"
      table={() => ({
        columns: ["Option", "Days to 20 %", "Days to 16 %"],
        rows: answer.rows.map((row) => [`${row.option} ${row.optionName}`, daysText(row, 20), daysText(row, 16)]),
      })}
    >
      {(keepPicture) => (
        <div ref={place} className="days-place" style={{ height }}>
          {rows.length > 0 && <Plot data={chart.data} layout={chart.layout} onDrawn={keepPicture} />}
          {rows.map((row, index) => (
            <b key={row.option} className="row-letter days-letter" style={{ top: 9 + index * 30 }}>
              {row.option}
            </b>
          ))}
        </div>
      )}
    </Figure>
  );
}
