import type { Bar } from "../../../solver/index.ts";
import { chartLayout, plainAxis, word, type Annotation, type Frame, type Shape } from "../../plots/chart-layout.ts";
import { wordsWidth } from "../../plots/label-places.ts";
import { niceRange } from "../../plots/nice-range.ts";
import type { PlotData, PlotLayout } from "../../plots/plot.tsx";
import { signed } from "../../plots/quantities.ts";
import type { ChartTokens } from "../../plots/tokens.ts";
import type { Units } from "../../state/index.ts";
import { unknownText } from "../parts/unknown-words.ts";

/** What the bars measure. */
export type Measure = "moisture" | "humidity";

export const changesOf = (bar: Bar, measure: Measure): readonly [number | null, number | null] =>
  measure === "moisture" ? bar.moisture_points : bar.humidity_points;

/** Height that one input takes: its name and its bars [px]. */
export const barRow_px = (tokens: ChartTokens): number => Math.round(4.5 * tokens.label_px);

/** Where the bars of the low and the high end lie within an input's row. */
const barAt = [0.02, -0.26] as const;

/** Sorted bars of what each input moves between its ends; the middle line is the wall as drawn. */
export function barsChart(
  bars: readonly Bar[],
  measure: Measure,
  frame: Frame,
  units: Units,
  tokens: ChartTokens,
): { readonly data: PlotData[]; readonly layout: Partial<PlotLayout> } {
  const changes = bars.map((bar) => changesOf(bar, measure));
  const all = changes.flat().filter((value) => value !== null);
  const low = Math.min(0, ...all);
  const high = Math.max(0, ...all);
  const spread = Math.max(high - low, 0.5);
  const width = Math.max(1, frame.width - frame.left - frame.right);
  // Words stand beyond the ends of the bars: the axis leaves room for the longest on either side.
  const words = bars.map((bar, index) =>
    ([0, 1] as const).map((end) => {
      const value = changes[index]![end];
      const at = end === 0 ? bar.unknown.low : bar.unknown.high;
      return value === null ? "" : `${unknownText(bar.unknown, at, units)}, ${signed(value, 1)}`;
    }),
  );
  const room = (side: -1 | 1): number =>
    Math.max(
      40,
      ...bars.flatMap((_, index) =>
        ([0, 1] as const).map((end) => {
          const value = changes[index]![end] ?? 0;
          const isSide = side < 0 ? value < 0 : value >= 0;
          if (!isSide) return 0;
          const length = (Math.abs(value) / spread) * 0.45 * width;
          const longest = ((side < 0 ? -low : high) / spread) * 0.45 * width;
          return wordsWidth(words[index]![end]!, tokens.label_px, false) + 12 - (longest - length);
        }),
      ),
    );
  const [left, right] = [room(-1), room(1)];
  const perPixel = spread / Math.max(60, width - left - right);
  const range: [number, number] = [low - left * perPixel, high + right * perPixel];
  const ticks = niceRange(low, Math.max(high, low + 0.5), 5).ticks.filter(
    (tick) => tick >= low - 1e-9 && tick <= high + spread * 0.02,
  );
  const traces = ([0, 1] as const).map(
    (end) =>
      ({
        type: "bar",
        orientation: "h",
        y: bars.map((_, index) => -index + barAt[end]),
        x: changes.map((pair) => pair[end] ?? 0),
        width: 0.22,
        marker: {
          color: end === 0 ? tokens.paper : tokens.ink2,
          line: { color: tokens.ink2, width: 1.3 },
        },
        hoverinfo: "skip",
      }) as unknown as PlotData,
  );
  const annotations: Annotation[] = bars.flatMap((bar, index) => [
    word(tokens, bar.unknown.label, { xref: "paper", x: 0, xanchor: "left", y: -index + 0.33, yanchor: "middle" }),
    ...([0, 1] as const).flatMap((end) => {
      const value = changes[index]![end];
      const ends = [bar.unknown.low, bar.unknown.high] as const;
      // The end that is drawn needs no bar and no words.
      if (value === null || (value === 0 && bar.now === ends[end])) return [];
      return [
        word(
          tokens,
          words[index]![end]!,
          {
            x: value,
            xanchor: value < 0 ? "right" : "left",
            xshift: value < 0 ? -5 : 5,
            y: -index + barAt[end],
            yanchor: "middle",
            font: { family: tokens.font, size: tokens.note_px, color: tokens.ink2 },
          },
          false,
        ),
      ];
    }),
  ]);
  const shapes: Shape[] = [
    ...ticks.map((tick): Shape => ({
      type: "line",
      xref: "x",
      yref: "paper",
      x0: tick,
      x1: tick,
      y0: 0,
      y1: 1,
      layer: "below",
      line: { color: tick === 0 ? tokens.ink : tokens.hair2, width: tick === 0 ? 1.5 : 1 },
    })),
  ];
  return {
    data: traces,
    layout: {
      ...chartLayout(tokens, frame),
      barmode: "overlay",
      xaxis: {
        ...plainAxis,
        range,
        tickmode: "array",
        tickvals: ticks,
        ticktext: ticks.map((tick) => (tick === 0 ? "as drawn" : signed(tick, Number.isInteger(tick) ? 0 : 1))),
        tickfont: { size: tokens.label_px, color: tokens.ink2 },
      },
      yaxis: { ...plainAxis, range: [-bars.length + 0.5, 0.5], showticklabels: false },
      shapes,
      annotations,
    },
  };
}
