import { vapourLine } from "./condensing-planes.ts";
import { saturationPressure_Pa } from "./saturation-pressure.ts";
import { requireLayers, wallFilms } from "./steady-layer.ts";
import type { Films, SteadyLayer } from "./steady-layer.ts";

/** Means of one calendar month. */
export interface MonthClimate {
  /** "Jan" or any other name; it is only passed on. */
  readonly month: string;
  readonly days: number;
  readonly outside_C: number;
  readonly outsideVapourPressure_Pa: number;
  readonly inside_C: number;
  readonly insideVapourPressure_Pa: number;
}

/** One month; plane 0 is the outer face, plane n the inner face of the layers as given. */
export interface MonthCondensation {
  readonly year: number;
  readonly month: string;
  readonly temperature_C: readonly number[];
  readonly saturation_Pa: readonly number[];
  readonly vapourPressure_Pa: readonly number[];
  /** Water that arrives in the month at each plane, negative where it dries; more may be asked for than is there [kg/m2]. */
  readonly flow_kgm2: readonly number[];
  /** Water standing at each plane at the month's end [kg/m2]. */
  readonly stock_kgm2: readonly number[];
}

export interface MonthlyCondensation {
  readonly months: readonly MonthCondensation[];
  readonly firstMonth: string | null;
  /** Largest stock in the first year by plane [kg/m2]. */
  readonly peakStock_kgm2: readonly number[];
  /** The largest sum over all planes in one month [kg/m2]. */
  readonly peakTotal_kgm2: number;
  readonly endOfYearStock_kgm2: readonly number[];
  readonly driesEachYear: boolean;
}

const secondsPerDay = 86400;
/** Layers with more resistance than this are cut into equal slices [m2 K/W]. */
const resistanceWithoutSlices_m2KW = 0.25;
/** Least sd of an air layer [m]. */
const airLayerSd_m = 0.01;

interface Slice {
  readonly resistance_m2KW: number;
  readonly sd_m: number;
  /** The plane of the given layers at its inner side, or -1 inside of a layer. */
  readonly planeInside: number;
}

function slicesOf(layers: readonly SteadyLayer[]): Slice[] {
  return layers.flatMap((layer, index) => {
    // A layer of air without a vapour resistance of its own counts as the standard's 0.01 m.
    const sd_m = layer.sd_m === 0 && layer.resistance_m2KW > 0 ? airLayerSd_m : layer.sd_m;
    const count = Math.max(1, Math.ceil(layer.resistance_m2KW / resistanceWithoutSlices_m2KW - 1e-9));
    return Array.from({ length: count }, (_, slice) => ({
      resistance_m2KW: layer.resistance_m2KW / count,
      sd_m: sd_m / count,
      planeInside: slice === count - 1 ? index + 1 : -1,
    }));
  });
}

/**
 * Potential condensation month by month: the steady method of ISO 13788. It knows no sorption, liquid flow, air flow or
 * latent heat, so it is a first look beside the transient run, never the verdict.
 *
 * @param layers outside first
 * @param climate twelve months in calendar order, any month first; the count starts with the first month that condenses after a dry one
 * @param years how many years to write down; more follow, `mostYears` at most, while water is left over and still grows
 * Source: ISO 13788, clause on interstitial condensation (MEMORY).
 * Checked: tests/solver/physics/steady/monthly-condensation.test.ts, five walls over three years, to the printed digits.
 */
