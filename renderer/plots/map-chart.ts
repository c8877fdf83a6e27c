import type { RunResult } from "../../solver/index.ts";
import {
  timeFoot,
  chartLayout,
  plainAxis,
  word,
  type Annotation,
  type Frame,
  type XAxis,
  type Shape,
} from "./chart-layout.ts";
import type { TimeScale } from "./calendar.ts";
import { isolines, labelPlace, reach_days, type Isoline } from "./isolines.ts";
import type { PlotData, PlotLayout } from "./plot.tsx";
import { waterInVolume, waterInVolumeUnit, degreeSign, temperature, type ShownUnits } from "./quantities.ts";
import { colourRamp } from "./scales.ts";
import { evenField, smoothedInTime, type EvenField } from "./through-wall.ts";
import type { ChartTokens } from "./tokens.ts";
import { behindVentilation_m, type LayerSpan } from "./wall-depths.ts";

export type MapQuantity = "humidity" | "temperature" | "water";

/** What a map's colours mean: fixed ends, so that one tone means one thing on every wall and every day. */
export interface MapScale {
  readonly name: "stain" | "frost";
  readonly from: number;
  readonly to: number;
  /** From the stored value to the number that is spread over the scale. */
  readonly spread: (stored: number) => number;
  readonly ticks: (units: ShownUnits) => readonly { at: number; text: string }[];
}

const waterTicks_kgm3 = [1, 10, 50, 500];
export const mapScales: Record<MapQuantity, MapScale> = {
  humidity: {
    name: "stain",
    from: 40,
    to: 100,
    spread: (rh) => 100 * rh,
    ticks: () => [40, 60, 80, 100].map((at) => ({ at, text: at === 100 ? "100 % RH" : String(at) })),
  },
  temperature: {
    name: "frost",
    from: -20,
    to: 40,
    spread: (t) => t,
    ticks: (units) =>
      [-20, 0, 20, 40].map((at) => ({
        at,
        text:
          at === 40
            ? `${Math.round(temperature(at, units))} ${degreeSign(units)}`
            : String(Math.round(temperature(at, units))).replace("-", "−"),
      })),
  },
  water: {
    name: "stain",
    from: 0,
    to: Math.log10(500),
    spread: (w) => Math.log10(Math.max(w, 1)),
    ticks: (units) =>
      waterTicks_kgm3.map((w) => {
        const value = waterInVolume(w, units);
        return {
          at: Math.log10(w),
          text: `${value < 1 ? value.toFixed(2) : value < 10 && value % 1 > 0.05 ? value.toFixed(1) : value.toFixed(0)}${w === 500 ? ` ${waterInVolumeUnit(units)}` : ""}`,
        };
      }),
  },
};

const rows = 240;
const smoothing_days = 7;

export interface MapFields {
  readonly humidity: EvenField;
  readonly temperature: EvenField;
  readonly water: EvenField;
  readonly calmHumidity: EvenField;
  readonly calmTemperature: EvenField;
}

export function mapFields(result: RunResult, spans: readonly LayerSpan[]): MapFields {
  const humidity = evenField(result.map, result.map.RH, spans, rows);
  const temperature = evenField(result.map, result.map.T_C, spans, rows);
  return {
    humidity,
    temperature,
    water: evenField(result.map, result.map.w_kgm3, spans, rows),
    calmHumidity: smoothedInTime(humidity, smoothing_days),
    calmTemperature: smoothedInTime(temperature, smoothing_days),
  };
}

export interface MapChartInput {
  readonly fields: MapFields | null;
  readonly spans: readonly LayerSpan[];
  readonly time: TimeScale;
  readonly quantity: MapQuantity;
  readonly units: ShownUnits;
  readonly tokens: ChartTokens;
  readonly frame: Frame;
  /** Months under it, or a bare lower edge. */
  readonly foot: boolean;
  readonly labels: boolean;
}

/** The through-wall map as a chart: depth against date, isolines of the seven-day mean, a line at every layer's face. */
export function mapChart(input: MapChartInput): { data: PlotData[]; layout: Partial<PlotLayout> } {
  const { fields, spans, time, quantity, tokens, frame } = input;
  const thickness = spans.at(-1)?.to_m ?? 1;
  const data: PlotData[] = [];
  const annotations: Annotation[] = [];
  if (fields) {
    data.push(heat(fields[quantity], quantity, thickness, tokens));
    const lines = linesOf(fields, quantity, spans, thickness);
    for (const line of lines) data.push(...traces(line, thickness, tokens));
    if (input.labels) annotations.push(...words(lines, input, thickness));
  }
  const foot = input.foot
    ? timeFoot(tokens, time)
    : { xaxis: { ...plainAxis, range: [0, time.days], showticklabels: false }, shapes: [] as Shape[] };
  const face = (depth_m: number): Shape => ({
    type: "line",
    xref: "paper",
    x0: 0,
    x1: 1,
    yref: "y",
    y0: depth_m,
    y1: depth_m,
    line: { color: tokens.ink, width: 0.6 },
    opacity: 0.45,
  });
  const inner = spans.filter(({ from_m, to_m }) => to_m > from_m).slice(0, -1);
  return {
    data,
    layout: {
      ...chartLayout(tokens, frame),
      xaxis: { ...foot.xaxis } as XAxis,
      yaxis: { ...plainAxis, range: [thickness, 0], showticklabels: false },
      shapes: [...foot.shapes, ...inner.map(({ to_m }) => face(to_m))],
      annotations,
    },
  };
}

