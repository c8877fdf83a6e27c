import { metrePerInch, rsiPerR } from "../../../solver/index.ts";
import {
  acrossAt,
  chartLayout,
  plainAxis,
  word,
  type Annotation,
  type Frame,
  type Shape,
} from "../../plots/chart-layout.ts";
import { placeLabels, wordsWidth } from "../../plots/label-places.ts";
import { niceRange } from "../../plots/nice-range.ts";
import type { PlotData, PlotLayout } from "../../plots/plot.tsx";
import type { ChartTokens } from "../../plots/tokens.ts";
import type { Units } from "../../state/index.ts";
import { kindText, kindWords } from "../parts/finding-words.ts";
import type { CurvePoint } from "./view-model.ts";

/** A line beside the asked one: the same question of a drier or damper room. */
export interface BesideLine {
  readonly words: string;
  readonly side: "drier" | "damper";
  readonly points: readonly CurvePoint[];
}

export interface CurveInput {
  readonly kind: string;
  readonly points: readonly CurvePoint[];
  readonly beside: readonly BesideLine[];
  readonly limit: number | null;
  /** Thickness from which the limit of this kind is kept; null or 0: no mark. */
  readonly needed_m: number | null;
  readonly board_m: number;
  readonly code: { readonly thickness_m: number; readonly words: string } | null;
  readonly conductivity_WmK: number | null;
  readonly words: string;
  /** Right end of the thickness axis [m]. */
  readonly axis_m: number;
  readonly units: Units;
  readonly tokens: ChartTokens;
  readonly frame: Frame;
}