export function monthlyCondensation(
  layers: readonly SteadyLayer[],
  climate: readonly MonthClimate[],
  films: Films = wallFilms,
  years = 1,
  mostYears = 10,
): MonthlyCondensation {
  requireLayers(layers);
  if (climate.length !== 12) throw new RangeError(`climate must hold 12 months, got ${climate.length}`);
  const slices = slicesOf(layers);
  const sd_m = [0];
  const planeOf = [0];
  for (const slice of slices) {
    sd_m.push(sd_m[sd_m.length - 1]! + slice.sd_m);
    planeOf.push(slice.planeInside);
  }
  const totalResistance_m2KW =
    films.outside_m2KW + films.inside_m2KW + slices.reduce((sum, slice) => sum + slice.resistance_m2KW, 0);

  const march = (month: MonthClimate, year: number, stock: Float64Array): MonthCondensation => {
    let resistance_m2KW = films.outside_m2KW;
    const temperature_C = [0, ...slices.map((slice) => slice.resistance_m2KW)].map((step) => {
      resistance_m2KW += step;
      return month.outside_C + ((month.inside_C - month.outside_C) * resistance_m2KW) / totalResistance_m2KW;
    });
    const saturation_Pa = temperature_C.map(saturationPressure_Pa);
    const line = vapourLine(
      sd_m.map((sd, index) => ({ sd_m: sd, ceiling_Pa: saturation_Pa[index]!, wet: stock[index]! > 0 })),
      month.outsideVapourPressure_Pa,
      month.insideVapourPressure_Pa,
    );
    const flow_kgm2 = line.netFlow_kgm2s.map((flow) => flow * month.days * secondsPerDay);
    flow_kgm2.forEach((gain, index) => {
      stock[index] = Math.max(0, stock[index]! + gain);
    });
    // Planes inside of a layer are the method's own; water there is told at the layer's outer face, see `gathered`.
    const atPlanes = (values: ArrayLike<number>): number[] =>
      planeOf.flatMap((plane, index) => (plane >= 0 ? [values[index]!] : []));
    return {
      year,
      month: month.month,
      temperature_C: atPlanes(temperature_C),
      saturation_Pa: atPlanes(saturation_Pa),
      vapourPressure_Pa: atPlanes(line.pressure_Pa),
      flow_kgm2: gathered(flow_kgm2, planeOf),
      stock_kgm2: gathered(stock, planeOf),
    };
  };

  const condenses = climate.map((month) =>
    march(month, 0, new Float64Array(sd_m.length)).flow_kgm2.some((flow) => flow > 0),
  );
  const first = condenses.findIndex((wet, index) => wet && !condenses[(index + 11) % 12]!);
  const start = first >= 0 ? first : 0;
  const stock = new Float64Array(sd_m.length);
  const months: MonthCondensation[] = [];
  let leftBefore = 0;
  for (let year = 1; year <= Math.max(years, mostYears); year += 1) {
    for (let step = 0; step < 12; step += 1) months.push(march(climate[(start + step) % 12]!, year, stock));
    const left = stock.reduce((sum, water) => sum + water, 0);
    const grows = left > leftBefore + 1e-12;
    leftBefore = left;
    if (year >= years && !grows) break;
  }
  const firstYear = months.slice(0, 12);
  const endOfYearStock_kgm2 = firstYear[11]!.stock_kgm2;
  return {
    months,
    firstMonth: condenses.some(Boolean) ? climate[start]!.month : null,
    peakStock_kgm2: endOfYearStock_kgm2.map((_, plane) =>
      Math.max(...firstYear.map((month) => month.stock_kgm2[plane]!)),
    ),
    peakTotal_kgm2: Math.max(...firstYear.map((month) => month.stock_kgm2.reduce((sum, water) => sum + water, 0))),
    endOfYearStock_kgm2,
    driesEachYear: endOfYearStock_kgm2.every((water) => water === 0),
  };
}

/** Sums what lies at slice planes into the planes of the given layers: the next one towards the outside. */
function gathered(values: ArrayLike<number>, planeOf: readonly number[]): number[] {
  const sums = new Array<number>(Math.max(...planeOf) + 1).fill(0);
  let plane = 0;
  for (let index = 0; index < planeOf.length; index += 1) {
    if (planeOf[index]! >= 0) plane = planeOf[index]!;
    sums[plane] = sums[plane]! + values[index]!;
  }
  return sums;
}
