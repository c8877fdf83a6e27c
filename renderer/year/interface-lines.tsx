import { useMemo, type ReactNode } from "react";
import type { RunResult } from "../../solver/index.ts";
import { dayName, type TimeScale } from "../plots/calendar.ts";
import type { Frame } from "../plots/chart-layout.ts";
import { Figure } from "../plots/figure.tsx";
import { linesChart, type Limit, type YearLine } from "../plots/lines-chart.ts";
import { lineStyle, type LineStyle } from "../plots/line-styles.ts";
import { metric, quantityUnit, shown, temperature, type ShownUnits } from "../plots/quantities.ts";
import { highest, lowest, type Quantity } from "../plots/series.ts";
import type { DrawnWall } from "../plots/section-strip.tsx";
import { TimeChart } from "../plots/time-chart.tsx";
import { useChartTokens, type ChartTokens } from "../plots/tokens.ts";
import { everyInterface, placeLines, type Place, type PlaceLine } from "./places.ts";

const quantityWords: Record<Quantity, string> = {
  temperature: "Temperature",
  humidity: "Relative humidity",
  moisture: "Moisture content",
};
const quantities = ["moisture", "humidity", "temperature"] as const;

export interface InterfaceLinesProps {
  readonly result: RunResult | null;
  readonly wall: DrawnWall;
  readonly places: readonly Place[];
  readonly place: string;
  readonly onPlace: (place: string) => void;
  readonly quantity: Quantity;
  readonly onQuantity: (quantity: Quantity) => void;
  readonly time: TimeScale;
  readonly day: number;
  readonly onDay: (day: number) => void;
  readonly units: ShownUnits;
  /** Of the chart with its ticks; `left` is what stands left of the year's own edge. */
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly faded: boolean;
  readonly fileName: string;
}

/** Limits of a place by common practice: wood under 16 % is at ease, over 20 % mould and rot may start; 80 % on a surface; freezing. */
function limitsOf(quantity: Quantity, isWood: boolean, units: ShownUnits): Limit[] {
  if (quantity === "humidity") return [{ at: 80, words: "80 %" }];
  if (quantity === "temperature") return [{ at: temperature(0, units), words: "freezing" }];
  return isWood
    ? [
        { at: 16, words: "16, at ease" },
        { at: 20, words: "20, look closely" },
      ]
    : [];
}

function atLeast(quantity: Quantity, isWood: boolean, units: ShownUnits): { from: number; to: number } {
  if (quantity === "humidity") return { from: 40, to: 100 };
  if (quantity === "temperature") return metric(units) ? { from: -5, to: 25 } : { from: 20, to: 80 };
  return isWood ? { from: 7.5, to: 21 } : { from: 0, to: 0.001 };
}

