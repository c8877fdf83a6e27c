import type { RunResult } from "../../solver/index.ts";
import { chartLayout, plainAxis, word, type Annotation, type Frame, type Shape } from "./chart-layout.ts";
import { dewPointOf_C } from "./dew-point.ts";
import { lineStyle } from "./line-styles.ts";
import { niceRange } from "./nice-range.ts";
import type { PlotData, PlotLayout } from "./plot.tsx";
import { degreeSign, temperature, temperatureStep, type ShownUnits } from "./quantities.ts";
import { dayProfile } from "./through-wall.ts";
import type { ChartTokens } from "./tokens.ts";
import type { LayerSpan } from "./wall-depths.ts";

/** Lowest and highest temperature or dew point of the whole year, so that the axis stands still while the date moves. */
export function yearSpread_C(result: RunResult): { from: number; to: number } {
  let from = Infinity;
  let to = -Infinity;
  for (let i = 0; i < result.map.T_C.length; i++) {
    const t = result.map.T_C[i]!;
    if (!Number.isFinite(t)) continue;
    to = Math.max(to, t);
    from = Math.min(from, t, i % 7 === 0 ? dewPointOf_C(t, result.map.RH[i]!) : t);
  }
  return Number.isFinite(from) ? { from, to } : { from: -20, to: 30 };
}

export interface DaySection {
  readonly data: PlotData[];
  readonly layout: Partial<PlotLayout>;
  /** Temperature above dew point at the watched face [K]. */
  readonly apart_K: number | null;
}

