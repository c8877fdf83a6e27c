import type { Case } from "../model/index.ts";
import type { WallModel } from "../physics/wall-model.ts";
import type { Workspace } from "../physics/workspace.ts";
import { monthEnds } from "./calendar.ts";
import type { MonthlyFlows } from "./result.ts";
import type { StageFlows } from "./stepper.ts";
import { gamma } from "./time-step.ts";

/**
 * Water across the planes of the wall, month by month of the judged year.
 *
 * The plane of an interface runs through its node. What crosses it into a layer is what the layer's first slice passes on plus what
 * the layer's own half slice at the node gained, less what a source brought there: so for each layer inflow + sources - outflow
 * is its change of storage, exactly. What the steps left over counts with the water of its node, and its spreading with the vapour.
 */
export interface MonthlyRecorder {
  add(first: StageFlows, second: StageFlows, spread: Float64Array, h: number): void;
  /** Called at the end of each hour of the judged year, 0..8759, and once before it with -1. */
  endOfHour(work: Workspace, stored: Float64Array, hourOfYear: number): void;
  /** Forgets everything: a new year is judged. */
  reset(work: Workspace, stored: Float64Array): void;
  flows(): MonthlyFlows | null;
}

interface Snapshot {
  readonly vapour: Float64Array;
  readonly liquid: Float64Array;
  readonly source: Float64Array;
  readonly heatFromRoom: number;
  readonly slotWater: Float64Array;
}

export function monthlyRecorder(aCase: Case, wall: WallModel, startDay: number): MonthlyRecorder {
  const ends = monthEnds(startDay);
  const vapour = new Float64Array(wall.nodes - 1);
  const liquid = new Float64Array(wall.nodes - 1);
  const sourceCount = wall.sources.airLeaks.length + wall.sources.rainLeaks.length + wall.sources.cavities.length;
  const source = new Float64Array(sourceCount);
  let heatFromRoom = 0;
  let snapshots: Snapshot[] = [];
  const take = (work: Workspace, stored: Float64Array) => {
    snapshots.push({
      vapour: vapour.slice(),
      liquid: liquid.slice(),
      source: source.slice(),
      heatFromRoom,
      slotWater: slotWater(wall, work, stored),
    });
  };
  return {
    add(first, second, spread, h) {
      const a = (1 - gamma) * h;
      const b = gamma * h;
      for (let e = 0; e < vapour.length; e++) {
        vapour[e]! += a * first.vapour[e]! + b * second.vapour[e]! + spread[e]!;
        liquid[e]! += a * first.liquid[e]! + b * second.liquid[e]!;
      }
      for (let i = 0; i < sourceCount; i++) source[i]! += a * first.source[i]! + b * second.source[i]!;
      heatFromRoom += a * first.heatFromRoom + b * second.heatFromRoom;
    },
    endOfHour(work, stored, hourOfYear) {
      if (ends.includes(hourOfYear + 1)) take(work, stored);
    },
    reset(work, stored) {
      snapshots = [];
      take(work, stored);
    },
    flows: () => (snapshots.length === 13 ? monthlyFlows(aCase, wall, snapshots) : null),
  };
}

function monthlyFlows(aCase: Case, wall: WallModel, snapshots: readonly Snapshot[]): MonthlyFlows {
  const months = Array.from({ length: 12 }, (_, m) => m);
  const gained = (of: (at: Snapshot) => number) => months.map((m) => of(snapshots[m + 1]!) - of(snapshots[m]!));
  const named = namedSources(wall);
  const interfaces = aCase.layers.flatMap((layer, index) => {
    const sides = [
      { side: "outside", element: wall.grid.firstNode[index]!, sign: 1 },
      { side: "inside", element: wall.grid.lastNode[index]! - 1, sign: -1 },
    ] as const;
    return sides.map(({ side, element, sign }) => {
      const node = side === "outside" ? element : element + 1;
      const slot = slotAt(wall, node, index);
      const here = named.filter((one) => one.node === node && one.layer === index && one.side === side);
      const stored = slot < 0 ? months.map(() => 0) : gained((at) => at.slotWater[slot]! * wall.slotVolume[slot]!);
      const fromSources = months.map((m) =>
        here.reduce((sum, one) => sum + snapshots[m + 1]!.source[one.index]! - snapshots[m]!.source[one.index]!, 0),
      );
      const throughLiquid = gained((at) => at.liquid[element]!);
      const throughVapour = gained((at) => at.vapour[element]!);
      return {
        probe: `${layer.id}-${side}`,
        liquid: throughLiquid,
        vapour: throughVapour.map((g, m) => g + sign * (stored[m]! - fromSources[m]!)),
      };
    });
  });
  return {
    interfaces,
    sources: named.map((one) => ({
      layer: aCase.layers[one.layer]!.id,
      cause: one.cause,
      gain: gained((at) => at.source[one.index]!),
    })),
    stored: aCase.layers.map((layer, index) => ({
      layer: layer.id,
      water: snapshots.map((at) => {
        let sum = 0;
        for (let s = 0; s < wall.slots; s++)
          if (wall.slotLayer[s] === index) sum += at.slotWater[s]! * wall.slotVolume[s]!;
        return sum;
      }),
    })),
    heatFromRoom_MJm2: gained((at) => at.heatFromRoom / 1e6),
  };
}

/** Water of each slot with the film on its face and its share of what is left over at its node [kg/m3]. */
function slotWater(wall: WallModel, work: Workspace, stored: Float64Array): Float64Array {
  const { slotNode, slotEnd, slotVolume } = wall;
  return work.water.map((w, s) => {
    const i = slotNode[s]!;
    const slots = slotEnd[i]! - (i > 0 ? slotEnd[i - 1]! : 0);
    const leftOver = stored[2 * i + 1]! - work.stored[2 * i + 1]!;
    return w + (work.slotFilm[s]! + leftOver / slots) / slotVolume[s]!;
  });
}

interface NamedSource {
  readonly index: number;
  readonly node: number;
  readonly layer: number;
  readonly side: "outside" | "inside" | "middle";
  readonly cause: string;
}

function namedSources(wall: WallModel): NamedSource[] {
  const { airLeaks, rainLeaks, cavities } = wall.sources;
  const list: Omit<NamedSource, "index">[] = [
    ...airLeaks.map((leak) => ({ node: leak.node, layer: leak.layer, side: leak.slotSide, cause: "air leak" })),
    ...rainLeaks.map((leak) => ({ node: leak.node, layer: leak.layer, side: "outside" as const, cause: "rain leak" })),
    ...cavities.map((cavity) => ({
      node: cavity.node,
      layer: cavity.layer,
      side: "middle" as const,
      cause: "cavity air",
    })),
  ];
  return list.map((one, index) => ({ ...one, index }));
}

function slotAt(wall: WallModel, node: number, layer: number): number {
  for (let s = 0; s < wall.slots; s++) if (wall.slotNode[s] === node && wall.slotLayer[s] === layer) return s;
  return -1;
}
