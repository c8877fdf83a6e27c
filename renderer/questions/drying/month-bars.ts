import type { WaterBudget } from "../../../solver/index.ts";
import { monthNames } from "../../plots/calendar.ts";
import { chartLayout, plainAxis, word, type Frame } from "../../plots/chart-layout.ts";
import type { PlotData, PlotLayout } from "../../plots/plot.tsx";
import { waterOnArea } from "../../plots/quantities.ts";
import type { ChartTokens } from "../../plots/tokens.ts";
import type { Units } from "../../state/index.ts";

/** Largest monthly amounts to each side [kg/m2], one scale for all options. */
export interface WaterScale {
  readonly up: number;
  readonly down: number;
}

export function commonScale(budgets: readonly (WaterBudget | null)[]): WaterScale {
  const most = (rows: (budget: WaterBudget) => readonly number[]): number =>
    Math.max(0, ...budgets.flatMap((budget) => (budget === null ? [] : rows(budget).map(Math.abs))));
  const up = most(({ outward }) => outward);
  const down = most(({ inward }) => inward);
  const least = 0.15 * Math.max(up, down, 1e-6);
  return { up: Math.max(up, least), down: Math.max(down, least) };
}

/** Water by month about a layer: up is outside, down is the room; filled leaves, hollow arrives. */
export function monthBars(
  budget: WaterBudget,
  scale: WaterScale,
  frame: Frame,
  last: boolean,
  units: Units,
  tokens: ChartTokens,
): { readonly data: PlotData[]; readonly layout: Partial<PlotLayout> } {
  const places = budget.months.map((_, place) => place);
  const bars = (flows: readonly number[], sign: 1 | -1, colour: string): PlotData =>
    ({
      type: "bar",
      x: places,
      y: flows.map((flow) => sign * Math.abs(flow)),
      width: 0.62,
      marker: {
        color: flows.map((flow) => (flow > 0 ? colour : tokens.paper)),
        line: { color: colour, width: 1.3 },
      },
      hoverinfo: "skip",
    }) as unknown as PlotData;
  const peak = (flows: readonly number[]): number =>
    flows.reduce((best, flow, place) => (flow > (flows[best] ?? 0) ? place : best), 0);
  const amountAt = (flows: readonly number[], sign: 1 | -1, colour: string) => {
    const place = peak(flows);
    const flow = flows[place] ?? 0;
    return flow <= 0
      ? []
      : [
          word(tokens, waterOnArea(flow, units).toFixed(units === "si" ? 0 : 2), {
            x: place,
            y: sign * flow,
            yanchor: sign > 0 ? "bottom" : "top",
            font: { family: tokens.font, size: tokens.note_px, color: colour, weight: 600 },
          }),
        ];
  };
  return {
    data: [bars(budget.outward, 1, tokens.outside), bars(budget.inward, -1, tokens.inside)],
    layout: {
      ...chartLayout(tokens, frame),
      barmode: "overlay",
      xaxis: {
        ...plainAxis,
        range: [-0.6, budget.months.length - 0.4],
        tickmode: "array",
        tickvals: places,
        ticktext: budget.months.map((month) => monthNames[month]!.slice(0, 3)),
        showticklabels: last,
        tickfont: { size: tokens.label_px, color: tokens.ink2 },
      },
      yaxis: { ...plainAxis, range: [-1.25 * scale.down, 1.25 * scale.up], showticklabels: false },
      shapes: [
        { type: "line", xref: "paper", yref: "y", x0: 0, x1: 1, y0: 0, y1: 0, line: { color: tokens.ink, width: 2 } },
      ],
      annotations: [...amountAt(budget.outward, 1, tokens.outside), ...amountAt(budget.inward, -1, tokens.inside)],
    },
  };
}
