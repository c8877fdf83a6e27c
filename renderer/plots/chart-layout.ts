import type { PlotLayout } from "./plot.tsx";
import type { TimeScale } from "./calendar.ts";
import { timeTicks } from "./calendar.ts";
import type { ChartTokens } from "./tokens.ts";

export interface Frame {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

type Annotation = NonNullable<PlotLayout["annotations"]>[number];
type Shape = NonNullable<PlotLayout["shapes"]>[number];
export type { Annotation, Shape };
export type XAxis = NonNullable<PlotLayout["xaxis"]>;
export type YAxis = NonNullable<PlotLayout["yaxis"]>;

/** What every chart shares: its frame to the pixel, one family, clear ground, nothing that answers the pointer. */
export function chartLayout(tokens: ChartTokens, frame: Frame): Partial<PlotLayout> {
  return {
    width: frame.width,
    height: frame.height,
    margin: { l: frame.left, r: frame.right, t: frame.top, b: frame.bottom, pad: 0, autoexpand: false },
    paper_bgcolor: "rgba(0,0,0,0)",
    plot_bgcolor: "rgba(0,0,0,0)",
    font: { family: tokens.font, size: tokens.note_px, color: tokens.ink2 },
    showlegend: false,
    hovermode: false,
    dragmode: false,
    barmode: "relative",
  };
}

export const plainAxis = {
  showgrid: false,
  zeroline: false,
  showline: false,
  ticks: "",
  fixedrange: true,
  automargin: false,
} as const;

/** Words on the drawing itself. Placed by data coordinates unless told otherwise. */
export function word(tokens: ChartTokens, text: string, at: Partial<Annotation>, bold = true): Annotation {
  return {
    text,
    showarrow: false,
    font: { family: tokens.font, size: tokens.label_px, color: tokens.ink, weight: bold ? 600 : 400 },
    ...at,
  };
}

/** Month names under the time axis with a stroke between them; drawn below the plot's lower edge. */
export function timeFoot(tokens: ChartTokens, scale: TimeScale, letters: 1 | 3 = 3): { xaxis: XAxis; shapes: Shape[] } {
  const { labels, strokes } = timeTicks(scale, letters);
  return {
    xaxis: {
      ...plainAxis,
      range: [0, scale.days],
      tickmode: "array",
      tickvals: labels.map(({ at }) => at),
      ticktext: labels.map(({ text }) => text),
      tickfont: { size: tokens.label_px, color: tokens.ink2 },
    },
    shapes: strokes.map((day) => ({
      type: "line",
      xref: "x",
      yref: "paper",
      ysizemode: "pixel",
      yanchor: 0,
      x0: day,
      x1: day,
      y0: -5,
      y1: -18,
      line: { color: tokens.hair, width: 1 },
    })),
  };
}

/** Limits and gridlines across a chart's whole width. */
export const acrossAt = (y: number, line: { color: string; width: number; dash?: string }): Shape =>
  ({
    type: "line",
    xref: "paper",
    yref: "y",
    x0: 0,
    x1: 1,
    y0: y,
    y1: y,
    line: { ...line, dash: line.dash ?? "solid" },
    layer: "below",
  }) as Shape;
