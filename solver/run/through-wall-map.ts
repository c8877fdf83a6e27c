import type { Workspace } from "../physics/workspace.ts";
import type { WallModel } from "../physics/wall-model.ts";
import type { ThroughWallMap } from "./result.ts";

/** Daily means at every place where a material is: an interface appears once for each of its layers. */
export interface MapRecorder {
  /** Adds the state at the end of hour k of the run. */
  record(work: Workspace, k: number): void;
  /** The map of `hours` hours from hour `from`. */
  map(from: number, hours: number): ThroughWallMap;
}

export function mapRecorder(wall: WallModel, hours: number): MapRecorder {
  const days = Math.ceil(hours / 24);
  const columns = wall.slots;
  const T = new Float32Array(days * columns);
  const RH = new Float32Array(days * columns);
  const w = new Float32Array(days * columns);
  const counted = new Int32Array(days);
  return {
    record(work, k) {
      const day = Math.floor(k / 24);
      counted[day]!++;
      const row = day * columns;
      for (let s = 0; s < columns; s++) {
        const i = wall.slotNode[s]!;
        T[row + s]! += work.x[2 * i]! - 273.15;
        RH[row + s]! += work.humidity[i]!;
        w[row + s]! += work.water[s]!;
      }
    },
    map(from, length) {
      const firstDay = Math.floor(from / 24);
      const lastDay = Math.min(Math.ceil((from + length) / 24), days);
      const mean = (sums: Float32Array) => {
        const part = sums.slice(firstDay * columns, lastDay * columns);
        for (let i = 0; i < part.length; i++) part[i]! /= Math.max(counted[firstDay + Math.floor(i / columns)]!, 1);
        return part;
      };
      return {
        days: lastDay - firstDay,
        depth_m: Float32Array.from(wall.slotNode, (node) => wall.grid.depth_m[node]!),
        T_C: mean(T),
        RH: mean(RH),
        w_kgm3: mean(w),
      };
    },
  };
}
