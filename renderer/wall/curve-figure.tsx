import { figure } from "../units/index.ts";

interface CurveFigureProps {
  readonly title: string;
  /** [relative humidity 0..1, value] */
  readonly points: readonly (readonly [number, number])[];
  readonly digits: number;
}

const width = 190;
const height = 74;

/** A property against relative humidity, its points marked and its ends figured. */
export function CurveFigure({ title, points, digits }: CurveFigureProps) {
  const highest = Math.max(...points.map(([, value]) => value), 1e-9);
  const x = (humidity: number): number => humidity * width;
  const y = (value: number): number => height - (value / highest) * (height - 14);
  const words = points
    .map(([humidity, value]) => `${figure(value, digits)} at ${figure(humidity * 100, 0)} %`)
    .join(", ");
  return (
    <figure className="curve-figure">
      <figcaption className="label">{title}</figcaption>
      <svg
        width={width + 40}
        height={height + 16}
        role="img"
        aria-label={`${title} against relative humidity: ${words}`}
      >
        <path className="curve-axis" d={`M0 ${height}H${width}`} />
        <path
          className="curve-line"
          d={points.map(([rh, value], index) => `${index ? "L" : "M"}${x(rh)} ${y(value)}`).join("")}
        />
        {points.map(([rh, value]) => (
          <circle key={rh} className="curve-point" cx={x(rh)} cy={y(value)} r={2} />
        ))}
        <text className="curve-word" x={x(points.at(-1)![0]) + 5} y={y(points.at(-1)![1]) + 4}>
          {figure(points.at(-1)![1], digits)}
        </text>
        <text className="curve-word" x={0} y={height + 13}>
          0
        </text>
        <text className="curve-word" x={width - 34} y={height + 13}>
          100 % RH
        </text>
      </svg>
    </figure>
  );
}