export function InterfaceLines(props: InterfaceLinesProps): React.JSX.Element {
  const { result, wall, places, place, quantity, time, day, onDay, units, width, height, left } = props;
  const tokens = useChartTokens();
  const here = places.find(({ id }) => id === place);
  const isWood = here?.isWood ?? false;
  const lines = useMemo(
    () => (result ? placeLines(wall, result, place, quantity) : []),
    [wall, result, place, quantity],
  );
  const frame = useMemo<Frame>(
    () => ({ width: width + left, height, left, right: 0, top: 4, bottom: 20 }),
    [width, height, left],
  );
  const { chart, drawn } = useMemo(() => {
    const drawn = yearLines(lines, quantity, isWood, units, tokens, here?.words ?? "");
    return {
      drawn,
      chart: linesChart({
        lines: drawn,
        limits: limitsOf(quantity, isWood, units),
        time,
        tokens,
        frame,
        foot: true,
        atLeast: atLeast(quantity, isWood, units),
        ticks: height > 180 ? 5 : 4,
        ...(isWood && quantity === "moisture" ? { step: 4 } : {}),
      }),
    };
  }, [lines, quantity, isWood, units, tokens, time, frame, height, here]);
  const unit = quantityUnit(quantity, isWood, units);
  const title =
    place === everyInterface
      ? `${quantityWords[quantity]} at every interface, ${unit}`
      : `${quantityWords[quantity]} of the ${here?.words ?? "layer"}, ${unit}`;
  const marks =
    place === everyInterface
      ? []
      : drawn.flatMap(({ days, wordColor }) =>
          day < days.length ? [{ y: chart.yOf(days[day]!), color: wordColor }] : [],
        );
  return (
    <Figure
      title={title}
      summary={summaryOf(drawn, time, quantity, unit)}
      table={() => ({
        columns: ["Date", ...drawn.map(({ words }) => `${words}, ${unit}`)],
        rows: Array.from({ length: Math.ceil((drawn[0]?.days.length ?? 0) / 7) }, (_, week) => [
          dayName(time, 7 * week),
          ...drawn.map(({ days }) => days[7 * week]!.toFixed(1)),
        ]),
      })}
      beside={<Pickers {...props} />}
      className={props.faded ? "lines-figure faded" : "lines-figure"}
      fileName={props.fileName}
    >
      {(keepPicture) => (
        <div className="hung" style={{ marginLeft: -left }}>
          <TimeChart
            frame={frame}
            time={time}
            day={day}
            onDay={onDay}
            data={chart.data}
            layout={chart.layout}
            keepPicture={keepPicture}
            marks={marks}
            withCursor={drawn.length > 0}
          />
        </div>
      )}
    </Figure>
  );
}

function Pickers({ places, place, onPlace, quantity, onQuantity }: InterfaceLinesProps): ReactNode {
  return (
    <span className="choice">
      <span className="choice-lead" aria-hidden="true">
        show
      </span>
      <span role="radiogroup" aria-label="Quantity" className="choice-group">
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
      <select
        className="place-select"
        aria-label="Place"
        value={place}
        onChange={(event) => onPlace(event.target.value)}
      >
        {places.map(({ id, words }) => (
          <option key={id} value={id}>
            {words}
          </option>
        ))}
      </select>
    </span>
  );
}

const rotation = ["solid", "9px,4px", "2px,2.5px", "10px,3px,2px,3px"];

function styleOf(
  line: PlaceLine,
  index: number,
  count: number,
  tokens: ChartTokens,
): { style: LineStyle; color: string } {
  if (line.role !== "interface") {
    const style = lineStyle(line.role, tokens);
    return { style, color: style.color };
  }
  // From the weather's colour to the room's, ink between; neighbours never share a dash.
  const share = count > 1 ? index / (count - 1) : 0;
  const color = share < 0.34 ? tokens.outside : share > 0.66 ? tokens.inside : tokens.ink;
  return { style: { color, width: 1.5, dash: rotation[index % rotation.length]! }, color };
}

function yearLines(
  lines: readonly PlaceLine[],
  quantity: Quantity,
  isWood: boolean,
  units: ShownUnits,
  tokens: ChartTokens,
  place: string,
): YearLine[] {
  return lines.map((line, index) => {
    const { style, color } = styleOf(line, index, lines.length, tokens);
    const wood = line.probe.woodDensity_kgm3 !== null && isWood;
    return {
      words: line.role === "whole" && place === "sheathing" ? "whole sheathing" : line.words,
      days: line.days.map((value) => shown(quantity, wood, value, units)),
      style,
      wordColor: color,
    };
  });
}

function summaryOf(lines: readonly YearLine[], time: TimeScale, quantity: Quantity, unit: string): string {
  const parts = lines.flatMap(({ words, days }) => {
    const peak = quantity === "temperature" ? lowest(days) : highest(days);
    return peak
      ? [
          `${words} ${quantity === "temperature" ? "falls to" : "peaks at"} ${peak.value.toFixed(1)} ${unit} on ${dayName(time, peak.day)}`,
        ]
      : [];
  });
  return parts.length > 0
    ? `${parts.join("; ").replace(/^./, (first) => first.toUpperCase())}.`
    : "Nothing has been computed yet.";
}
