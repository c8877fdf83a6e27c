import { useMemo } from "react";
import type { HumidityAnswer } from "../../../solver/index.ts";
import { monthNames } from "../../plots/calendar.ts";
import { acrossAt, chartLayout, plainAxis, word } from "../../plots/chart-layout.ts";
import { Figure } from "../../plots/figure.tsx";
import { placeLabels, wordsWidth } from "../../plots/label-places.ts";
import { Plot, type PlotData, type PlotLayout } from "../../plots/plot.tsx";
import { useChartTokens } from "../../plots/tokens.ts";
import { useSize } from "../../plots/use-size.ts";
import { share } from "../../units/index.ts";

/** Months from October on, so that the winter stands in one piece. */
const order = Array.from({ length: 12 }, (_, place) => (place + 9) % 12);
const height = 150;

/** The owner's line by month, with the line of the dew point by hand beside it. */
export function MonthsFigure({ answer }: { readonly answer: HumidityAnswer }) {
  const tokens = useChartTokens();
  const [place, { width }] = useSize<HTMLDivElement>();
  const lines = useMemo(
    () =>
      [
        { words: "keep the room under this", values: answer.ownersLine, color: tokens.ink, dash: "solid", width: 2.4 },
        {
          words: "dew point by hand",
          values: answer.dewPointLine,
          color: tokens.airLine || tokens.outside,
          dash: "7px,3px",
          width: 2,
        },
      ].flatMap((line) =>
        line.values === null ? [] : [{ ...line, values: order.map((month) => 100 * line.values![month]!) }],
      ),
    [answer, tokens],
  );
  const chart = useMemo(() => {
    const most = 100;
    const frame = { width, height, left: 34, right: 0, top: 4, bottom: 20 };
    const inner = { width: Math.max(1, width - 34), height: height - 24 };
    const xOf = (index: number): number => ((index + 0.5) / 12) * inner.width;
    const yOf = (value: number): number => (1 - value / most) * inner.height;
    const places = placeLabels(
      lines.map(({ words, values }) => ({
        x: values.map((_, index) => xOf(index)),
        y: values.map(yOf),
        width: wordsWidth(words, tokens.label_px),
      })),
      { left: 0, right: inner.width, top: 0, bottom: inner.height },
      tokens.label_px,
    );
    const layout: Partial<PlotLayout> = {
      ...chartLayout(tokens, frame),
      xaxis: {
        ...plainAxis,
        range: [-0.5, 11.5],
        showline: true,
        linecolor: tokens.ink,
        tickmode: "array",
        tickvals: order.map((_, index) => index),
        ticktext: order.map((month) => monthNames[month]!.slice(0, 3)),
        tickfont: { size: tokens.label_px, color: tokens.ink2 },
      },
      yaxis: {
        ...plainAxis,
        range: [0, most],
        tickmode: "array",
        tickvals: [0, 20, 40, 60, 80, 100],
        ticktext: ["0", "20", "40", "60", "80", "100"].map((text) => `${text}  `),
        tickfont: { size: tokens.label_px, color: tokens.ink2 },
      },
      shapes: [20, 40, 60, 80].map((tick) => acrossAt(tick, { color: tokens.hair2, width: 1 })),
      annotations: lines.map(({ words, color }, index) =>
        word(tokens, words, {
          xref: "paper",
          yref: "paper",
          x: places[index]!.x / inner.width,
          y: 1 - places[index]!.y / inner.height,
          xanchor: "center",
          yanchor: "middle",
          font: { family: tokens.font, size: tokens.label_px, color, weight: 600 },
        }),
      ),
    };
    const data = lines.map(
      ({ values, color, dash, width: wide }) =>
        ({
          type: "scatter",
          mode: "lines",
          x: order.map((_, index) => index),
          y: values,
          line: { color, dash, width: wide },
          hoverinfo: "skip",
        }) as unknown as PlotData,
    );
    return { data, layout };
  }, [lines, width, tokens]);
  const owner = answer.ownersLine;
  return (
    <Figure
      title="For the owner: humidity of the room by month, %"
      summary={
        owner === null
          ? "No line is known yet."
          : `Keep the room under ${share(owner[0]!)} in January and under ${share(owner[6]!)} in July.`
      }
      fileName="how-humid-by-month"
      className="months-figure"
      table={() => ({
        columns: ["Month", "Keep under, %", "Dew point by hand, %"],
        rows: order.map((month) => [
          monthNames[month]!,
          owner === null ? "—" : (100 * owner[month]!).toFixed(0),
          answer.dewPointLine === null ? "—" : (100 * answer.dewPointLine[month]!).toFixed(0),
        ]),
      })}
    >
      {(keepPicture) => (
        <div ref={place} style={{ height }}>
          {lines.length > 0 && <Plot data={chart.data} layout={chart.layout} onDrawn={keepPicture} />}
        </div>
      )}
    </Figure>
  );
}
