import { useId } from "react";
import { setSelectedDay, useSelectedDay, type Units } from "../state/index.ts";
import { figure, rainText, share, temperatureFigure, temperatureText, temperatureUnit } from "../units/index.ts";
import type { ExposureSurvey } from "./survey.ts";
import { dateWords, monthsFrom } from "./time-axis.ts";
import "./year-strips.css";

interface Strip {
  readonly top: number;
  readonly height: number;
  readonly low: number;
  readonly high: number;
}

const axisHeight = 20;
const gapHeight = 26;

const round5 = (value: number, up: boolean): number => (up ? Math.ceil(value / 5) : Math.floor(value / 5)) * 5;

/** Straight lines from day to day, day d drawn at its middle. */
function line(values: ArrayLike<number>, x: (day: number) => number, y: (value: number) => number): string {
  let path = "";
  for (let day = 0; day < values.length; day++) {
    path += `${day === 0 ? "M" : "L"}${x(day + 0.5).toFixed(1)} ${y(values[day]!).toFixed(1)}`;
  }
  return path;
}

function band(
  low: ArrayLike<number>,
  high: ArrayLike<number>,
  x: (day: number) => number,
  y: (v: number) => number,
): string {
  const back = Array.from({ length: low.length }, (_, index) => {
    const day = low.length - 1 - index;
    return `L${x(day + 0.5).toFixed(1)} ${y(low[day]!).toFixed(1)}`;
  });
  return `${line(high, x, y)}${back.join("")}Z`;
}

function bars(
  values: ArrayLike<number>,
  x: (day: number) => number,
  y: (value: number) => number,
  width: number,
): string {
  let path = "";
  for (let day = 0; day < values.length; day++) {
    if (values[day]! > 0)
      path += `M${x(day + 0.5).toFixed(1)} ${y(0).toFixed(1)}V${Math.min(y(values[day]!), y(0) - 0.6).toFixed(1)}`;
  }
  return width > 0 ? path : "";
}

interface YearStripsProps {
  readonly survey: ExposureSurvey;
  readonly units: Units;
  readonly width: number;
  /** Left edge of time. */
  readonly left: number;
  readonly faceName: string;
  /** 1 at the usual window; more in a tall one. */
  readonly stretch: number;
}