/** Response over thickness, the limit, what is needed and what a stock board leaves in hand. */
export function curveChart(input: CurveInput): { readonly data: PlotData[]; readonly layout: Partial<PlotLayout> } {
  const { points, beside, kind, limit, tokens, frame, units, axis_m } = input;
  const { shown } = kindWords(kind);
  const y = (value: number): number => shown(value, units);
  const all = [...points, ...beside.flatMap((line) => line.points)].map(({ measured }) => y(measured));
  const seen = limit === null ? all : [...all, y(limit)];
  const range = niceRange(Math.min(...seen), Math.max(...seen), 6);
  const room = 0.06 * (range.to - range.from);
  const foot = range.from - room;
  const board = points.find(({ thickness_m }) => Math.abs(thickness_m - input.board_m) < 1e-4);
  const needed_m = input.needed_m !== null && input.needed_m > 0 && limit !== null ? input.needed_m : null;
  const marginAt = foot + 0.09 * (range.to - foot);
  const hair = { color: tokens.hair2, width: 1 };
  const line = (x0: number, x1: number, y0: number, y1: number, style: object): Shape => ({
    type: "line",
    xref: "x",
    yref: "y",
    x0,
    x1,
    y0,
    y1,
    line: style,
  });
  const tick_m = units === "si" ? 0.025 : metrePerInch;
  const ticks = Array.from({ length: Math.floor(axis_m / tick_m + 1e-6) + 1 }, (_, index) => index * tick_m);
  const top = resistanceTicks(input);

  const data = [
    ...beside.map(({ points: own, side }) =>
      drawn(own, y, {
        color: side === "damper" ? tokens.inside : tokens.outside,
        width: 1.8,
        dash: side === "damper" ? "9px,4px" : "2px,3px",
      }),
    ),
    drawn(points, y, { color: tokens.ink, width: 2.4, dash: "solid" }),
    marks(points, y, { size: 4, color: tokens.ink, line: { width: 0 } }),
    ...(needed_m === null || limit === null
      ? []
      : [
          marks([{ thickness_m: needed_m, measured: limit, holds: true }], y, {
            size: 9,
            color: tokens.paper,
            line: { color: tokens.ink, width: 1.6 },
          }),
        ]),
    ...(board ? [marks([board], y, { size: 10, color: tokens.pencil, line: { width: 0 } })] : []),
  ];
  const shapes: Shape[] = [
    ...range.ticks.map((tick) => acrossAt(tick, hair)),
    ...(limit === null ? [] : [acrossAt(y(limit), { color: tokens.ink, width: 1.2, dash: "2px,3px" })]),
    ...(needed_m === null || limit === null
      ? []
      : [line(needed_m, needed_m, foot, y(limit), { color: tokens.ink, width: 1.1, dash: "4px,3px" })]),
    ...(board
      ? [line(board.thickness_m, board.thickness_m, foot, y(board.measured), { color: tokens.pencil, width: 1.3 })]
      : []),
    ...(input.code && input.code.thickness_m <= axis_m
      ? [
          line(
            input.code.thickness_m,
            input.code.thickness_m,
            range.to + room,
            range.to + room - 0.1 * (range.to - foot),
            { color: tokens.ink, width: 1 },
          ),
        ]
      : []),
    ...(needed_m !== null && board && board.thickness_m > needed_m
      ? [line(needed_m, board.thickness_m, marginAt, marginAt, { color: tokens.ink, width: 1 })]
      : []),
  ];
  const rising = (points.at(-1)?.measured ?? 0) > (points[0]?.measured ?? 0);
  const note = { family: tokens.font, size: tokens.note_px, color: tokens.ink2 };
  const bold = (color: string) => ({ family: tokens.font, size: tokens.label_px, color, weight: 600 });
  const annotations: Annotation[] = [
    ...top.map(({ at_m, text }) =>
      word(tokens, text, { x: at_m, yref: "paper", y: 1, yanchor: "bottom", yshift: 2, font: note }, false),
    ),
    ...(limit === null
      ? []
      : [
          word(tokens, `limit, ${kindText(kind, limit, units)}`, {
            xref: "paper",
            x: 1,
            xanchor: "right",
            y: y(limit),
            yanchor: "bottom",
            yshift: 1,
            font: bold(tokens.ink2),
          }),
        ]),
    // Left of its mark on the side that the curve leaves free; the board stands right of it.
    ...(needed_m === null || limit === null
      ? []
      : [
          word(tokens, `${thicknessText(needed_m, units)} needed`, {
            x: needed_m,
            xanchor: needed_m < 0.22 * axis_m && !rising ? "left" : "right",
            xshift: needed_m < 0.22 * axis_m && !rising ? 8 : -8,
            y: y(limit),
            yanchor: rising || needed_m < 0.22 * axis_m ? "bottom" : "top",
            yshift: rising || needed_m < 0.22 * axis_m ? 3 : -3,
          }),
        ]),
    ...(board
      ? [
          word(tokens, kindText(kind, board.measured, units), {
            x: board.thickness_m,
            xanchor: "left",
            xshift: 8,
            y: y(board.measured),
            yanchor: rising ? "top" : "bottom",
            yshift: rising ? -2 : 2,
            font: bold(tokens.pencil),
          }),
        ]
      : []),
    ...(input.code && input.code.thickness_m <= axis_m
      ? [
          word(
            tokens,
            input.code.words,
            {
              x: input.code.thickness_m,
              xanchor: "left",
              xshift: 6,
              yref: "paper",
              y: 1,
              yanchor: "top",
              yshift: -2,
              font: note,
            },
            false,
          ),
        ]
      : []),
    ...(needed_m !== null && board && board.thickness_m > needed_m
      ? [
          word(tokens, thicknessText(board.thickness_m - needed_m, units), {
            x: board.thickness_m,
            xanchor: "left",
            xshift: 8,
            y: marginAt,
            yanchor: "middle",
          }),
        ]
      : []),
    ...lineWords(input, range.to + room, foot),
  ];
  return {
    data,
    layout: {
      ...chartLayout(tokens, frame),
      xaxis: {
        ...plainAxis,
        range: [0, axis_m],
        showline: true,
        linecolor: tokens.ink,
        linewidth: 1,
        ticks: "outside",
        ticklen: 4,
        tickcolor: tokens.ink,
        tickmode: "array",
        tickvals: ticks,
        ticktext: ticks.map((tick, index) => tickText(tick, index, units)),
        tickfont: { size: tokens.label_px, color: tokens.ink2 },
      },
      yaxis: {
        ...plainAxis,
        range: [foot, range.to + room],
        tickmode: "array",
        tickvals: range.ticks,
        ticktext: range.ticks.map((tick) => `${String(tick).replace("-", "−")}  `),
        tickfont: { size: tokens.label_px, color: tokens.ink2 },
      },
      shapes,
      annotations,
    },
  };
}

