import type { Units } from "../../state/index.ts";
import { fractionParts, lengthFigure } from "../../units/index.ts";
import type { Core } from "./core-layout.ts";
import { spread } from "./spread.ts";
import { outerFaces } from "../../section/index.ts";

interface DimensionStringProps {
  readonly core: Core;
  readonly pxPerMetre: number;
  readonly units: Units;
  readonly total_m: number;
  /** Hairlines from the keynotes to the core beside them. */
  readonly withLeaders: boolean;
  readonly chosen: string | null;
  readonly onChoose: (layerId: string) => void;
}

/** Columns left of the first core: the whole, the layers, the keynotes. */
const wholeAt = -84;
const chainAt = -47;
const keynoteAt = -24;
const circle = 8.5;

const tick = (x: number, y: number): string => `M${x - 5} ${y + 5}L${x + 5} ${y - 5}`;

function Figure({ x, y, text, className }: { x: number; y: number; text: string; className?: string }) {
  const { before, fraction } = fractionParts(text);
  return (
    <text x={x} y={y} className={`dimension-figure ${className ?? ""}`}>
      {before}
      {fraction && <tspan className="frac">{before ? ` ${fraction}` : fraction}</tspan>}
    </text>
  );
}

/** Thickness of the whole and of each layer, and a numbered keynote for every row of the schedule. */
export function DimensionString({
  core,
  pxPerMetre,
  units,
  total_m,
  withLeaders,
  chosen,
  onChoose,
}: DimensionStringProps) {
  const faces = outerFaces(core.layers).map((face) => core.y + face * pxPerMetre);
  const thick = core.layers.flatMap((layer, index) =>
    layer.thickness_m > 0 ? [{ layer, top: faces[index]!, height: layer.thickness_m * pxPerMetre }] : [],
  );
  const figures = spread(
    thick.map(({ top, height }) => top + height / 2),
    13,
    core.y - 4,
  );
  const middles = core.layers.map((layer, index) => faces[index]! + (layer.thickness_m * pxPerMetre) / 2);
  const keynotes = spread(middles, 2 * circle + 2, core.y - 6);
  const bottom = core.y + core.height;

  return (
    <g className="dimensions">
      <path
        className="dimension-line"
        d={`M${wholeAt} ${core.y - 6}V${bottom + 6}M${chainAt} ${core.y - 6}V${bottom + 6}`}
      />
      <path className="dimension-tick" d={tick(wholeAt, core.y) + tick(wholeAt, bottom)} />
      <path
        className="dimension-tick"
        d={[...thick.map(({ top }) => top), bottom].map((y) => tick(chainAt, y)).join("")}
      />
      <g transform={`translate(${wholeAt - 6} ${core.y + core.height / 2}) rotate(-90)`}>
        <Figure x={0} y={0} text={lengthFigure(total_m, units)} className="dimension-whole" />
      </g>
      {thick.map(({ layer }, index) => (
        <Figure
          key={layer.id}
          x={chainAt - 8}
          y={figures[index]! + 4}
          text={lengthFigure(layer.thickness_m, units)}
          className="dimension-layer"
        />
      ))}
      {core.layers.map((layer, index) => (
        <g
          key={layer.id}
          className={layer.id === chosen ? "keynote keynote-chosen" : "keynote"}
          onClick={() => onChoose(layer.id)}
        >
          {withLeaders && (
            <path className="keynote-leader" d={`M${keynoteAt + circle} ${keynotes[index]!}L-6 ${middles[index]!}H0`} />
          )}
          <circle cx={keynoteAt} cy={keynotes[index]} r={circle} />
          <text x={keynoteAt} y={keynotes[index]! + 4}>
            {index + 1}
          </text>
        </g>
      ))}
    </g>
  );
}