/** Temperature, rain, sun and room humidity over the year on one time axis, with the shared date cursor. */
export function YearStrips({ survey, units, width, left, faceName, stretch }: YearStripsProps) {
  const day = useSelectedDay();
  const hatch = useId();
  const { startDay } = survey;
  const span = width - left;
  const x = (at: number): number => left + (at / 365) * span;
  const months = monthsFrom(startDay);

  const lowest = round5(Math.min(...survey.coldest_C), false);
  const highest = round5(Math.max(...survey.warmest_C), true);
  const mostRain = Math.max(...survey.rain_mm, 1);
  const mostSun = Math.max(...survey.sun_kWhm2, 1);
  const strips = stack(stretch, [
    { height: 116, low: lowest, high: highest },
    { height: 46, low: 0, high: mostRain },
    { height: 46, low: 0, high: mostSun },
    { height: 62, low: 0.1, high: 0.9 },
  ]);
  const [warm, wet, sunny, room] = strips as [Strip, Strip, Strip, Strip];
  const on = (strip: Strip) => (value: number) =>
    strip.top + strip.height - ((value - strip.low) / (strip.high - strip.low)) * strip.height;
  const bottom = room.top + room.height;
  const toTicks = units === "si" ? [-30, -20, -10, 0, 10, 20, 30, 40] : [-20, 0, 20, 40, 60, 80, 100];
  const celsiusOf = (value: number): number => (units === "si" ? value : (value - 32) / 1.8);
  const wideBar = Math.max(0.8, (span / 365) * 0.7);

  return (
    <figure className="year-strips" style={{ width }}>
      <svg width={width} height={bottom + axisHeight} role="img" aria-label={summary(survey, units)}>
        <defs>
          <pattern id={hatch} width="4" height="4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <path d="M0 0V4" className="strip-hatch" />
          </pattern>
        </defs>

        {strips.map((strip) => (
          <g key={strip.top}>
            {months.slice(1).map((month) => (
              <line
                key={month.from}
                className="strip-month"
                x1={x(month.from)}
                x2={x(month.from)}
                y1={strip.top}
                y2={strip.top + strip.height}
              />
            ))}
            <line
              className="strip-base"
              x1={left}
              x2={width}
              y1={strip.top + strip.height}
              y2={strip.top + strip.height}
            />
          </g>
        ))}

        <text className="strip-title" x={left} y={warm.top - 8}>
          Outdoor air, day by day
        </text>
        {toTicks
          .map((tick) => ({ tick, at: celsiusOf(tick) }))
          .filter(({ at }) => at >= warm.low && at <= warm.high)
          .map(({ tick, at }) => (
            <g key={tick}>
              <line className="strip-grid" x1={left} x2={width} y1={on(warm)(at)} y2={on(warm)(at)} />
              <text className="strip-tick" x={left - 8} y={on(warm)(at) + 4}>
                {figure(tick, 0)}
              </text>
            </g>
          ))}
        <text className="strip-tick" x={left - 8} y={warm.top - 6}>
          {temperatureUnit(units)}
        </text>
        {warm.low < 0 && <line className="strip-frost" x1={left} x2={width} y1={on(warm)(0)} y2={on(warm)(0)} />}
        <path d={band(survey.coldest_C, survey.warmest_C, x, on(warm))} fill={`url(#${hatch})`} />
        <path className="strip-mean" d={line(survey.mean_C, x, on(warm))} />
        <path className="strip-dew" d={line(survey.dewPoint_C, x, on(warm))} />
        <StripWord
          x={x(196)}
          y={on(warm)(survey.mean_C[196]!) - 14}
          text="mean, and coldest to warmest hour"
          className="word-mean"
        />
        <StripWord x={x(292)} y={on(warm)(survey.dewPoint_C[292]!) + 22} text="dew point" className="word-dew" />

        <text className="strip-title" x={left} y={wet.top - 8}>
          Rain, and what the wind drives onto the {faceName} face
        </text>
        <text className="strip-tick" x={left - 8} y={wet.top + 8}>
          {rainText(mostRain, units)}
        </text>
        <path className="strip-rain" strokeWidth={wideBar} d={bars(survey.rain_mm, x, on(wet), wideBar)} />
        <path className="strip-driven" strokeWidth={wideBar} d={bars(survey.drivingRain_kgm2, x, on(wet), wideBar)} />

        <text className="strip-title" x={left} y={sunny.top - 8}>
          Sun on the {faceName} face
        </text>
        <text className="strip-tick" x={left - 8} y={sunny.top + 8}>
          {figure(mostSun, 1)} kWh/m²
        </text>
        <path className="strip-sun" strokeWidth={wideBar} d={bars(survey.sun_kWhm2, x, on(sunny), wideBar)} />

        <text className="strip-title" x={left} y={room.top - 8}>
          Humidity of the room
        </text>
        {[0.2, 0.4, 0.6, 0.8].map((tick) => (
          <g key={tick}>
            <line className="strip-grid" x1={left} x2={width} y1={on(room)(tick)} y2={on(room)(tick)} />
            <text className="strip-tick" x={left - 8} y={on(room)(tick) + 4}>
              {share(tick)}
            </text>
          </g>
        ))}
        <path className="strip-room" d={line(survey.roomHumidity, x, on(room))} />

        {months.map((month) => (
          <text key={month.from} className="strip-month-name" x={x((month.from + month.to) / 2)} y={bottom + 15}>
            {month.to - month.from > 14 ? month.name : ""}
          </text>
        ))}

        <line className="strip-cursor" x1={x(day + 0.5)} x2={x(day + 0.5)} y1={warm.top - 4} y2={bottom + 4} />
        <rect
          className="strip-catch"
          x={left}
          y={warm.top}
          width={span}
          height={bottom - warm.top}
          onPointerDown={(event) => {
            event.currentTarget.setPointerCapture(event.pointerId);
            setSelectedDay(((event.nativeEvent.offsetX - left) / span) * 365 - 0.5);
          }}
          onPointerMove={(event) => {
            if (event.buttons > 0) setSelectedDay(((event.nativeEvent.offsetX - left) / span) * 365 - 0.5);
          }}
        />
      </svg>
      <div className="strip-slider" style={{ marginLeft: left }}>
        <input
          type="range"
          min={0}
          max={364}
          value={day}
          aria-label="Date"
          aria-valuetext={dateWords(startDay, day)}
          onChange={(event) => setSelectedDay(Number(event.target.value))}
        />
      </div>
      <p className="strip-readout" style={{ paddingLeft: left }}>
        <strong className="pencil">{dateWords(startDay, day)}</strong>: outside{" "}
        {temperatureFigure(survey.coldest_C[day]!, units)} to {temperatureText(survey.warmest_C[day]!, units)}, dew
        point {temperatureText(survey.dewPoint_C[day]!, units)}; rain {rainText(survey.rain_mm[day]!, units)}; sun{" "}
        {figure(survey.sun_kWhm2[day]!, 1)} kWh/m²; room {temperatureText(survey.room_C[day]!, units)} at{" "}
        {share(survey.roomHumidity[day]!)}.
      </p>
    </figure>
  );
}

function stack(stretch: number, wanted: readonly Omit<Strip, "top">[]): readonly Strip[] {
  let top = 18;
  return wanted.map((strip) => {
    const height = Math.round(strip.height * stretch);
    const placed = { ...strip, top, height };
    top += height + gapHeight;
    return placed;
  });
}

function StripWord({ x, y, text, className }: { x: number; y: number; text: string; className: string }) {
  return (
    <text className={`strip-line-word ${className}`} x={x} y={y}>
      {text}
    </text>
  );
}

/** The picture in a sentence, for those who do not see it. */
function summary(survey: ExposureSurvey, units: Units): string {
  const coldest = survey.mean_C.indexOf(Math.min(...survey.mean_C));
  const warmest = survey.mean_C.indexOf(Math.max(...survey.mean_C));
  const rain = survey.rain_mm.reduce((sum, value) => sum + value, 0);
  return (
    `${survey.label}. Coldest day ${dateWords(survey.startDay, coldest)}, ${temperatureText(survey.mean_C[coldest]!, units)}; ` +
    `warmest ${dateWords(survey.startDay, warmest)}, ${temperatureText(survey.mean_C[warmest]!, units)}; rain ${rainText(rain, units)} in the year.`
  );
}
