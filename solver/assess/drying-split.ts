import type { MonthlyFlows } from "../run/index.ts";

/** Water that leaves a layer through its two faces over some months [kg/m2]. */
export interface Leaving {
  readonly toInside_kgm2: number;
  readonly toOutside_kgm2: number;
  /** Of what leaves, the share that goes to the room's side; null where nothing leaves. */
  readonly insideShare: number | null;
}

export interface DryingSplit {
  readonly year: Leaving;
  /** Calendar quarters by first month: December, March, June, September. */
  readonly quarters: readonly { readonly firstMonth: number; readonly leaving: Leaving }[];
  /** The months in which the layer loses water. */
  readonly dryingMonths: Leaving;
}

const leaving = (toInside_kgm2: number, toOutside_kgm2: number): Leaving => {
  const total = toInside_kgm2 + toOutside_kgm2;
  return { toInside_kgm2, toOutside_kgm2, insideShare: total > 0 ? toInside_kgm2 / total : null };
};

/**
 * Which way a layer dries, month by month, from the flows across its faces (positive inward). A month's net flow out of a face
 * counts as leaving there; a month in which water comes in through that face counts nothing.
 *
 * @param firstMonth month 0..11 of the first of the twelve values
 * @returns null where the run recorded no flow at both faces
 */
export function dryingSplit(flows: MonthlyFlows, layer: string, firstMonth: number): DryingSplit | null {
  const face = (side: string): readonly number[] | null => {
    const row = flows.interfaces.find((one) => one.probe === `${layer}-${side}`);
    return row ? row.vapour.map((vapour, month) => vapour + (row.liquid[month] ?? 0)) : null;
  };
  const outside = face("outside");
  const inside = face("inside");
  if (!outside || !inside) return null;
  const stored = flows.stored.find((one) => one.layer === layer)?.water;
  const sum = (chosen: (month: number) => boolean): Leaving => {
    let toInside = 0;
    let toOutside = 0;
    for (let month = 0; month < 12; month += 1) {
      if (!chosen(month)) continue;
      toInside += Math.max(0, inside[month] ?? 0);
      toOutside += Math.max(0, -(outside[month] ?? 0));
    }
    return leaving(toInside, toOutside);
  };
  const dries = (month: number): boolean =>
    stored ? (stored[month + 1] ?? 0) < (stored[month] ?? 0) : (inside[month] ?? 0) - (outside[month] ?? 0) > 0;
  return {
    year: sum(() => true),
    quarters: [11, 2, 5, 8].map((first) => ({
      firstMonth: first,
      leaving: sum((month) => (firstMonth + month - first + 24) % 12 < 3),
    })),
    dryingMonths: sum(dries),
  };
}
