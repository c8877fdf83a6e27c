import { useId, useMemo } from "react";
import { hatchPaths } from "./hatches.ts";
import { outerFaces, type SectionLayer } from "./layers.ts";
import "./section.css";

interface LayerStackProps {
  readonly layers: readonly SectionLayer[];
  readonly x: number;
  /** Of the wall's outer face. */
  readonly y: number;
  readonly width: number;
  /** Paper per wall [px/m]. */
  readonly pxPerMetre: number;
  readonly chosen?: string | null;
}

/** 1 at a scale of 1:2 on a 96 dpi sheet. */
const halfScale_pxPerMetre = 96 / 0.0254 / 2;
const woods = new Set(["lumberThrough", "lumberAcross", "woodBoard"]);

/** A cut through a wall's layers, outside at the top, hatched the way it is drafted. An SVG group. */
export function LayerStack({ layers, x, y, width, pxPerMetre, chosen }: LayerStackProps) {
  const clip = useId();
  const cuts = useMemo(() => {
    const faces = outerFaces(layers);
    return layers.map((layer, index) => {
      const rect = {
        x,
        y: y + faces[index]! * pxPerMetre,
        width,
        height: layer.thickness_m * pxPerMetre,
        unit: pxPerMetre / halfScale_pxPerMetre,
      };
      return { layer, rect, hatch: hatchPaths(layer.hatch, rect) };
    });
  }, [layers, x, y, width, pxPerMetre]);

  return (
    <g className="layer-stack">
      {cuts.map(({ layer, rect, hatch }, index) =>
        layer.hatch === "membrane" ? (
          <line key={layer.id} className="cut-membrane" x1={x} x2={x + width} y1={rect.y} y2={rect.y} />
        ) : (
          <g key={layer.id}>
            <clipPath id={`${clip}-${index}`}>
              <rect x={rect.x} y={rect.y} width={rect.width} height={Math.max(0, rect.height)} />
            </clipPath>
            <rect
              className={woods.has(layer.hatch) ? "cut cut-wood" : "cut"}
              x={rect.x}
              y={rect.y}
              width={rect.width}
              height={Math.max(0, rect.height)}
            />
            <g clipPath={`url(#${clip}-${index})`}>
              {hatch.stroke && <path className="hatch-stroke" d={hatch.stroke} />}
              {hatch.solid && <path className="hatch-solid" d={hatch.solid} />}
            </g>
          </g>
        ),
      )}
      {cuts.map(({ layer, rect }) =>
        layer.hatch === "membrane" ? null : (
          <g key={layer.id} className="cut-faces">
            <line x1={x} x2={x + width} y1={rect.y} y2={rect.y} />
            <line x1={x} x2={x + width} y1={rect.y + rect.height} y2={rect.y + rect.height} />
          </g>
        ),
      )}
      {cuts.map(
        ({ layer, rect }) =>
          layer.id === chosen && (
            <rect
              key={layer.id}
              className="cut-chosen"
              x={rect.x}
              y={rect.height > 0 ? rect.y : rect.y - 2}
              width={rect.width}
              height={rect.height > 0 ? rect.height : 4}
            />
          ),
      )}
    </g>
  );
}