function heat(field: EvenField, quantity: MapQuantity, thickness: number, tokens: ChartTokens): PlotData {
  const scale = mapScales[quantity];
  const z = Array.from({ length: field.rows }, (_, row) => {
    const values = new Array<number>(field.days);
    for (let day = 0; day < field.days; day++) values[day] = scale.spread(field.values[row * field.days + day]!);
    return values;
  });
  return {
    type: "heatmap",
    z,
    x0: 0.5,
    dx: 1,
    y0: (0.5 / field.rows) * thickness,
    dy: thickness / field.rows,
    zmin: scale.from,
    zmax: scale.to,
    zauto: false,
    zsmooth: "fast",
    colorscale: colourRamp(scale.name, tokens.theme),
    showscale: false,
    hoverinfo: "skip",
  } as unknown as PlotData;
}

interface KindOfLine {
  readonly kind: "60" | "80" | "frost";
  readonly parts: readonly Isoline[];
}

function linesOf(
  fields: MapFields,
  quantity: MapQuantity,
  spans: readonly LayerSpan[],
  thickness: number,
): KindOfLine[] {
  const long = (parts: readonly Isoline[], days: number): Isoline[] => parts.filter((part) => reach_days(part) >= days);
  const frost: KindOfLine = { kind: "frost", parts: long(isolines(fields.calmTemperature, 0), 5) };
  if (quantity !== "humidity") return [frost];
  // In and outside of a vented gap humidity is the weather's, and its isolines would only tangle.
  const fromRow = Math.ceil((behindVentilation_m(spans.map(({ layer }) => layer)) / thickness) * fields.humidity.rows);
  return [
    { kind: "60", parts: long(isolines(fields.calmHumidity, 0.6, fromRow), 14) },
    { kind: "80", parts: long(isolines(fields.calmHumidity, 0.8, fromRow), 7) },
    frost,
  ];
}

function traces(line: KindOfLine, thickness: number, tokens: ChartTokens): PlotData[] {
  const x: (number | null)[] = [];
  const y: (number | null)[] = [];
  for (const part of line.parts) {
    part.x.forEach((day, i) => {
      x.push(day);
      y.push((part.y[i]! / rows) * thickness);
    });
    x.push(null);
    y.push(null);
  }
  const trace = (color: string, width: number, dash = "solid"): PlotData =>
    ({
      type: "scatter",
      mode: "lines",
      x,
      y,
      line: { color, width, dash, simplify: true },
      hoverinfo: "skip",
      cliponaxis: true,
    }) as unknown as PlotData;
  if (line.kind === "60") return [trace(tokens.ink, 0.7)];
  if (line.kind === "80") return [trace(tokens.theme === "dark" ? "#000000" : tokens.paper, 1.4)];
  return [trace(tokens.paper, 3), trace(tokens.ink, 1.3, "5px,3px")];
}

function words(
  lines: readonly KindOfLine[],
  { time, units, tokens, frame }: MapChartInput,
  thickness: number,
): Annotation[] {
  const pixelsPerDay = (frame.width - frame.left - frame.right) / time.days;
  const rowsPerPixel = rows / (frame.height - frame.top - frame.bottom);
  const used: { x: number; y: number }[] = [];
  return lines.flatMap(({ kind, parts }) => {
    const text = kind === "frost" ? `${Math.round(temperature(0, units))} ${degreeSign(units)}` : `${kind} %`;
    const longest = [...parts].sort((a, b) => reach_days(b) - reach_days(a))[0];
    const place =
      longest &&
      labelPlace(longest, 40 / pixelsPerDay, time.days, used, 14 * rowsPerPixel, [
        ...lines.filter((line) => line.kind !== kind).flatMap((line) => line.parts),
        ...parts.filter((part) => part !== longest),
      ]);
    if (!place) return [];
    used.push(place);
    const color = kind === "80" ? (tokens.theme === "dark" ? "#000000" : tokens.paper) : tokens.ink;
    const below = place.high < rows - 20 * rowsPerPixel;
    return [
      word(tokens, text, {
        x: place.x,
        y: ((below ? place.high : place.low) / rows) * thickness,
        yshift: below ? -9 : 9,
        xanchor: "center",
        yanchor: "middle",
        font: { family: tokens.font, size: tokens.note_px, color, weight: 600 },
      }),
    ];
  });
}
