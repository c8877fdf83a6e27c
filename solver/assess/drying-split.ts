import type { MonthlyFlows } from "../run/index.ts";

/** Water that leaves a layer through its two faces over some months [kg/m2]. */
export interface Leaving {
  readonly toInside_kgm2: number;
  readonly toOutside_kgm2: number;
  /** Of what leaves, the share that goes to the room's side; null where nothing leaves. */
  readonly insideShare: number | null;
}

/** Water that reaches a layer in the months in which it comes [kg/m2]. */
export interface Arriving {
  readonly fromInside_kgm2: number;
  readonly fromOutside_kgm2: number;
  /** Brought by leaking air, by leaking rain and by cavity air, as the run names its causes. */
  readonly byCause_kgm2: Readonly<Record<string, number>>;
}

export interface DryingSplit {
  readonly year: Leaving;
  /** Calendar quarters by first month: December, March, June, September. */
  readonly quarters: readonly { readonly firstMonth: number; readonly leaving: Leaving }[];
  /** The months in which the layers lose water. */
  readonly dryingMonths: Leaving;
  readonly arriving: Arriving;
}

const leaving = (toInside_kgm2: number, toOutside_kgm2: number): Leaving => {
  const total = toInside_kgm2 + toOutside_kgm2;
  return { toInside_kgm2, toOutside_kgm2, insideShare: total > 0 ? toInside_kgm2 / total : null };
};

/**
 * Which way a layer, or a group of neighbours, dries, month by month, from the flows across its outer and inner face (positive
 * inward) and the sources in it. A month's net flow out of a face counts as leaving there, a net flow in as arriving.
 *
 * @param layers ids, outside first
 * @param firstMonth month 0..11 of the first of the twelve values
 * @returns null where the run recorded no flow at both faces
 */
export function dryingSplit(flows: MonthlyFlows, layers: readonly string[], firstMonth: number): DryingSplit | null {
  const face = (probe: string): readonly number[] | null => {
    const row = flows.interfaces.find((one) => one.probe === probe);
    return row ? row.vapour.map((vapour, month) => vapour + (row.liquid[month] ?? 0)) : null;
  };
  const outside = face(`${layers[0]}-outside`);
  const inside = face(`${layers[layers.length - 1]}-inside`);
  if (!outside || !inside) return null;
  const months = outside.map((_, month) => month);
  const stored = flows.stored.filter((one) => layers.includes(one.layer));
  const water = (point: number): number => stored.reduce((sum, one) => sum + (one.water[point] ?? 0), 0);
  const over = (value: (month: number) => number, chosen: (month: number) => boolean = () => true): number =>
    months.filter(chosen).reduce((sum, month) => sum + Math.max(0, value(month)), 0);
  const split = (chosen?: (month: number) => boolean): Leaving =>
    leaving(
      over((month) => inside[month] ?? 0, chosen),
      over((month) => -outside[month]!, chosen),
    );
  const dries = (month: number): boolean =>
    stored.length > 0 ? water(month + 1) < water(month) : (inside[month] ?? 0) > outside[month]!;
  const byCause_kgm2: Record<string, number> = {};
  for (const source of flows.sources.filter((one) => layers.includes(one.layer))) {
    byCause_kgm2[source.cause] = (byCause_kgm2[source.cause] ?? 0) + over((month) => source.gain[month] ?? 0);
  }
  return {
    year: split(),
    quarters: [11, 2, 5, 8].map((first) => ({
      firstMonth: first,
      leaving: split((month) => (firstMonth + month - first + 24) % 12 < 3),
    })),
    dryingMonths: split(dries),
    arriving: {
      fromInside_kgm2: over((month) => -(inside[month] ?? 0)),
      fromOutside_kgm2: over((month) => outside[month]!),
      byCause_kgm2,
    },
  };
}
