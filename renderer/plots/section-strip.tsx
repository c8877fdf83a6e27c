import { useMemo } from "react";
import type { Case, CaseLayer } from "../../solver/index.ts";
import { hatchOf, LayerStack } from "../section/index.ts";
import { Length } from "../units/index.ts";
import type { ShownUnits } from "./quantities.ts";
import { layerSpans } from "./wall-depths.ts";

export type DrawnWall = Pick<Case, "layers" | "pathKind">;

/** The wall beside its picture: every layer at the map's own scale, named, with its thickness; outside on top. */
export function SectionStrip({
  wall,
  height,
  width,
  units,
  strong,
  named = true,
}: {
  readonly wall: DrawnWall;
  readonly height: number;
  readonly width: number;
  readonly units: ShownUnits;
  /** Layer set in bold: the one the year is read by. */
  readonly strong: string | null;
  readonly named?: boolean;
}): React.JSX.Element {
  const spans = layerSpans(wall.layers).filter(({ from_m, to_m }) => to_m > from_m);
  const layers = useMemo(
    () =>
      wall.layers.map(({ id, name, thickness_m, material }) => ({
        id,
        name,
        thickness_m,
        hatch: hatchOf(material, wall.pathKind),
      })),
    [wall],
  );
  const thickness = spans.at(-1)?.to_m ?? 1;
  const middles = spread(
    spans.map(({ from_m, to_m }) => (((from_m + to_m) / 2) * height) / thickness),
    15,
    height,
  );
  return (
    <div className="section-strip" style={{ height }}>
      {named &&
        spans.map(({ layer }, index) => (
          <div
            key={layer.id}
            className={`strip-name ${layer.id === strong ? "strip-strong" : ""} ${(layer.thickness_m * height) / thickness > 34 ? "strip-tall" : ""}`}
            style={{ top: middles[index]!, right: width + 8 }}
          >
            <span className="strip-word" title={layer.name}>
              {stripWord(layer)}
            </span>
            <span className="strip-thickness">
              <Length length_m={layer.thickness_m} units={units} />
            </span>
          </div>
        ))}
      {height > 0 && (
        <svg className="strip-drawing" width={width} height={height} aria-hidden="true">
          <LayerStack layers={layers} x={0} y={0} width={width} pxPerMetre={height / thickness} />
          <rect x={0.5} y={0.5} width={width - 1} height={height - 1} className="cut-frame" />
        </svg>
      )}
    </div>
  );
}

/** Air is named by what it does; everything else by its material. */
const stripWord = ({ material, airChangesPerHour, name }: CaseLayer): string =>
  material.kind === "air"
    ? airChangesPerHour === null || airChangesPerHour === 0
      ? "Air space"
      : "Vented gap"
    : shortName(name);

/** A material's name up to its first comma or bracket, which is as much as a margin holds. */
export const shortName = (name: string): string => name.split(/[,(]/)[0]!.trim();

/** Middles kept `apart` from each other, moved as little as may be, within 0..height. */
export function spread(middles: readonly number[], apart: number, height: number): number[] {
  const out = [...middles];
  for (let i = 0; i < out.length; i++)
    out[i] = Math.max(out[i]!, i === 0 ? Math.min(apart / 2, height) : out[i - 1]! + apart);
  for (let i = out.length - 1; i >= 0; i--)
    out[i] = Math.min(out[i]!, i === out.length - 1 ? height - apart / 2 : out[i + 1]! - apart);
  return out;
}
