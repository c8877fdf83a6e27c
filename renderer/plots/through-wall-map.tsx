import { useMemo, type ReactNode } from "react";
import type { RunResult } from "../../solver/index.ts";
import { dayName, type TimeScale } from "./calendar.ts";
import type { Frame } from "./chart-layout.ts";
import { Figure } from "./figure.tsx";
import { mapChart, mapFields, type MapQuantity } from "./map-chart.ts";
import { MapStateOverlay, type MapState } from "./map-states.tsx";
import { degreeSign, temperature, waterInVolume, waterInVolumeUnit, type ShownUnits } from "./quantities.ts";
import { shortName } from "./section-strip.tsx";
import type { TableTwin } from "./table-twin.ts";
import { TimeChart } from "./time-chart.tsx";
import { useChartTokens } from "./tokens.ts";
import { lowerFirst, type LayerSpan } from "./wall-depths.ts";

const titles: Record<MapQuantity, string> = {
  humidity: "Relative humidity through the wall, daily mean",
  temperature: "Temperature through the wall, daily mean",
  water: "Water held through the wall, daily mean",
};
const quantities = ["humidity", "temperature", "water"] as const;

export interface ThroughWallMapProps {
  readonly result: RunResult | null;
  readonly spans: readonly LayerSpan[];
  readonly time: TimeScale;
  readonly quantity: MapQuantity;
  /** Absent: the figure offers no choice. */
  readonly onQuantity?: (quantity: MapQuantity) => void;
  readonly units: ShownUnits;
  readonly width: number;
  /** Of the map itself; months stand below it if `foot`. */
  readonly height: number;
  readonly foot: number;
  readonly tail?: number;
  readonly day: number;
  readonly onDay: (day: number) => void;
  readonly state: MapState;
  readonly titled?: boolean;
  /** Set before the title of an untitled map: "A, ". */
  readonly titlePrefix?: string;
  readonly fileName: string;
}

/** The whole year of a wall in one picture: depth against date, one fixed scale of tone. */
export function ThroughWallMap(props: ThroughWallMapProps): React.JSX.Element {
  const { result, spans, time, quantity, onQuantity, units, width, height, foot, day, onDay, state } = props;
  const tokens = useChartTokens();
  const fields = useMemo(() => (result && result.map.days > 0 ? mapFields(result, spans) : null), [result, spans]);
  const frame = useMemo<Frame>(
    () => ({ width, height: height + foot, left: 0, right: 0, top: 0, bottom: foot }),
    [width, height, foot],
  );
  const chart = useMemo(
    () =>
      mapChart({ fields, spans, time, quantity, units, tokens, frame, foot: foot > 0, labels: state.kind !== "stale" }),
    [fields, spans, time, quantity, units, tokens, frame, foot, state.kind],
  );
  const title = `${props.titlePrefix ?? ""}${titles[quantity]}`;
  return (
    <Figure
      title={title}
      titled={props.titled ?? true}
      summary={result ? mapSummary(result, quantity, spans, time, units) : "Nothing has been computed yet."}
      table={() => mapTable(result, quantity, spans, time, units)}
      fileName={props.fileName}
      className="map-figure"
      {...(onQuantity ? { beside: <Choice quantity={quantity} onQuantity={onQuantity} /> } : {})}
    >
      {(keepPicture) => (
        <TimeChart
          frame={frame}
          time={time}
          day={day}
          onDay={onDay}
          {...chart}
          keepPicture={keepPicture}
          tail={props.tail ?? 0}
          withCursor={state.kind !== "empty"}
        >
          <MapStateOverlay state={state} frame={frame} />
        </TimeChart>
      )}
    </Figure>
  );
}

