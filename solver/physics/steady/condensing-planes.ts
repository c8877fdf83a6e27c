import { airPermeability_kgmsPa } from "./steady-layer.ts";

/** A plane as the vapour line sees it. */
export interface VapourPlane {
  readonly sd_m: number;
  /** Saturation pressure there [Pa]; the line may not rise above it. */
  readonly ceiling_Pa: number;
  /** Water stands here: the line passes exactly through the ceiling. */
  readonly wet: boolean;
}

export interface VapourLine {
  readonly pressure_Pa: readonly number[];
  /** Planes that the line touches or that hold water. */
  readonly contact: readonly boolean[];
  /** Net vapour that arrives at each plane, negative where it dries [kg/(m2 s)]; 0 off contact. */
  readonly netFlow_kgm2s: readonly number[];
}

/**
 * The vapour pressure through a wall when it may not exceed saturation: a string from face to face pulled down under
 * every ceiling and tied to it where water stands. Between ties it is the lower convex hull of the planes.
 *
 * @param planes one face to the other, sd not falling; the ends carry the air's pressure
 * Source: ISO 13788, graphical construction of condensation planes (MEMORY).
 */
export function vapourLine(planes: readonly VapourPlane[], firstEnd_Pa: number, lastEnd_Pa: number): VapourLine {
  const last = planes.length - 1;
  if (last < 1) throw new RangeError(`planes must hold both faces, got ${planes.length}`);
  const height = (index: number): number =>
    index === 0 ? firstEnd_Pa : index === last ? lastEnd_Pa : planes[index]!.ceiling_Pa;
  const sd = (index: number): number => planes[index]!.sd_m;

  const hull: number[] = [];
  const tied = (index: number): boolean => index === 0 || index === last || planes[index]!.wet;
  for (let next = 0; next <= last; next += 1) {
    while (hull.length >= 2) {
      const middle = hull[hull.length - 1]!;
      if (tied(middle)) break;
      const before = hull[hull.length - 2]!;
      // The middle plane stays a contact only where the string would otherwise pass above its ceiling.
      const run = sd(next) - sd(before);
      const share = run > 0 ? (sd(middle) - sd(before)) / run : 0;
      const string_Pa = height(before) + (height(next) - height(before)) * share;
      if (string_Pa > height(middle)) break;
      hull.pop();
    }
    hull.push(next);
  }

  const pressure_Pa = new Array<number>(planes.length).fill(0);
  const contact = new Array<boolean>(planes.length).fill(false);
  const netFlow_kgm2s = new Array<number>(planes.length).fill(0);
  /** Flow towards the last plane [kg/(m2 s)]. */
  const flow = (from: number, to: number): number => {
    const run = sd(to) - sd(from);
    return run > 0 ? (airPermeability_kgmsPa * (height(from) - height(to))) / run : 0;
  };
  for (let corner = 0; corner < hull.length - 1; corner += 1) {
    const from = hull[corner]!;
    const to = hull[corner + 1]!;
    const run = sd(to) - sd(from);
    for (let index = from; index <= to; index += 1) {
      const share = run > 0 ? (sd(index) - sd(from)) / run : index === to ? 1 : 0;
      pressure_Pa[index] = height(from) + (height(to) - height(from)) * share;
    }
  }
  for (let corner = 1; corner < hull.length - 1; corner += 1) {
    const here = hull[corner]!;
    contact[here] = true;
    netFlow_kgm2s[here] = flow(hull[corner - 1]!, here) - flow(here, hull[corner + 1]!);
  }
  return { pressure_Pa, contact, netFlow_kgm2s };
}
