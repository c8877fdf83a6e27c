import type { Case } from "../model/index.ts";
import { humidityAt } from "../physics/moisture-potential.ts";
import { readTable } from "../physics/property-table.ts";
import { referenceTemperature_K } from "../physics/moisture-potential.ts";
import type { Workspace } from "../physics/workspace.ts";
import type { WallModel } from "../physics/wall-model.ts";
import type { ProbeSeries } from "./result.ts";

/** Records hour after hour at every interface, layer and depth asked for. */
export interface ProbeRecorder {
  /** Writes hour k from the state in the workspace. */
  record(work: Workspace, k: number): void;
  /** The series, cut to the hours recorded. */
  series(hours: number): ProbeSeries[];
}

interface Column {
  readonly head: Omit<ProbeSeries, "T_C" | "RH" | "w_kgm3">;
  readonly T: Float32Array;
  readonly RH: Float32Array;
  readonly w: Float32Array;
  readonly read: (work: Workspace, into: Float64Array) => void;
}

export function probeRecorder(aCase: Case, wall: WallModel, hours: number): ProbeRecorder {
  const columns: Column[] = [];
  const add = (head: Column["head"], read: Column["read"]) => {
    columns.push({
      head,
      T: new Float32Array(hours),
      RH: new Float32Array(hours),
      w: new Float32Array(hours),
      read,
    });
  };
  aCase.layers.forEach((layer, index) => {
    const woodDensity_kgm3 = layer.material.wood === true ? (layer.material.density_kgm3 ?? null) : null;
    const base = { layer: layer.id, woodDensity_kgm3 };
    const sides = [
      { side: "outside", node: wall.grid.firstNode[index]!, words: "Outer face" },
      { side: "inside", node: wall.grid.lastNode[index]!, words: "Inner face" },
    ] as const;
    for (const { side, node, words } of sides) {
      const slot = slotOf(wall, node, index);
      add(
        {
          ...base,
          id: `${layer.id}-${side}`,
          label: `${words} of ${lowerFirst(layer.name)}`,
          side,
          depth_m: wall.grid.depth_m[node]!,
          kind: "interface",
        },
        (work, into) => {
          into[0] = work.x[2 * node]!;
          into[1] = work.humidity[node]!;
          into[2] = slot < 0 ? 0 : work.water[slot]!;
        },
      );
    }
    const own = slotsOf(wall, index);
    if (own.length === 0) return;
    const middle = (wall.grid.depth_m[sides[0].node]! + wall.grid.depth_m[sides[1].node]!) / 2;
    add(
      { ...base, id: `${layer.id}-mean`, label: layer.name, side: null, depth_m: middle, kind: "layerMean" },
      (work, into) => meanOver(wall, work, own, into),
    );
  });
  for (const probe of aCase.probes) {
    const index = layerAtDepth(wall, probe.depth_m);
    const material = aCase.layers[index]!;
    add(
      {
        id: probe.id,
        label: probe.label,
        layer: material.id,
        side: null,
        depth_m: probe.depth_m,
        kind: "depth",
        woodDensity_kgm3: material.material.wood === true ? (material.material.density_kgm3 ?? null) : null,
      },
      depthReader(wall, index, probe.depth_m),
    );
  }
  const into = new Float64Array(3);
  return {
    record(work, k) {
      for (const column of columns) {
        column.read(work, into);
        column.T[k] = into[0]! - 273.15;
        column.RH[k] = into[1]!;
        column.w[k] = into[2]!;
      }
    },
    series: (count) =>
      columns.map(({ head, T, RH, w }) => ({
        ...head,
        T_C: T.slice(0, count),
        RH: RH.slice(0, count),
        w_kgm3: w.slice(0, count),
      })),
  };
}

/** "Oriented strand board" inside a sentence; names that start with an abbreviation stay. */
function lowerFirst(name: string): string {
  const second = name.charAt(1);
  return second === second.toUpperCase() && second !== " " ? name : name.charAt(0).toLowerCase() + name.slice(1);
}

function slotOf(wall: WallModel, node: number, layer: number): number {
  for (let s = 0; s < wall.slots; s++) if (wall.slotNode[s] === node && wall.slotLayer[s] === layer) return s;
  return -1;
}

function slotsOf(wall: WallModel, layer: number): number[] {
  return Array.from({ length: wall.slots }, (_, s) => s).filter((s) => wall.slotLayer[s] === layer);
}

function meanOver(wall: WallModel, work: Workspace, slots: readonly number[], into: Float64Array): void {
  let volume = 0;
  let T = 0;
  let RH = 0;
  let w = 0;
  for (const s of slots) {
    const v = wall.slotVolume[s]!;
    const i = wall.slotNode[s]!;
    volume += v;
    T += v * work.x[2 * i]!;
    RH += v * work.humidity[i]!;
    w += v * work.water[s]! + work.slotFilm[s]!;
  }
  into[0] = T / volume;
  into[1] = RH / volume;
  into[2] = w / volume;
}

/** The meshed layer that a depth lies in; on an interface the inner one. */
function layerAtDepth(wall: WallModel, depth_m: number): number {
  let found = 0;
  for (let index = 0; index < wall.tables.length; index++) {
    const first = wall.grid.firstNode[index]!;
    const last = wall.grid.lastNode[index]!;
    if (
      last > first &&
      wall.grid.depth_m[last]! > wall.grid.depth_m[first]! &&
      depth_m >= wall.grid.depth_m[first]! - 1e-12
    )
      found = index;
  }
  return found;
}

/** Between nodes T and the potential follow a monotone cubic through the four nodes around, within the layer. */
function depthReader(wall: WallModel, layer: number, depth_m: number): Column["read"] {
  const first = wall.grid.firstNode[layer]!;
  const last = wall.grid.lastNode[layer]!;
  const { depth_m: depth } = wall.grid;
  let i = first;
  while (i < last - 1 && depth[i + 1]! <= depth_m) i++;
  const table = wall.tables[layer]!;
  const at = Math.min(Math.max(depth_m, depth[first]!), depth[last]!);
  const before = Math.max(i - 1, first);
  const after = Math.min(i + 2, last);
  const read = (work: Workspace, unknown: 0 | 1) => {
    const value = (node: number) => work.x[2 * node + unknown]!;
    const h = depth[i + 1]! - depth[i]!;
    const rise = (value(i + 1) - value(i)) / h;
    const slopeLow = i > before ? limitedSlope((value(i) - value(before)) / (depth[i]! - depth[before]!), rise) : rise;
    const slopeHigh =
      after > i + 1 ? limitedSlope(rise, (value(after) - value(i + 1)) / (depth[after]! - depth[i + 1]!)) : rise;
    const t = (at - depth[i]!) / h;
    const t2 = t * t;
    const t3 = t2 * t;
    return (
      (2 * t3 - 3 * t2 + 1) * value(i) +
      (t3 - 2 * t2 + t) * h * slopeLow +
      (3 * t2 - 2 * t3) * value(i + 1) +
      (t3 - t2) * h * slopeHigh
    );
  };
  return (work, into) => {
    const T = read(work, 0);
    const potential = read(work, 1);
    const eta = table.followsSuction ? potential - Math.log(T / referenceTemperature_K) : potential;
    into[0] = T;
    into[1] = humidityAt(potential);
    into[2] = readTable(table, 0, eta);
  };
}

function limitedSlope(a: number, b: number): number {
  return a * b <= 0 ? 0 : (2 * a * b) / (a + b);
}