function Choice({
  quantity,
  onQuantity,
}: {
  quantity: MapQuantity;
  onQuantity: (quantity: MapQuantity) => void;
}): ReactNode {
  return (
    <span className="choice" role="radiogroup" aria-label="Show">
      <span className="choice-lead" aria-hidden="true">
        show
      </span>
      {quantities.map((candidate) => (
        <button
          key={candidate}
          type="button"
          role="radio"
          aria-checked={candidate === quantity}
          className="verb"
          onClick={() => onQuantity(candidate)}
        >
          {candidate}
        </button>
      ))}
    </span>
  );
}

interface Wettest {
  readonly day: number;
  readonly depth: number;
  readonly value: number;
}

function extreme(result: RunResult, values: Float32Array): Wettest | null {
  let best: Wettest | null = null;
  const count = result.map.depth_m.length;
  for (let i = 0; i < values.length; i++) {
    if (Number.isFinite(values[i]!) && (!best || values[i]! > best.value))
      best = { day: Math.floor(i / count), depth: result.map.depth_m[i % count]!, value: values[i]! };
  }
  return best;
}

function layerAt(spans: readonly LayerSpan[], depth_m: number): string {
  const solid = spans.filter(({ from_m, to_m }) => to_m > from_m);
  const layer = (solid.find(({ to_m }) => depth_m <= to_m + 1e-9) ?? solid.at(-1))?.layer;
  return layer ? `the ${lowerFirst(shortName(layer.name))}` : "the wall";
}

export function mapSummary(
  result: RunResult,
  quantity: MapQuantity,
  spans: readonly LayerSpan[],
  time: TimeScale,
  units: ShownUnits,
): string {
  const { map } = result;
  const values = quantity === "humidity" ? map.RH : quantity === "temperature" ? map.T_C : map.w_kgm3;
  const top = extreme(result, values);
  if (!top) return "Nothing has been computed yet.";
  const where = `in ${layerAt(spans, top.depth)} on ${dayName(time, top.day)}`;
  if (quantity === "humidity")
    return `The wettest daily mean is ${(100 * top.value).toFixed(0)} % relative humidity, ${where}.`;
  if (quantity === "temperature")
    return `The warmest daily mean is ${temperature(top.value, units).toFixed(0)} ${degreeSign(units)}, ${where}.`;
  return `The most water held is ${waterInVolume(top.value, units).toFixed(1)} ${waterInVolumeUnit(units)}, ${where}.`;
}

/** One row a week, one column a layer: the mean over the layer's depth. */
export function mapTable(
  result: RunResult | null,
  quantity: MapQuantity,
  spans: readonly LayerSpan[],
  time: TimeScale,
  units: ShownUnits,
): TableTwin {
  const solid = spans.filter(({ from_m, to_m }) => to_m > from_m);
  const unit =
    quantity === "humidity" ? "% RH" : quantity === "temperature" ? degreeSign(units) : waterInVolumeUnit(units);
  const columns = ["Date", ...solid.map(({ layer }) => `${shortName(layer.name)}, ${unit}`)];
  if (!result) return { columns, rows: [] };
  const { map } = result;
  const values = quantity === "humidity" ? map.RH : quantity === "temperature" ? map.T_C : map.w_kgm3;
  const count = map.depth_m.length;
  const rows: string[][] = [];
  for (let day = 0; day < map.days; day += 7) {
    rows.push([
      dayName(time, day),
      ...solid.map(({ from_m, to_m }) => {
        let sum = 0;
        let parts = 0;
        for (let column = 0; column < count; column++) {
          const depth = map.depth_m[column]!;
          if (depth < from_m - 1e-9 || depth > to_m + 1e-9) continue;
          sum += values[day * count + column]!;
          parts++;
        }
        if (parts === 0) return "";
        const mean = sum / parts;
        return quantity === "humidity"
          ? (100 * mean).toFixed(0)
          : quantity === "temperature"
            ? temperature(mean, units).toFixed(1)
            : waterInVolume(mean, units).toFixed(2);
      }),
    ]);
  }
  return { columns, rows };
}
