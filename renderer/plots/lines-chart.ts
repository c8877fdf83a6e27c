import { acrossAt, chartLayout, plainAxis, timeFoot, word, type Frame, type XAxis } from "./chart-layout.ts";
import type { TimeScale } from "./calendar.ts";
import { clearBox, placeLabels, wordsWidth, type Box } from "./label-places.ts";
import type { LineStyle } from "./line-styles.ts";
import { niceTicks } from "./nice-range.ts";
import type { PlotData, PlotLayout } from "./plot.tsx";
import type { ChartTokens } from "./tokens.ts";

/** A line over the days of the year, its words written on it. */
export interface YearLine {
  readonly words: string;
  readonly days: ArrayLike<number>;
  readonly style: LineStyle;
  readonly wordColor: string;
}

export interface Limit {
  readonly at: number;
  readonly words: string;
}

export interface LinesChart {
  readonly data: PlotData[];
  readonly layout: Partial<PlotLayout>;
  /** Height of a value within the plot [px], for cursor marks. */
  readonly yOf: (value: number) => number;
  /** What its words cover [px], for readings to keep clear of. */
  readonly wordBoxes: readonly Box[];
}

function ticksIn(
  from: number,
  to: number,
  { step, ticks = 4 }: { readonly step?: number; readonly ticks?: number },
): number[] {
  if (step === undefined || (to - from) / step > 7) return niceTicks(from, to, ticks);
  const first = Math.ceil(from / step);
  return Array.from({ length: Math.floor(to / step) - first + 1 }, (_, i) => (first + i) * step);
}

export function linesChart(input: {
  readonly lines: readonly YearLine[];
  readonly limits: readonly Limit[];
  readonly time: TimeScale;
  readonly tokens: ChartTokens;
  readonly frame: Frame;
  readonly foot: boolean;
  /** Range that must be seen whatever the lines do. */
  readonly atLeast: { readonly from: number; readonly to: number };
  readonly ticks?: number;
  /** Fixed distance between ticks; rounded by itself without. */
  readonly step?: number;
}): LinesChart {
  const { lines, limits, time, tokens, frame } = input;
  let low = input.atLeast.from;
  let high = input.atLeast.to;
  for (const { days } of lines)
    for (let day = 0; day < days.length; day++) {
      low = Math.min(low, days[day]!);
      high = Math.max(high, days[day]!);
    }
  const pad = 0.04 * (high - low);
  const range = { from: low - pad, to: high + pad, ticks: ticksIn(low - pad, high + pad, input) };
  const width = Math.max(1, frame.width - frame.left - frame.right);
  const height = Math.max(1, frame.height - frame.top - frame.bottom);
  const yOf = (value: number): number => ((range.to - value) / (range.to - range.from)) * height;
  const xOf = (day: number): number => ((day + 0.5) / time.days) * width;
  const foot = input.foot
    ? timeFoot(tokens, time)
    : { xaxis: { ...plainAxis, range: [0, time.days], showticklabels: false } as XAxis, shapes: [] };
  const limitsSeen = limits.filter(({ at }) => at > range.from && at < range.to);
  const tracks = lines.map(({ days, words }) => {
    const every = Array.from({ length: Math.ceil(days.length / 2) }, (_, i) => 2 * i);
    return { x: every.map(xOf), y: every.map((day) => yOf(days[day]!)), width: wordsWidth(words, tokens.label_px) };
  });
  const limitBoxes = limitsSeen.map(({ at, words }) =>
    clearBox(tracks, yOf(at), wordsWidth(words, tokens.note_px, false) + 6, width),
  );
  const places = placeLabels(tracks, { left: 0, right: width, top: 0, bottom: height }, tokens.label_px, limitBoxes);
  const x = Array.from({ length: time.days }, (_, day) => day + 0.5);
  return {
    data: lines.map(
      ({ days, style }) =>
        ({
          type: "scatter",
          mode: "lines",
          x: x.slice(0, days.length),
          y: Array.from(days),
          line: { ...style, simplify: true },
          hoverinfo: "skip",
        }) as unknown as PlotData,
    ),
    layout: {
      ...chartLayout(tokens, frame),
      xaxis: { ...foot.xaxis, showline: true, linecolor: tokens.ink, linewidth: 1 },
      yaxis: {
        ...plainAxis,
        range: [range.from, range.to],
        tickmode: "array",
        tickvals: range.ticks,
        ticktext: range.ticks.map((tick) => `${String(tick).replace("-", "−")}  `),
        tickfont: { size: tokens.label_px, color: tokens.ink2 },
      },
      shapes: [
        ...foot.shapes,
        ...range.ticks
          .filter((tick) => !limitsSeen.some(({ at }) => at === tick))
          .map((tick) => acrossAt(tick, { color: tokens.hair2, width: 1 })),
        ...limitsSeen.map(({ at }) => acrossAt(at, { color: tokens.ink2, width: 1.1, dash: "2px,3px" })),
      ],
      annotations: [
        ...limitsSeen.map(({ at, words }, index) =>
          word(
            tokens,
            words,
            {
              xref: "paper",
              x: limitBoxes[index]!.left / width,
              xanchor: "left",
              xshift: 4,
              y: at,
              yanchor: "bottom",
              yshift: -1,
              font: { family: tokens.font, size: tokens.note_px, color: tokens.ink2 },
            },
            false,
          ),
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
    yOf,
    wordBoxes: [
      ...limitBoxes,
      ...places.map((place, index) => ({
        left: place.x - tracks[index]!.width / 2,
        right: place.x + tracks[index]!.width / 2,
        top: place.y - tokens.label_px / 2 - 2,
        bottom: place.y + tokens.label_px / 2 + 2,
      })),
    ],
  };
}
