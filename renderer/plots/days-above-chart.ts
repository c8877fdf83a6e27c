import type { TimeScale } from "./calendar.ts";
import { chartLayout, acrossAt, plainAxis, word, type Frame } from "./chart-layout.ts";
import { daysAboveCurve } from "./days-above.ts";
import { placeLabels, wordsWidth } from "./label-places.ts";
import type { YearLine } from "./lines-chart.ts";
import type { PlotData, PlotLayout } from "./plot.tsx";
import type { ChartTokens } from "./tokens.ts";

/** A stroke for each day whose mean humidity lies above 80 %, a darker one above 90 %. */
export function daysAboveStrip(
  humidity: ArrayLike<number>,
  time: TimeScale,
  tokens: ChartTokens,
  frame: Frame,
): { data: PlotData[]; layout: Partial<PlotLayout> } {
  const days = Array.from({ length: humidity.length }, (_, day) => day).filter((day) => humidity[day]! > 80);
  return {
    data: [
      {
        type: "bar",
        x: days.map((day) => day + 0.5),
        y: days.map(() => 1),
        width: days.map(() => 0.6),
        marker: { color: days.map((day) => (humidity[day]! > 90 ? tokens.ink : tokens.ink3)), line: { width: 0 } },
        hoverinfo: "skip",
      } as unknown as PlotData,
    ],
    layout: {
      ...chartLayout(tokens, frame),
      xaxis: {
        ...plainAxis,
        range: [0, time.days],
        showticklabels: false,
        showline: true,
        linecolor: tokens.hair,
        linewidth: 1,
      },
      yaxis: { ...plainAxis, range: [0, 1], showticklabels: false },
    },
  };
}

/** Days above each humidity from 60 to 100 %: what share of the year a place spends how wet. */
export function daysAboveChart(
  lines: readonly YearLine[],
  time: TimeScale,
  tokens: ChartTokens,
  frame: Frame,
): { data: PlotData[]; layout: Partial<PlotLayout> } {
  const curves = lines.map(({ days }) => daysAboveCurve(days, 60, 100, 0.5));
  const width = Math.max(1, frame.width - frame.left - frame.right);
  const height = Math.max(1, frame.height - frame.top - frame.bottom);
  const xOf = (level: number): number => ((level - 60) / 40) * width;
  const yOf = (days: number): number => (1 - days / time.days) * height;
  const marks = [time.days, 10 * Math.round((2 * time.days) / 30), 10 * Math.round(time.days / 30)].filter(
    (days, index, all) => all.indexOf(days) === index && days > 0,
  );
  const places = placeLabels(
    lines.map(({ words }, index) => ({
      x: curves[index]!.map(({ level }) => xOf(level)),
      y: curves[index]!.map(({ days }) => yOf(days)),
      width: wordsWidth(words, tokens.label_px),
    })),
    { left: 0, right: width - 30, top: 0, bottom: height },
    tokens.label_px,
    [{ left: width - 60, right: width, top: 0, bottom: 14 }],
  );
  return {
    data: lines.map(
      ({ style }, index) =>
        ({
          type: "scatter",
          mode: "lines",
          x: curves[index]!.map(({ level }) => level),
          y: curves[index]!.map(({ days }) => days),
          line: style,
          hoverinfo: "skip",
        }) as unknown as PlotData,
    ),
    layout: {
      ...chartLayout(tokens, frame),
      xaxis: {
        ...plainAxis,
        range: [60, 100],
        showline: true,
        linecolor: tokens.ink,
        linewidth: 1,
        tickmode: "array",
        tickvals: [70, 80, 90],
        ticktext: ["70", "80", "90"],
        tickfont: { size: tokens.label_px, color: tokens.ink2 },
      },
      yaxis: { ...plainAxis, range: [0, time.days], showticklabels: false },
      shapes: marks.map((days) => acrossAt(days, { color: tokens.hair2, width: 1 })),
      annotations: [
        ...marks.map((days, index) =>
          word(
            tokens,
            index === 0 ? `${days} days` : String(days),
            {
              xref: "paper",
              x: 1,
              xanchor: "right",
              y: days,
              yanchor: index === 0 ? "top" : "bottom",
              yshift: index === 0 ? 2 : -2,
              font: { family: tokens.font, size: tokens.note_px, color: tokens.ink2 },
            },
            false,
          ),
        ),
        word(
          tokens,
          "100 %",
          {
            xref: "paper",
            yref: "paper",
            x: 1,
            xanchor: "right",
            y: 0,
            yanchor: "top",
            yshift: -1,
            font: { family: tokens.font, size: tokens.label_px, color: tokens.ink2 },
          },
          false,
        ),
        word(
          tokens,
          "60",
          {
            xref: "paper",
            yref: "paper",
            x: 0,
            xanchor: "left",
            y: 0,
            yanchor: "top",
            yshift: -1,
            font: { family: tokens.font, size: tokens.label_px, color: tokens.ink2 },
          },
          false,
        ),
        ...lines.map(({ words, wordColor }, index) =>
          word(tokens, words, {
            xref: "paper",
            yref: "paper",
            x: places[index]!.x / width,
            y: 1 - places[index]!.y / height,
            xanchor: "center",
            yanchor: "middle",
            font: { family: tokens.font, size: tokens.label_px, color: wordColor, weight: 600 },
          }),
        ),
      ],
    },
  };
}
