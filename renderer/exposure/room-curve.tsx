import { useEffect, useRef, type JSX } from "react";
import { Figure, type SvgMaker } from "../plots/figure.tsx";
import { useChartTokens } from "../plots/tokens.ts";
import type { Units } from "../state/index.ts";
import { share, temperatureText } from "../units/index.ts";
import { bandsOf, bandWidth_K, type Band } from "./room-bands.ts";
import type { ExposureSurvey } from "./survey.ts";

const width = 312;
const left = 40;
const plotHeight = 92;
const top = 6;
const foot = 18;
const humidityTicks = [0.2, 0.4, 0.6, 0.8];

/** The room's humidity against the outdoor mean of each day: the rule of the room as this year draws it, whatever the rule is. */
export function RoomCurve({ survey, units }: { readonly survey: ExposureSurvey; readonly units: Units }): JSX.Element {
  const bands = bandsOf(survey);
  return (
    <Figure
      title="Room humidity over outdoor mean"
      summary={summary(bands, units)}
      fileName="room-over-outdoors"
      className="room-curve"
      table={() => ({
        columns: ["Outdoor mean", "days", "room, mean RH"],
        rows: bands.map(({ from_C, days, mean }) => [
          `${temperatureText(from_C, units)} to ${temperatureText(from_C + bandWidth_K, units)}`,
          String(days),
          share(mean),
        ]),
      })}
    >
      {(keepPicture) => <Dots survey={survey} units={units} keepPicture={keepPicture} />}
    </Figure>
  );
}

function summary(bands: readonly Band[], units: Units): string {
  const [coldest, warmest] = [bands[0]!, bands.at(-1)!];
  return `The room averages ${share(coldest.mean)} on days below ${temperatureText(coldest.from_C + bandWidth_K, units)} and ${share(warmest.mean)} on days above ${temperatureText(warmest.from_C, units)}.`;
}

/** Every 10 degC, or every 20 degF, within the range [degC]. */
function ticksOf(low_C: number, high_C: number, units: Units): readonly number[] {
  if (units === "si") return Array.from({ length: (high_C - low_C) / 10 + 1 }, (_, i) => low_C + 10 * i);
  const first = Math.ceil((low_C * 1.8 + 32) / 20);
  const last = Math.floor((high_C * 1.8 + 32) / 20);
  return Array.from({ length: last - first + 1 }, (_, i) => ((first + i) * 20 - 32) / 1.8);
}

function Dots({
  survey,
  units,
  keepPicture,
}: {
  survey: ExposureSurvey;
  units: Units;
  keepPicture: (svg: SvgMaker) => void;
}): JSX.Element {
  const tokens = useChartTokens();
  const svg = useRef<SVGSVGElement>(null);
  useEffect(() => {
    keepPicture(() =>
      svg.current === null
        ? Promise.reject(new Error("The chart is not drawn yet."))
        : Promise.resolve(new XMLSerializer().serializeToString(svg.current)),
    );
  }, [keepPicture]);
  const low = Math.floor(Math.min(...survey.mean_C) / 10) * 10;
  const high = Math.ceil(Math.max(...survey.mean_C) / 10) * 10;
  const x = (T: number): number => left + ((T - low) / (high - low)) * (width - left - 14);
  const y = (humidity: number): number => top + (1 - humidity) * plotHeight;
  const toTicks = ticksOf(low, high, units);
  const height = top + plotHeight + foot;
  return (
    <svg
      ref={svg}
      xmlns="http://www.w3.org/2000/svg"
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      fontFamily={tokens.font}
      fontSize={tokens.note_px}
      aria-hidden="true"
    >
      {humidityTicks.map((tick) => (
        <g key={tick}>
          <line x1={left} x2={width} y1={y(tick)} y2={y(tick)} stroke={tokens.hair2} />
          <text x={left - 6} y={y(tick) + 4} textAnchor="end" fill={tokens.ink3}>
            {share(tick)}
          </text>
        </g>
      ))}
      {toTicks.map((tick) => (
        <text key={tick} x={x(tick)} y={height - 4} textAnchor="middle" fill={tokens.ink3}>
          {temperatureText(tick, units).replace(/ .*/, "°")}
        </text>
      ))}
      <line x1={left} x2={width} y1={y(0)} y2={y(0)} stroke={tokens.ink} />
      {Array.from(survey.mean_C, (T, day) => (
        <circle key={day} cx={x(T)} cy={y(Math.min(survey.roomHumidity[day]!, 1))} r={1.4} fill={tokens.inside} />
      ))}
    </svg>
  );
}