/** Temperature and dew point through the wall on one day: where the two meet, dew forms. */
export function daySection(input: {
  readonly result: RunResult;
  readonly day: number;
  readonly spans: readonly LayerSpan[];
  /** Depth at which the gap between the two is read [m]. */
  readonly watched_m: number | null;
  readonly watchedWords: string;
  readonly spread: { readonly from: number; readonly to: number };
  readonly units: ShownUnits;
  readonly tokens: ChartTokens;
  readonly frame: Frame;
}): DaySection {
  const { result, day, spans, watched_m, units, tokens, frame } = input;
  const thickness = spans.at(-1)?.to_m ?? 1;
  const held = day < result.map.days;
  const profile = held
    ? dayProfile(result.map, result.map.T_C, day).map(({ depth_m, value }, i) => {
        const dew = dewPointOf_C(value, dayProfileValue(result, day, i));
        return { depth_m, t: temperature(value, units), dew: temperature(dew, units) };
      })
    : [];
  const range = niceRange(temperature(input.spread.from, units), temperature(input.spread.to, units), 5);
  const frost = temperature(0, units);
  const width = Math.max(1, frame.width - frame.left - frame.right);
  const xOf = (value: number): number => ((value - range.from) / (range.to - range.from)) * width;
  const at = watched_m === null ? null : nearest(profile, watched_m);
  const line = (key: "t" | "dew", role: "temperature" | "dewPoint"): PlotData =>
    ({
      type: "scatter",
      mode: "lines",
      x: profile.map((point) => point[key]),
      y: profile.map(({ depth_m }) => depth_m),
      line: lineStyle(role, tokens),
      hoverinfo: "skip",
    }) as unknown as PlotData;
  const dot = (value: number, color: string, filled: boolean): PlotData =>
    ({
      type: "scatter",
      mode: "markers",
      x: [value],
      y: [watched_m],
      marker: { size: 7, color: filled ? color : tokens.paper, line: { color, width: 1.8 } },
      hoverinfo: "skip",
    }) as unknown as PlotData;
  const annotations: Annotation[] = [];
  if (at && watched_m !== null) {
    const low = watched_m > 0.55 * thickness;
    const toRight = xOf(at.t) < width * 0.6;
    annotations.push(
      word(
        tokens,
        `${Math.max(0, Math.round(at.t - at.dew))} ${degreeSign(units)} apart<br><span style="font-weight:400;font-size:${tokens.note_px}px">${input.watchedWords}</span>`,
        {
          x: toRight ? 1 : 0,
          xref: "paper",
          xanchor: toRight ? "right" : "left",
          xshift: toRight ? -7 : 7,
          align: toRight ? "right" : "left",
          y: watched_m,
          yanchor: low ? "bottom" : "top",
          yshift: low ? 4 : -4,
        },
      ),
    );
  }
  annotations.push(...lineWords(profile, thickness, tokens, xOf, width));
  const face = (depth_m: number): Shape => ({
    type: "line",
    xref: "paper",
    x0: 0,
    x1: 1,
    yref: "y",
    y0: depth_m,
    y1: depth_m,
    line: { color: tokens.hair, width: 1 },
    layer: "below",
  });
  const ticks = range.ticks
    .filter((tick) => Math.abs(xOf(tick) - xOf(frost)) > 22 || tick === frost)
    .filter((tick) => xOf(tick) < width - 24);
  const all = ticks.includes(frost) || xOf(frost) < 0 || xOf(frost) > width - 24 ? ticks : [...ticks, frost];
  return {
    data:
      profile.length > 0
        ? [
            line("dew", "dewPoint"),
            line("t", "temperature"),
            ...(at ? [dot(at.dew, lineStyle("dewPoint", tokens).color, false), dot(at.t, tokens.ink, true)] : []),
          ]
        : [],
    layout: {
      ...chartLayout(tokens, frame),
      xaxis: {
        ...plainAxis,
        range: [range.from, range.to],
        tickmode: "array",
        tickvals: all,
        ticktext: all.map((tick) => `${Math.round(tick)}°`.replace("-", "−")),
        tickangle: 0,
        tickfont: { size: tokens.label_px, color: tokens.ink2 },
      },
      yaxis: { ...plainAxis, range: [thickness, 0], showticklabels: false },
      shapes: [
        {
          type: "rect",
          xref: "paper",
          yref: "paper",
          x0: 0,
          x1: 1,
          y0: 0,
          y1: 1,
          line: { color: tokens.hair, width: 1 },
        },
        ...spans
          .filter(({ from_m, to_m }) => to_m > from_m)
          .slice(0, -1)
          .map(({ to_m }) => face(to_m)),
        ...(xOf(frost) > 0 && xOf(frost) < width
          ? [
              {
                type: "line",
                xref: "x",
                yref: "paper",
                x0: frost,
                x1: frost,
                y0: 0,
                y1: 1,
                line: { color: tokens.ink2, width: 1, dash: "5px,3px" },
              } as unknown as Shape,
            ]
          : []),
      ],
      annotations: [
        ...annotations,
        word(
          tokens,
          degreeSign(units).slice(1),
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
      ],
    },
    apart_K: at ? (at.t - at.dew) / temperatureStep(1, units) : null,
  };
  function dayProfileValue(from: RunResult, onDay: number, column: number): number {
    return from.map.RH[Math.min(from.map.days - 1, Math.floor(onDay)) * from.map.depth_m.length + column]!;
  }
}

interface ProfilePoint {
  readonly depth_m: number;
  readonly t: number;
  readonly dew: number;
}

function nearest(profile: readonly ProfilePoint[], depth_m: number): ProfilePoint | null {
  return profile.reduce<ProfilePoint | null>(
    (best, point) => (best && Math.abs(best.depth_m - depth_m) <= Math.abs(point.depth_m - depth_m) ? best : point),
    null,
  );
}

/** The two names on the inner part of the wall, each beside its own line and clear of the other. */
function lineWords(
  profile: readonly ProfilePoint[],
  thickness: number,
  tokens: ChartTokens,
  xOf: (value: number) => number,
  width: number,
): Annotation[] {
  const put = (text: string, key: "t" | "dew", other: "t" | "dew", color: string): Annotation[] => {
    const room = wordRoom(text, tokens) + 10;
    for (const share of [0.86, 0.78, 0.7, 0.93, 0.62]) {
      const point = nearest(profile, thickness * share);
      const near = [share - 0.04, share, share + 0.04].map((at) => nearest(profile, thickness * at)!);
      if (!point) return [];
      const own = near.map((one) => xOf(one[key]));
      const foreign = near.map((one) => xOf(one[other]));
      const fits = (side: 1 | -1): boolean => {
        const from = side > 0 ? Math.max(...own) : Math.min(...own) - room;
        const to = from + room;
        return from >= 0 && to <= width && foreign.every((x) => x < from - 2 || x > to + 2);
      };
      const outer: 1 | -1 = point[key] >= point[other] ? 1 : -1;
      const side = fits(outer) ? outer : fits(-outer as 1 | -1) ? (-outer as 1 | -1) : null;
      if (side === null) continue;
      return [
        word(tokens, text, {
          x: side > 0 ? Math.max(...near.map((one) => one[key])) : Math.min(...near.map((one) => one[key])),
          y: point.depth_m,
          xanchor: side > 0 ? "left" : "right",
          xshift: 6 * side,
          yanchor: "middle",
          font: { family: tokens.font, size: tokens.label_px, color, weight: 600 },
        }),
      ];
    }
    return [];
  };
  return [
    ...put("dew point", "dew", "t", lineStyle("dewPoint", tokens).color),
    ...put("temperature", "t", "dew", tokens.ink),
  ];
}

const wordRoom = (text: string, tokens: ChartTokens): number => text.length * tokens.label_px * 0.55;
