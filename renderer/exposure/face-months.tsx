import { useEffect, useRef, type JSX } from "react";
import type { RankedFace } from "../../climate/index.ts";
import { monthNames } from "../../solver/index.ts";
import { Figure, type SvgMaker } from "../plots/figure.tsx";
import { useChartTokens, type ChartTokens } from "../plots/tokens.ts";
import type { Units } from "../state/index.ts";
import { figure, rainOnFaceText } from "../units/index.ts";

const names: readonly (readonly [azimuth_deg: number, name: string])[] = [
  [0, "North"],
  [90, "East"],
  [180, "South"],
  [270, "West"],
];
const rainRoom_px = 34;
const sunRoom_px = 34;
const nameRow_px = 16;
const monthRow_px = 14;
const gap_px = 14;

interface FaceMonthsProps {
  readonly faces: readonly RankedFace[];
  readonly units: Units;
  readonly width: number;
}

/** Driving rain (up) and sun (down) on the four faces, January to December, on one scale each: what wets a face and what dries it. */
export function FaceMonths({ faces, units, width }: FaceMonthsProps): JSX.Element {
  const four = names.map(([azimuth_deg, name]) => ({
    name,
    face: faces.find((one) => one.azimuth_deg === azimuth_deg)!,
  }));
  return (
    <Figure
      title="Month by month, January to December"
      summary={summary(four)}
      fileName="faces-by-month"
      table={() => ({
        columns: ["Month", ...four.flatMap(({ name }) => [`${name}, rain`, `${name}, sun kWh/m²`])],
        rows: monthNames.map((month, at) => [
          month,
          ...four.flatMap(({ face }) => [
            rainOnFaceText(face.monthlyRain_kgm2[at]!, units),
            figure(face.monthlySun_kWhm2[at]!, 0),
          ]),
        ]),
      })}
    >
      {(keepPicture) => <Bars four={four} width={width} keepPicture={keepPicture} />}
    </Figure>
  );
}

type Four = readonly { readonly name: string; readonly face: RankedFace }[];

function summary(four: Four): string {
  const months = four.flatMap(({ name, face }) =>
    face.monthlyRain_kgm2.map((rain, at) => ({ name, rain, month: monthNames[at]! })),
  );
  const wettest = months.reduce((most, one) => (one.rain > most.rain ? one : most));
  const sunniest = four.reduce((most, one) => (one.face.sun_kWhm2 > most.face.sun_kWhm2 ? one : most));
  return `Most rain is driven onto the ${wettest.name.toLowerCase()} face in ${wettest.month}; the ${sunniest.name.toLowerCase()} face gets most sun over the year.`;
}

function Bars({
  four,
  width,
  keepPicture,
}: {
  four: Four;
  width: number;
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
  const mostRain = Math.max(...four.flatMap(({ face }) => face.monthlyRain_kgm2), 1e-9);
  const mostSun = Math.max(...four.flatMap(({ face }) => face.monthlySun_kWhm2), 1e-9);
  const each = Math.max(48, (width - gap_px * (four.length - 1)) / four.length);
  const height = nameRow_px + rainRoom_px + sunRoom_px + monthRow_px;
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
      {four.map(({ name, face }, index) => (
        <g key={name} transform={`translate(${index * (each + gap_px)} 0)`}>
          <OneFace name={name} face={face} width={each} mostRain={mostRain} mostSun={mostSun} tokens={tokens} />
        </g>
      ))}
    </svg>
  );
}

function OneFace({
  name,
  face,
  width,
  mostRain,
  mostSun,
  tokens,
}: {
  name: string;
  face: RankedFace;
  width: number;
  mostRain: number;
  mostSun: number;
  tokens: ChartTokens;
}): JSX.Element {
  const step = width / 12;
  const base = nameRow_px + rainRoom_px;
  return (
    <>
      <text y={11} fill={tokens.ink2}>
        {name}
      </text>
      {face.monthlyRain_kgm2.map((rain, month) => {
        const tall = (rain / mostRain) * rainRoom_px;
        return (
          <rect
            key={month}
            x={month * step + 0.5}
            y={base - tall}
            width={step - 1.5}
            height={tall}
            fill={tokens.outside}
          />
        );
      })}
      {face.monthlySun_kWhm2.map((sun, month) => (
        <rect
          key={month}
          x={month * step + 0.5}
          y={base + 1}
          width={step - 1.5}
          height={(sun / mostSun) * (sunRoom_px - 2)}
          fill={tokens.ink3}
        />
      ))}
      <line x1={0} x2={width} y1={base + 0.5} y2={base + 0.5} stroke={tokens.ink} />
      {[0, 6].map((month) => (
        <text key={month} x={month * step} y={base + sunRoom_px + 11} fill={tokens.ink3}>
          {month === 0 ? "Jan" : "Jul"}
        </text>
      ))}
      {name === "North" && (
        <text x={width} y={11} textAnchor="end" fill={tokens.outside}>
          rain up
        </text>
      )}
      {name === "West" && (
        <text x={width} y={11} textAnchor="end" fill={tokens.ink2}>
          sun down
        </text>
      )}
    </>
  );
}