/** Words on the lines, each on its own, clear of the others and of the limit's. */
function lineWords(input: CurveInput, from: number, to: number): Annotation[] {
  const { kind, points, beside, limit, units, tokens, frame, axis_m, board_m } = input;
  const { shown } = kindWords(kind);
  const width = Math.max(1, frame.width - frame.left - frame.right);
  const height = Math.max(1, frame.height - frame.top - frame.bottom);
  const xOf = (thickness_m: number): number => (thickness_m / axis_m) * width;
  const yOf = (value: number): number => ((from - shown(value, units)) / (from - to)) * height;
  const lines = [
    { words: input.words, color: tokens.ink, points },
    ...beside.map((line) => ({
      words: line.words,
      color: line.side === "damper" ? tokens.inside : tokens.outside,
      points: line.points,
    })),
  ].filter((line) => line.points.length > 1);
  const tracks = lines.map((line) => {
    const steps = Array.from({ length: 80 }, (_, index) => (index / 79) * line.points.at(-1)!.thickness_m);
    return {
      x: steps.map(xOf),
      y: steps.map((thickness_m) => yOf(between(line.points, thickness_m))),
      width: wordsWidth(line.words, tokens.label_px),
    };
  });
  const chosen = points.find(({ thickness_m }) => Math.abs(thickness_m - board_m) < 1e-4);
  const taken = [
    {
      left: xOf(input.needed_m ?? 0) - 110,
      right: xOf(input.needed_m ?? 0),
      top: yOf(limit ?? 0) - 18,
      bottom: yOf(limit ?? 0) + 18,
    },
    { left: width - 90, right: width, top: yOf(limit ?? 0) - 16, bottom: yOf(limit ?? 0) },
    ...(chosen
      ? [
          {
            left: xOf(board_m) - 6,
            right: xOf(board_m) + 60,
            top: yOf(chosen.measured) - 20,
            bottom: yOf(chosen.measured) + 20,
          },
        ]
      : []),
  ];
  const places = placeLabels(tracks, { left: 0, right: width, top: 0, bottom: height }, tokens.label_px, taken);
  return lines.map(({ words, color }, index) =>
    word(tokens, words, {
      xref: "paper",
      yref: "paper",
      x: places[index]!.x / width,
      y: 1 - places[index]!.y / height,
      xanchor: "center",
      yanchor: "middle",
      font: { family: tokens.font, size: tokens.label_px, color, weight: 600 },
    }),
  );
}

/** Straight between the thicknesses that were run. */
function between(points: readonly CurvePoint[], thickness_m: number): number {
  const upper = points.findIndex((point) => point.thickness_m >= thickness_m - 1e-9);
  if (upper <= 0) return points[Math.max(0, upper)]!.measured;
  const [a, b] = [points[upper - 1]!, points[upper]!];
  return a.measured + ((b.measured - a.measured) * (thickness_m - a.thickness_m)) / (b.thickness_m - a.thickness_m);
}

const tickText = (tick_m: number, index: number, units: Units): string => {
  const value = units === "si" ? Math.round(tick_m * 1000) : Math.round(tick_m / metrePerInch);
  return index === 0 ? `0 ${units === "si" ? "mm" : "in."}` : String(value);
};

/** "2.05 in." or "52 mm": what is needed lies between boards, so it is no fraction. */
export const thicknessText = (thickness_m: number, units: Units): string =>
  units === "si" ? `${Math.round(thickness_m * 1000)} mm` : `${Number((thickness_m / metrePerInch).toFixed(2))} in.`;

function resistanceTicks({ conductivity_WmK, axis_m, units }: CurveInput): readonly { at_m: number; text: string }[] {
  if (conductivity_WmK === null) return [];
  const step_m2KW = units === "si" ? 1 : 5 * rsiPerR;
  const most = axis_m / conductivity_WmK;
  return Array.from({ length: Math.floor(most / step_m2KW) + 1 }, (_, index) => ({
    at_m: index * step_m2KW * conductivity_WmK,
    text: units === "si" ? `RSI ${index}` : `R-${5 * index}`,
  }));
}

const drawn = (points: readonly CurvePoint[], y: (value: number) => number, line: object): PlotData =>
  ({
    type: "scatter",
    mode: "lines",
    x: points.map(({ thickness_m }) => thickness_m),
    y: points.map(({ measured }) => y(measured)),
    line,
    hoverinfo: "skip",
  }) as unknown as PlotData;

const marks = (points: readonly CurvePoint[], y: (value: number) => number, marker: object): PlotData =>
  ({
    type: "scatter",
    mode: "markers",
    x: points.map(({ thickness_m }) => thickness_m),
    y: points.map(({ measured }) => y(measured)),
    marker,
    cliponaxis: false,
    hoverinfo: "skip",
  }) as unknown as PlotData;
