import { useMemo } from "react";
import { nameOfPath, type MaterialLookup, type Option, type Path } from "../../../solver/index.ts";
import { LayerStack, thicknessOf, type SectionLayer } from "../../section/index.ts";
import type { Units } from "../../state/index.ts";
import { lengthText, share } from "../../units/index.ts";
import type { ControlRun } from "../control-roles.ts";
import { ControlLines } from "./control-lines.tsx";
import { dimensionWidth, footHeight, headHeight, layOut, type Core } from "./core-layout.ts";
import { DimensionString } from "./dimension-string.tsx";
import "./section-drawing.css";

interface SectionDrawingProps {
  readonly option: Option;
  readonly path: Path;
  readonly lookup: MaterialLookup;
  readonly runs: readonly ControlRun[];
  readonly units: Units;
  readonly width: number;
  /** For the cores themselves [px]. */
  readonly room: { readonly width: number; readonly height: number };
  readonly chosen: string | null;
  readonly onChooseLayer: (layerId: string) => void;
  readonly onChoosePath: (pathId: string) => void;
}

/** The cut-off side of a core: a hairline with the break sign in its deepest layer. */
function breakEdge(core: Core, x: number): string {
  const deepest = [...core.layers].sort((one, other) => other.thickness_m - one.thickness_m)[0];
  let middle = core.y + core.height / 2;
  let depth = core.y;
  const perMetre = core.height / thicknessOf(core.layers);
  for (const layer of core.layers) {
    if (layer === deepest) middle = depth + layer.thickness_m * perMetre * 0.2;
    depth += layer.thickness_m * perMetre;
  }
  return `M${x} ${core.y - 6}V${middle - 9}l-5 5l10 8l-5 5V${core.y + core.height + 6}`;
}

/** The paths of an option cut side by side to one named scale, outside at the top, control lines running through. */
export function SectionDrawing(props: SectionDrawingProps) {
  const { option, path, lookup, runs, units, width, room, chosen, onChooseLayer, onChoosePath } = props;
  const layout = useMemo(() => layOut(option, lookup, room), [option, lookup, room]);
  const height = headHeight + layout.height + footHeight;
  const first = layout.cores[0]!;
  const edges = layout.cores.flatMap((core, index) => [
    ...(core.adjoins ? [] : [breakEdge(core, core.x)]),
    ...(layout.cores[index + 1]?.adjoins || core.adjoins ? [] : [breakEdge(core, core.x + core.width)]),
  ]);
  if (layout.beyond) edges.push(breakEdge(first, layout.beyond.x + layout.beyond.width));
  const inView = layout.cores.find((core) => core.path.id === path.id) ?? first;

  return (
    <div className="section-drawing" style={{ width, height }}>
      {layout.cores.map((core, index) => (
        <button
          key={core.path.id}
          type="button"
          className="core-name"
          style={{
            left: dimensionWidth + core.x,
            maxWidth: (layout.cores[index + 1]?.x ?? layout.width + 44) - core.x - 6,
          }}
          aria-pressed={core.path.id === path.id}
          onClick={() => onChoosePath(core.path.id)}
        >
          <span className="core-title">{nameOfPath(core.path)}</span>
          {core.path.areaShare !== undefined && <span className="core-share"> {share(core.path.areaShare)}</span>}
        </button>
      ))}
      <svg
        width={width}
        height={height}
        role="img"
        aria-label={`Section of option ${option.id}, drawn 1 to ${layout.ratio}, outside at the top: ${describe(inView.layers, units)}`}
      >
        <g transform={`translate(${dimensionWidth} ${headHeight})`}>
          <text className="side-word outside" x={-dimensionWidth} y={first.y - 10}>
            outside
          </text>
          <text className="side-word inside" x={-dimensionWidth} y={first.y + first.height + 20}>
            inside
          </text>
          {layout.cores.map((core) => (
            <LayerStack
              key={core.path.id}
              layers={core.layers}
              x={core.x}
              y={core.y}
              width={core.width}
              pxPerMetre={layout.pxPerMetre}
              chosen={core.path.id === path.id ? chosen : null}
            />
          ))}
          {layout.beyond && (
            <LayerStack
              layers={first.layers}
              x={layout.beyond.x}
              y={first.y}
              width={layout.beyond.width}
              pxPerMetre={layout.pxPerMetre}
            />
          )}
          {layout.cores
            .filter((core) => core.adjoins)
            .map((core) => (
              <path
                key={core.path.id}
                className="stud-edge"
                d={`M${core.x} ${core.y}v${core.height}M${core.x + core.width} ${core.y}v${core.height}`}
              />
            ))}
          <path className="core-edge" d={edges.join("")} />
          <ControlLines runs={runs} layout={layout} />
          <DimensionString
            core={inView}
            pxPerMetre={layout.pxPerMetre}
            units={units}
            total_m={thicknessOf(inView.layers)}
            withLeaders={inView === first || inView.adjoins}
            chosen={chosen}
            onChoose={onChooseLayer}
          />
        </g>
      </svg>
    </div>
  );
}

/** The layers in words, for those who do not see the drawing. */
const describe = (layers: readonly SectionLayer[], units: Units): string =>
  layers
    .map((layer) => (layer.thickness_m > 0 ? `${layer.name}, ${lengthText(layer.thickness_m, units)}` : layer.name))
    .join("; ");
