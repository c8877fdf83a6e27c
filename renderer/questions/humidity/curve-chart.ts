import type { HumidityAnswer } from "../../../solver/index.ts";
import { acrossAt, chartLayout, plainAxis, word, type Frame, type Shape } from "../../plots/chart-layout.ts";
import { niceRange } from "../../plots/nice-range.ts";
import type { PlotData, PlotLayout } from "../../plots/plot.tsx";
import type { ChartTokens } from "../../plots/tokens.ts";
import type { Units } from "../../state/index.ts";
import { kindText, kindWords, worstOf } from "../parts/finding-words.ts";

export interface HumidityCurvePoint {
  /** 0..1 */
  readonly humidity: number;
  readonly measured: number;
  readonly limit: number;
  readonly holds: boolean;
}

export const humidityCurve = (answer: HumidityAnswer, kind: string): readonly HumidityCurvePoint[] =>
  answer.points.flatMap(({ winterHumidity, summary }) => {
    const worst = worstOf(summary, kind);
    return worst === null ? [] : [{ humidity: winterHumidity, ...worst }];
  });

/** One kind of finding against the room's winter humidity, its limit, and the humidity up to which it is kept. */
export function humidityChart(
  points: readonly HumidityCurvePoint[],
  kind: string,
  upTo: number | null,
  drawn: number | null,
  units: Units,
  tokens: ChartTokens,
  frame: Frame,
): { readonly data: PlotData[]; readonly layout: Partial<PlotLayout> } {
  const { shown } = kindWords(kind);
  const y = (value: number): number => shown(value, units);
  const limit = points[0]?.limit ?? 0;
  const range = niceRange(
    Math.min(y(limit), ...points.map(({ measured }) => y(measured))),
    Math.max(y(limit), ...points.map(({ measured }) => y(measured))),
    5,
  );
  const pad = 0.06 * (range.to - range.from);
  const [from, to] = [range.from - pad, range.to + pad];
  const least = Math.min(0.2, ...points.map(({ humidity }) => humidity));
  const most = Math.max(0.6, ...points.map(({ humidity }) => humidity));
  const x = (humidity: number): number => 100 * humidity;
  const upright = (at: number, top: number, style: object): Shape => ({
    type: "line",
    xref: "x",
    yref: "y",
    x0: x(at),
    x1: x(at),
    y0: from,
    y1: top,
    line: style,
  });
  const ticks = [20, 25, 30, 35, 40, 45, 50, 55, 60];
  return {
    data: [
      {
        type: "scatter",
        mode: "lines+markers",
        x: points.map(({ humidity }) => x(humidity)),
        y: points.map(({ measured }) => y(measured)),
        line: { color: tokens.ink, width: 2.4 },
        marker: { size: 4, color: tokens.ink },
        hoverinfo: "skip",
      } as unknown as PlotData,
      ...(upTo === null
        ? []
        : [
            {
              type: "scatter",
              mode: "markers",
              x: [x(upTo)],
              y: [y(limit)],
              marker: { size: 9, color: tokens.paper, line: { color: tokens.pencil, width: 1.8 } },
              hoverinfo: "skip",
            } as unknown as PlotData,
          ]),
    ],
    layout: {
      ...chartLayout(tokens, frame),
      xaxis: {
        ...plainAxis,
        range: [x(least) - 1, x(most) + 1],
        showline: true,
        linecolor: tokens.ink,
        ticks: "outside",
        ticklen: 4,
        tickcolor: tokens.ink,
        tickmode: "array",
        tickvals: ticks,
        ticktext: ticks.map((tick) => (tick === 20 ? "20 % in winter" : String(tick))),
        tickfont: { size: tokens.label_px, color: tokens.ink2 },
      },
      yaxis: {
        ...plainAxis,
        range: [from, to],
        tickmode: "array",
        tickvals: range.ticks,
        ticktext: range.ticks.map((tick) => `${String(tick).replace("-", "−")}  `),
        tickfont: { size: tokens.label_px, color: tokens.ink2 },
      },
      shapes: [
        ...range.ticks.map((tick) => acrossAt(tick, { color: tokens.hair2, width: 1 })),
        acrossAt(y(limit), { color: tokens.ink, width: 1.2, dash: "2px,3px" }),
        ...(upTo === null ? [] : [upright(upTo, y(limit), { color: tokens.pencil, width: 1.3 })]),
        ...(drawn === null || drawn < least || drawn > most
          ? []
          : [upright(drawn, to, { color: tokens.inside, width: 1.1, dash: "2px,3px" })]),
      ],
      annotations: [
        word(tokens, `limit, ${kindText(kind, limit, units)}`, {
          xref: "paper",
          x: 0,
          xanchor: "left",
          xshift: 4,
          y: y(limit),
          yanchor: "bottom",
          yshift: 1,
          font: { family: tokens.font, size: tokens.label_px, color: tokens.ink2, weight: 600 },
        }),
        ...(upTo === null
          ? []
          : [
              word(tokens, `${Math.floor(100 * upTo + 1e-6)} %`, {
                x: x(upTo),
                xanchor: "left",
                xshift: 8,
                y: y(limit),
                yanchor: "top",
                yshift: -4,
                font: { family: tokens.font, size: tokens.label_px, color: tokens.pencil, weight: 600 },
              }),
            ]),
        ...(drawn === null || drawn < least || drawn > most
          ? []
          : [
              word(tokens, `${Math.round(100 * drawn)} % as drawn`, {
                x: x(drawn),
                xanchor: "left",
                xshift: 5,
                yref: "paper",
                y: 0,
                yanchor: "bottom",
                yshift: 3,
                font: { family: tokens.font, size: tokens.label_px, color: tokens.inside, weight: 600 },
              }),
            ]),
      ],
    },
  };
}
