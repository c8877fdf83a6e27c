import type { RunResult } from "../../run/index.ts";
import type { FieldPoint, LayerTotals } from "./points/field-point.ts";
import { checkRow, stateAt, type CheckRow, type Place } from "./published-check.ts";

/** A layer of a case whose answer is a table of points. */
export interface TabledLayer {
  readonly id: string;
  readonly thickness_m: number;
}

/** What may differ at a point; null: not compared there. */
export interface FieldTolerance {
  readonly T_K: number | null;
  readonly RH_percent: number | null;
  readonly w_kgm3: number | null;
}

/** Depth of each layer's outer face [m]. */
function outerFaces(layers: readonly TabledLayer[]): Map<string, number> {
  let depth = 0;
  return new Map(
    layers.map((layer) => {
      const at = depth;
      depth += layer.thickness_m;
      return [layer.id, at] as const;
    }),
  );
}

/** A point on a layer's face is that layer's side of it: water content jumps there. */
function placeOf(point: FieldPoint, layers: readonly TabledLayer[]): Place {
  const [, id, inLayer] = point;
  const layer = layers.find((one) => one.id === id)!;
  if (inLayer === 0) return { layer: id, side: "outside" };
  if (Math.abs(inLayer - layer.thickness_m) < 1e-9) return { layer: id, side: "inside" };
  return { depth_m: outerFaces(layers).get(id)! + inLayer };
}

/** Depths inside layers at which the run has to record. */
export function depthsOf(points: readonly FieldPoint[], layers: readonly TabledLayer[]): number[] {
  return points.flatMap((point) => {
    const place = placeOf(point, layers);
    return "depth_m" in place ? [place.depth_m] : [];
  });
}

const hoursAsWords = (hour: number): string => (hour % 24 === 0 ? `day ${hour / 24}` : `hour ${hour}`);

/** Temperature, humidity and water content at tabled points. */
export function fieldRows(
  result: RunResult,
  points: readonly FieldPoint[],
  layers: readonly TabledLayer[],
  toleranceAt: (point: FieldPoint) => FieldTolerance,
): CheckRow[] {
  return points.flatMap((point) => {
    const [hour, layer, inLayer, T_C, RH, w] = point;
    const got = stateAt(result, placeOf(point, layers), hour);
    const tolerance = toleranceAt(point);
    const where = `${hoursAsWords(hour)}, ${layer}, ${Number((inLayer * 1000).toFixed(3))} mm in`;
    const rows: CheckRow[] = [];
    if (tolerance.T_K !== null) rows.push(checkRow(`T, ${where}`, "degC", T_C, got.T_C, tolerance.T_K));
    if (tolerance.RH_percent !== null) rows.push(checkRow(`RH, ${where}`, "%", RH, 100 * got.RH, tolerance.RH_percent));
    if (tolerance.w_kgm3 !== null) rows.push(checkRow(`Water, ${where}`, "kg/m3", w, got.w_kgm3, tolerance.w_kgm3));
    return rows;
  });
}

/** Water in each layer at tabled hours, within a share of the tabled figure. */
export function totalRows(
  result: RunResult,
  totals: readonly LayerTotals[],
  layers: readonly TabledLayer[],
  share: number,
): CheckRow[] {
  return totals.flatMap(([hour, expected]) =>
    layers.map((layer, k) =>
      checkRow(
        `Water in the layer, ${hoursAsWords(hour)}, ${layer.id}`,
        "kg/m2",
        expected[k]!,
        layer.thickness_m * stateAt(result, { mean: layer.id }, hour).w_kgm3,
        share * expected[k]!,
      ),
    ),
  );
}
