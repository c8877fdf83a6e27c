import { useRef, type PointerEvent, type ReactNode } from "react";
import type { Frame } from "./chart-layout.ts";
import { wordsWidth, type Box } from "./label-places.ts";
import { placeReadings } from "./reading-places.ts";
import { dayName, dayNameLong, type TimeScale } from "./calendar.ts";
import { Plot, type PlotData, type PlotLayout } from "./plot.tsx";
import type { SvgMaker } from "./figure.tsx";

export interface CursorMark {
  /** Height within the plot, 0 at its top [px]. */
  readonly y: number;
  readonly color: string;
  readonly filled?: boolean;
  /** Value written beside it. */
  readonly text?: string;
}

export interface TimeChartProps {
  readonly frame: Frame;
  readonly time: TimeScale;
  readonly day: number;
  readonly onDay: (day: number) => void;
  readonly data: PlotData[];
  readonly layout: Partial<PlotLayout>;
  readonly keepPicture: (svg: SvgMaker) => void;
  readonly marks?: readonly CursorMark[];
  /** What the chart's words cover: readings keep clear of it. */
  readonly wordBoxes?: readonly Box[];
  /** How far the cursor runs on below the plot [px]. */
  readonly tail?: number;
  readonly withCursor?: boolean;
  /** Drawn over the chart and under the cursor, in the plot's own pixels. */
  readonly children?: ReactNode;
}

/** A chart over the year with the date cursor on it; pressing or dragging on it moves the date. The chart itself is not redrawn. */
export function TimeChart(props: TimeChartProps): React.JSX.Element {
  const {
    frame,
    time,
    day,
    onDay,
    data,
    layout,
    keepPicture,
    marks = [],
    wordBoxes = [],
    tail = 0,
    withCursor = true,
    children,
  } = props;
  const overlay = useRef<SVGSVGElement>(null);
  const width = frame.width - frame.left - frame.right;
  const height = frame.height - frame.top - frame.bottom;
  const x = Math.round(((day + 0.5) / time.days) * width) + 0.5;
  const readings = placeReadings(
    marks.map(({ y, text }) => ({ y, width: text ? wordsWidth(text, reading_px) : 0 })),
    x,
    { width, height },
    wordBoxes,
  );
  const moveTo = (event: PointerEvent): void => {
    const from = overlay.current!.getBoundingClientRect().left;
    onDay(Math.min(time.days - 1, Math.max(0, Math.floor(((event.clientX - from) / width) * time.days))));
  };
  return (
    <div className="time-chart" style={{ width: frame.width, height: frame.height }}>
      <Plot data={data} layout={layout} onDrawn={keepPicture} />
      {width > 0 && height > 0 && (
        <svg
          ref={overlay}
          className="time-overlay"
          style={{ left: frame.left, top: frame.top }}
          width={width}
          height={height}
          aria-hidden="true"
          onPointerDown={(event) => {
            event.currentTarget.setPointerCapture(event.pointerId);
            moveTo(event);
          }}
          onPointerMove={(event) => {
            if (event.buttons & 1) moveTo(event);
          }}
        >
          {children}
          {withCursor && <line className="cursor-line" x1={x} x2={x} y1={0} y2={height + tail} />}
          {withCursor &&
            marks.map((mark, index) => (
              <g key={index}>
                <circle
                  cx={x}
                  cy={mark.y}
                  r={3}
                  stroke={mark.color}
                  className={mark.filled ? "cursor-dot cursor-dot-filled" : "cursor-dot"}
                  style={mark.filled ? { fill: mark.color } : undefined}
                />
                {mark.text && (
                  <text
                    x={readings[index]!.x}
                    textAnchor={readings[index]!.anchor}
                    y={readings[index]!.y}
                    className="cursor-words"
                  >
                    {mark.text}
                  </text>
                )}
              </g>
            ))}
        </svg>
      )}
    </div>
  );
}

/** Of the readings' type [px]; a little wide is safe. */
const reading_px = 12;

/** The date under the cursor, on its rule: arrows move a day, page keys a month, Home and End to the year's ends. */
export function DateSlider({
  time,
  day,
  onDay,
}: {
  time: TimeScale;
  day: number;
  onDay: (day: number) => void;
}): React.JSX.Element {
  return (
    <div className="date-slider">
      <input
        type="range"
        min={0}
        max={time.days - 1}
        step={1}
        value={day}
        aria-label="Date under the cursor"
        aria-valuetext={dayNameLong(time, day)}
        onChange={(event) => onDay(Number(event.target.value))}
        onKeyDown={(event) => {
          const step = event.key === "PageUp" ? 30 : event.key === "PageDown" ? -30 : 0;
          if (step === 0) return;
          event.preventDefault();
          onDay(Math.min(time.days - 1, Math.max(0, day + step)));
        }}
      />
      <span
        className="date-tag"
        style={{ left: `clamp(27px, ${((day + 0.5) / time.days) * 100}%, calc(100% - 27px))` }}
        aria-hidden="true"
      >
        {dayName(time, day)}
      </span>
    </div>
  );
}
